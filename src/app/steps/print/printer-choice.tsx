import { freshId, withRecord, withValue } from '../../../project/path.ts'
import { SmallChoice } from '../../fields/small-choice.tsx'
import { useProject, useSetValue, useWork } from '../../work/work-context.ts'

/** Which sled is printed on which printer, where there are several; one more printer. */
export function PrinterChoice() {
  const { job } = useWork()
  const project = useProject((p) => p)
  const setValue = useSetValue()
  const { printer: printers, sleds } = project
  const add = () => {
    job.settle()
    job.edit((p) => withRecord(p, 'printer', { id: freshId(p.printer, 'printer'), process: 'process-filament' }))
  }
  const unused = printers.find((q, i) => i > 0 && sleds.every((s) => s.printer !== q.id))
  return (
    <div className="printer-choice">
      {printers.length > 1 &&
        sleds.map((s) => (
          <SmallChoice
            key={s.id}
            id={`sleds/${s.id}/printer`}
            label={`${s.name ?? s.id} on`}
            value={s.printer ?? printers[0]?.id ?? ''}
            options={printers.map((q) => ({ value: q.id, label: q.name ?? q.id }))}
            onValue={(value) => setValue(`sleds/${s.id}/printer`, value)}
          />
        ))}
      {printers.length > 0 && (
        <button type="button" className="button button-plain" onClick={add}>
          Add another printer
        </button>
      )}
      {unused && (
        <button
          type="button"
          className="button button-plain"
          onClick={() => {
            job.settle()
            job.edit((p) => withValue(p, `printer/${unused.id}`, undefined))
          }}
        >
          Remove {unused.name ?? unused.id}
        </button>
      )}
    </div>
  )
}
