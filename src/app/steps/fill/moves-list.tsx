import { useState } from 'react'
import { movable, newMove, notYetMoved } from '../../../job/new-move.ts'
import { choicesOf } from '../../../project/choice-words.ts'
import { placeWords } from '../../../project/place-words.ts'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { PickField } from '../../fields/pick-field.tsx'
import { useSaid } from '../../fields/use-said.ts'
import { useProject, useSetValue, useWork } from '../../work/work-context.ts'
import { RecordList } from './record-list.tsx'

/** The moves by which all of it gets into the hilt, in their order. */
export function MovesList() {
  const { job } = useWork()
  const project = useProject((p) => p)
  const [wanted, setWanted] = useState<string>()
  const things = movable(project)
  // What was chosen counts until it is added; else what no move brings in yet.
  const moves = (wanted !== undefined && things.includes(wanted) ? wanted : notYetMoved(project)) ?? ''
  return (
    <RecordList
      list="insertions"
      title="Moves, in order"
      none="None: a sled without a move is taken to go in from the rear, straight towards the blade."
      ordered
      line={(id) => <MoveLine id={id} />}
      add={{
        label: 'Add a move',
        record: () => {
          setWanted(undefined)
          return newMove(job.get(), moves)
        },
        of: {
          label: 'What moves',
          value: moves,
          options: things.map((ref) => ({ value: ref, label: placeWords(project, ref) })),
          onValue: setWanted,
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
  const things = movable(project)
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
      <div className="fill-whole">
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
      </div>
      <PickField
        path={`${path}/lateral`}
        label="Sideways"
        none="may shift (usual)"
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
