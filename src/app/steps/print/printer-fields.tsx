import type { PrintFigures } from '../../../papers/settings.ts'
import type { PresetChoices } from '../../../presets/preset-choices.ts'
import { withRecord, withValue } from '../../../project/path.ts'
import type { PrinterInput, Project } from '../../../project/schema/project.ts'
import { DimensionRow } from '../../dimensions/dimension-row.tsx'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { fixed } from '../../sheet/numbers.ts'
import { useWork } from '../../work/work-context.ts'

export interface PrinterFieldsProps {
  /** Undefined while the job names none: what is typed first makes it. */
  readonly printer: PrinterInput | undefined
  readonly choices: PresetChoices
  /** What it does, where a sled is printed on it. */
  readonly figures: PrintFigures | undefined
}

/** Without a printer of its own a job is printed on this. */
const usual = 'process-filament'

/** What the sled is printed on and with. */
export function PrinterFields({ printer, choices, figures }: PrinterFieldsProps) {
  const { job, judged } = useWork()
  const base = printer ? `printer/${printer.id}` : 'printer'
  const set = (field: string, value: unknown) =>
    void job.edit((p) => withField(p, printer, field, value), `${base}/${field}`)
  const process = choices.processes.find((c) => c.id === (printer?.process ?? usual))
  const fitting = choices.materials.filter((m) => m.use === process?.family || m.id === printer?.material)
  const material = choices.materials.find((m) => m.id === printer?.material)
  const fault = (field: string) => judged.problems.find((p) => p.path === `${base}/${field}`)?.hint
  const errorFrom = figures && !printer?.error ? figures.error.from : ''
  return (
    <div className="printer-fields">
      <ChoiceField
        id={`${base}/process`}
        label="Process"
        value={process?.id ?? ''}
        options={choices.processes.map((c) => ({ value: c.id, label: c.name }))}
        note={process && `${process.sizes}; ${process.source}`}
        fault={fault('process')}
        onValue={(value) => set('process', value)}
      />
      <ChoiceField
        id={`${base}/material`}
        label="Material"
        value={printer?.material ?? ''}
        options={[{ value: '', label: 'not said: no weight' }, ...fitting.map((c) => ({ value: c.id, label: c.name }))]}
        note={material && `${material.sizes}; ${material.source}`}
        fault={fault('material')}
        onValue={(value) => set('material', value === '' ? undefined : value)}
      />
      <div className="dim-rows">
        <DimensionRow
          id={`${base}/error`}
          name="print error, each way"
          unit="mm"
          keeps="text"
          stored={printer?.error}
          usual={figures && !printer?.error ? figures.error.outside : undefined}
          kind={printer?.error === undefined ? 'default' : 'typed'}
          source={errorFrom}
          fault={fault('error')}
          onValue={(value) => set('error', value)}
        />
        <DimensionRow
          id={`${base}/leastWall`}
          name="thinnest wall it prints"
          unit="mm"
          stored={printer?.leastWall}
          usual={figures && printer?.leastWall === undefined ? figures.leastWall : undefined}
          kind={printer?.leastWall === undefined ? 'default' : 'typed'}
          source={figures?.source ?? ''}
          fault={fault('leastWall')}
          onValue={(value) => set('leastWall', value)}
        />
        {(process?.family === 'filament' || printer?.bead !== undefined) && (
          <DimensionRow
            id={`${base}/bead`}
            name="width of one line"
            unit="mm"
            stored={printer?.bead}
            usual={figures && printer?.bead === undefined ? figures.bead : undefined}
            kind={printer?.bead === undefined ? 'default' : 'typed'}
            source={figures?.source ?? ''}
            fault={fault('bead')}
            onValue={(value) => set('bead', value)}
          />
        )}
      </div>
      {figures && (
        <p className="small soft">
          Gap between a part and its nest, on the diameter:{' '}
          {(['press', 'snug', 'slide', 'free'] as const)
            .map((f) => `${f} ${fixed(figures.fit[f].min)} to ${fixed(figures.fit[f].max)}`)
            .join(', ')}{' '}
          mm ({figures.source}).
        </p>
      )}
    </div>
  )
}

/** What is typed first makes the printer. */
function withField(p: Project, printer: PrinterInput | undefined, field: string, value: unknown): Project | undefined {
  return printer
    ? withValue(p, `printer/${printer.id}/${field}`, value)
    : withRecord(p, 'printer', { id: 'printer', process: usual, [field]: value })
}
