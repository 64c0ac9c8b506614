import { freshId, withRecord, withValue } from '../../../project/path.ts'
import type { SledInput } from '../../../project/schema/sled.ts'
import { SmallChoice } from '../../fields/small-choice.tsx'
import { useProject, useSetValue, useWork } from '../../work/work-context.ts'

export interface SledChooserProps {
  readonly sled: SledInput | undefined
  readonly onChoose: (id: string) => void
}

/** Which of the hilt's sleds is in hand, what it is called; one more, or one less. */
export function SledChooser({ sled, onChoose }: SledChooserProps) {
  const { job } = useWork()
  const project = useProject((p) => p)
  const setValue = useSetValue()
  const add = () => {
    const id = freshId(project.sleds, project.sleds.length === 0 ? 'main' : 'sled')
    job.settle()
    job.edit((p) => withRecord(p, 'sleds', { id, name: project.sleds.length === 0 ? 'sled' : id.replace('-', ' ') }))
    onChoose(id)
  }
  const used = sled && project.parts.some((p) => (p.on ?? `sleds/${project.sleds[0]?.id}`) === `sleds/${sled.id}`)
  return (
    <div className="sled-chooser">
      {project.sleds.length > 1 && sled && (
        <SmallChoice
          id="sled-in-hand"
          label="Sled"
          value={sled.id}
          options={project.sleds.map((s) => ({ value: s.id, label: s.name ?? s.id }))}
          onValue={onChoose}
        />
      )}
      {sled && (
        <label className="small-choice">
          <span>Name</span>
          <input
            id={`sleds/${sled.id}/name`}
            className="field-input"
            maxLength={120}
            value={sled.name ?? ''}
            placeholder={sled.id}
            onChange={(event) => setValue(`sleds/${sled.id}/name`, event.target.value || undefined)}
          />
        </label>
      )}
      <button type="button" className="button button-plain" onClick={add}>
        {sled ? 'Add another sled' : 'Add a sled'}
      </button>
      {sled && !used && (
        <button
          type="button"
          className="button button-plain"
          onClick={() => {
            job.settle()
            job.edit((p) => without(p, sled.id))
          }}
        >
          Remove this sled
        </button>
      )}
    </div>
  )
}

/** With the sled its own way in goes. */
function without(project: Parameters<typeof withValue>[0], id: string) {
  const bare = withValue(project, `sleds/${id}`, undefined)
  return bare && { ...bare, insertions: bare.insertions.filter((i) => i.moves !== `sleds/${id}`) }
}
