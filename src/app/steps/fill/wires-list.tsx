import { nominalOf } from '../../../project/nominal.ts'
import { freshId } from '../../../project/path.ts'
import { placeWords } from '../../../project/place-words.ts'
import type { WireInput } from '../../../project/schema/project.ts'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { PickField } from '../../fields/pick-field.tsx'
import { useSaid } from '../../fields/use-said.ts'
import { WordsField } from '../../fields/words-field.tsx'
import { SizeField } from '../../readings/size-field.tsx'
import { useChoices } from '../../readings/use-choices.ts'
import { useProject, useSetValue, useWork } from '../../work/work-context.ts'
import { RecordList } from './record-list.tsx'

const most = 20

/** Bundles of wires that run along the sled. */
export function WiresList() {
  const { job } = useWork()
  return (
    <RecordList
      list="wires"
      title="Wires"
      none="None yet: the sled has no channel."
      line={(id) => <WireLine id={id} />}
      add={{
        label: 'Add wires',
        record: (): WireInput => {
          const { wires } = job.get()
          const id = freshId(wires, 'wires')
          return { id, name: id.replaceAll('-', ' '), preset: 'wire-28-silicone', count: 4 }
        },
      }}
    >
      {(_, path) => <WireFields path={path} />}
    </RecordList>
  )
}

function WireLine({ id }: { readonly id: string }) {
  const wire = useProject((p) => p.wires.find((w) => w.id === id))
  const preset = useChoices()?.wires.find((c) => c.id === wire?.preset)
  if (!wire) return undefined
  const gauge = wire.diameter === undefined ? preset?.name : `⌀${nominalOf(wire.diameter) ?? '?'}`
  return (
    <>
      <b>{wire.name ?? wire.id}</b>
      <span className="number">
        {wire.count ?? 1} × {gauge ?? wire.preset ?? '?'}
      </span>
    </>
  )
}

const own = ''

function WireFields({ path }: { readonly path: string }) {
  const choices = useChoices()?.wires ?? []
  const project = useProject((p) => p)
  const wire = project.wires.find((w) => `wires/${w.id}` === path)
  const set = useSetValue()
  const said = useSaid()
  const { job } = useWork()
  if (!wire) return undefined
  const preset = choices.find((c) => c.id === wire.preset)
  const parts = project.parts.map((p) => ({ value: `parts/${p.id}`, label: placeWords(project, `parts/${p.id}`) }))
  const gauge = (value: string) =>
    job.edit((p) => ({
      ...p,
      wires: p.wires.map((w) => {
        if (w.id !== wire.id) return w
        const { preset: _preset, diameter, ...rest } = w
        return value === own ? { ...rest, diameter: diameter ?? '' } : { ...rest, preset: value }
      }),
    }))
  return (
    <>
      <WordsField path={`${path}/name`} label="Name" placeholder={wire.id} />
      <div className="fill-whole">
        <ChoiceField
          id={`${path}/preset`}
          label="Gauge"
          value={wire.diameter === undefined ? (wire.preset ?? own) : own}
          onValue={gauge}
          options={[
            { value: own, label: 'Own outside diameter' },
            ...choices.map((c) => ({ value: c.id, label: c.name })),
            ...(wire.preset === undefined || preset ? [] : [{ value: wire.preset, label: wire.preset }]),
          ]}
          note={wire.diameter === undefined && preset ? `${preset.sizes}; ${preset.known}` : undefined}
          fault={said.fault(`${path}/preset`)?.hint}
        />
      </div>
      {wire.diameter !== undefined && <SizeField path={`${path}/diameter`} label="Outside diameter" />}
      <ChoiceField
        id={`${path}/count`}
        label="How many"
        value={String(wire.count ?? 1)}
        onValue={(value) => set(`${path}/count`, Number(value))}
        options={Array.from({ length: Math.max(most, wire.count ?? 1) }, (_, n) => ({
          value: String(n + 1),
          label: String(n + 1),
        }))}
      />
      <PickField path={`${path}/from`} label="From" none="not said" options={parts} />
      <PickField path={`${path}/to`} label="To" none="not said" options={parts} />
      {project.sleds.length > 1 && (
        <PickField
          path={`${path}/sled`}
          label="Along the sled"
          none={placeWords(project, `sleds/${project.sleds[0]?.id}`)}
          options={project.sleds.slice(1).map((s) => ({ value: s.id, label: placeWords(project, `sleds/${s.id}`) }))}
        />
      )}
    </>
  )
}
