import { choicesOf } from '../../../project/choice-words.ts'
import { freshId } from '../../../project/path.ts'
import { placeWords } from '../../../project/place-words.ts'
import type { InsertionInput } from '../../../project/schema/sled.ts'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { PickField } from '../../fields/pick-field.tsx'
import { useSaid } from '../../fields/use-said.ts'
import { useProject, useSetValue, useWork } from '../../work/work-context.ts'
import { RecordList } from './record-list.tsx'

/** The moves by which all of it gets into the hilt, in their order. */
export function MovesList() {
  const { job } = useWork()
  return (
    <RecordList
      list="insertions"
      title="Moves, in order"
      none="None: a sled without a move is taken to go in from the rear, straight towards the blade."
      ordered
      line={(id) => <MoveLine id={id} />}
      add={{
        label: 'Add a move',
        record: (): InsertionInput => {
          const { insertions, sleds, parts, sections } = job.get()
          const moves = sleds[0] ? `sleds/${sleds[0].id}` : `parts/${parts[0]?.id}`
          return {
            id: freshId(insertions, 'move'),
            moves,
            through: { of: `sections/${sections[0]?.id}`, end: 'rear' },
          }
        },
      }}
    >
      {(_, path) => <MoveFields path={path} />}
    </RecordList>
  )
}

function MoveLine({ id }: { readonly id: string }) {
  const project = useProject((p) => p)
  const move = project.insertions.find((i) => i.id === id)
  if (!move) return undefined
  const mouth = move.through
  return (
    <>
      <b>{move.name ?? placeWords(project, move.moves)}</b>
      <span>
        {mouth ? `through the ${mouth.end} end of ${placeWords(project, mouth.of)}` : 'from the rear, assumed'}
      </span>
    </>
  )
}

function MoveFields({ path }: { readonly path: string }) {
  const project = useProject((p) => p)
  const { judged } = useWork()
  const set = useSetValue()
  const said = useSaid()
  const move = project.insertions.find((i) => `insertions/${i.id}` === path)
  if (!move) return undefined
  const name = (ref: string) => placeWords(project, ref)
  const things = [
    ...project.sleds.map((s) => `sleds/${s.id}`),
    ...project.parts.filter((p) => p.on?.startsWith('sections/')).map((p) => `parts/${p.id}`),
    ...project.sections.map((s) => `sections/${s.id}`),
  ]
  const mouths = project.sections.flatMap((s) =>
    (['rear', 'blade'] as const).map((end) => ({
      value: `sections/${s.id} ${end}`,
      label: `${end} end of ${name(`sections/${s.id}`)}`,
    })),
  )
  return (
    <>
      <PickField
        path={`${path}/moves`}
        label="What moves"
        options={(things.includes(move.moves) ? things : [...things, move.moves]).map((ref) => ({
          value: ref,
          label: name(ref),
        }))}
      />
      <ChoiceField
        id={`${path}/through`}
        label="Through"
        value={move.through ? `${move.through.of} ${move.through.end}` : ''}
        onValue={(value) => {
          const [of, end] = value.split(' ')
          set(`${path}/through`, of ? { of, end } : undefined)
          // Through the other mouth it can only head the other way.
          set(`${path}/heading`, undefined)
        }}
        options={[{ value: '', label: 'the rear of the hilt (assumed)' }, ...mouths]}
        fault={said.fault(`${path}/through`)?.hint ?? said.fault(`${path}/heading`)?.hint}
      />
      <PickField
        path={`${path}/lateral`}
        label="Sideways"
        none="may shift to the wall (usual)"
        options={choicesOf('insertions/lateral')}
      />
      <PickField
        path={`${path}/during`}
        label="In the state"
        none="not said"
        options={(judged.report?.states ?? []).map((s) => ({ value: s.id, label: s.name }))}
      />
    </>
  )
}
