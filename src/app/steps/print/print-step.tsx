import './print.css'
import { useState } from 'react'
import { cautions } from '../../../job/cautions.ts'
import type { FileLayout } from '../../../job/lay-out.ts'
import type { Project } from '../../../project/schema/project.ts'
import type { Far } from '../../../worker/desk.ts'
import type { WorkCalls } from '../../../worker/work-calls.ts'
import { useAsked } from '../../dimensions/use-asked.ts'
import { ProblemList } from '../../findings/problem-list.tsx'
import { useFindingActions } from '../../findings/use-finding-actions.ts'
import { useProject } from '../../work/work-context.ts'
import { BodyFacts } from './body-facts.tsx'
import { PrinterChoice } from './printer-choice.tsx'
import { PrinterFields } from './printer-fields.tsx'
import { SaveFiles } from './save-files.tsx'
import { useChoices } from './use-choices.ts'
import { useSledReport } from './use-sled-report.ts'

const askSettings = (calls: Far<WorkCalls>, project: Project) => calls.settings(project)

/** What the sled is printed on and with, what will be printed, and its files. */
export default function PrintStep() {
  const project = useProject((p) => p)
  const choices = useChoices()
  const settings = useAsked('settings', askSettings)
  const [layout, setLayout] = useState<FileLayout>('printed')
  const { actions } = useFindingActions()
  const { report, problems, trouble, busy } = useSledReport(layout)
  const printers = project.printer.length === 0 ? [undefined] : project.printer
  const families = printers.map(
    (p) => choices?.processes.find((c) => c.id === (p?.process ?? 'process-filament'))?.family,
  )
  return (
    <div className="print-fields">
      {choices &&
        printers.map((p) => (
          <section key={p?.id ?? 'none'} aria-label={p?.name ?? p?.id ?? 'Printer'}>
            {printers.length > 1 && <h3>{p?.name ?? p?.id}</h3>}
            <PrinterFields
              printer={p}
              choices={choices}
              figures={settings?.printing.find((f) => printsOn(project, f.sled, p?.id))}
            />
          </section>
        ))}
      <PrinterChoice />
      {families.includes('resin') && <p className="caution small">{cautions.resin}</p>}
      {families.includes('filament') && <p className="caution small">{cautions.filament}</p>}
      <h3>What is printed</h3>
      <div aria-live="polite" aria-busy={busy}>
        {busy && !report && <p className="small soft">Building …</p>}
        {trouble && <p className="small">{trouble}</p>}
        {problems.every((p) => p.code === 'missing') ? (
          <ProblemList title="Still wanted before it is built" tone="wanted" problems={problems} actions={actions} />
        ) : (
          <ProblemList title="In the way of building it" tone="fault" problems={problems} actions={actions} />
        )}
      </div>
      {report && <BodyFacts report={report} />}
      <h3>Files</h3>
      <fieldset className="layout-choice">
        <legend className="small">Laid out</legend>
        {layouts.map((l) => (
          <label key={l.value}>
            <input type="radio" name="layout" checked={layout === l.value} onChange={() => setLayout(l.value)} />
            <span>
              {l.label} <span className="small soft">{l.says}</span>
            </span>
          </label>
        ))}
      </fieldset>
      <SaveFiles layout={layout} />
    </div>
  )
}

const layouts = [
  { value: 'printed', label: 'as printed', says: 'each body turned the way it prints best, side by side on the bed' },
  { value: 'assembled', label: 'as assembled', says: 'every body where it is in the hilt' },
] as const

/** A sled that names no printer is printed on the first. */
function printsOn(project: Project, sled: string, printer: string | undefined): boolean {
  const own = project.sleds.find((s) => s.id === sled)?.printer ?? project.printer[0]?.id
  return own === printer
}
