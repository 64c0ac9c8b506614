import { type ReactNode, useState } from 'react'
import type { Finding, Fix } from '../../checks/finding.ts'
import type { Look } from '../../worker/bench.ts'
import type { Desk } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { CrossSection } from '../drawing/cross-section.tsx'
import { GapTable } from '../drawing/gap-table.tsx'
import { LengthwiseSection, type Mark } from '../drawing/lengthwise-section.tsx'
import { FindingsList } from '../findings/findings-list.tsx'
import { type FindingActions, FixLine } from '../findings/fix-line.tsx'
import { fixed, signed } from '../sheet/numbers.ts'
import { SolidPanel } from '../solid/solid-panel.tsx'
import { VerdictBand } from '../verdict/verdict-band.tsx'
import { type FieldName, fieldOf } from './field-paths.ts'
import { Legend } from './legend.tsx'
import { MeasureSketch } from './measure-sketch.tsx'
import { NoVerdict } from './no-verdict.tsx'
import { placeName } from './place-name.ts'
import type { Reading } from './read-form.ts'
import { SaveSled } from './save-sled.tsx'
import type { QuickCheck } from './use-quick-check.ts'
import { useSolid } from './use-solid.ts'

export interface AnswerProps {
  readonly desk: Desk<WorkCalls>
  readonly reading: Reading
  readonly quick: QuickCheck
  readonly look: Look
  readonly onLook: (look: Look) => void
  readonly field: FieldName | undefined
  readonly theme: string
  /** What was done last, and the way back. */
  readonly done: ReactNode
  readonly onFix: (fix: Fix) => (() => void) | undefined
  readonly goTo: (field: FieldName) => { readonly label: string; readonly go: () => void }
}

/** Verdict, drawings, findings and file: all that comes of the form. */
export function Answer(props: AnswerProps) {
  const { desk, reading, quick, look, onLook, field, theme, done, onFix, goTo } = props
  const { check, report, drawings, retry } = quick
  // Undefined: nobody has chosen yet; null: the person closed what was open.
  const [chosen, setChosen] = useState<string | null>()
  const [solidShown, setSolidShown] = useState(false)
  const input = reading.kind === 'ready' ? reading.input : undefined
  const solid = useSolid(desk, input, solidShown)
  const fresh = check.kind === 'answered'
  const old = fresh || check.kind === 'working' ? undefined : 'old'
  const tightest = report?.findings.find((f) => f.status !== 'advice')
  const wanted = chosen === null ? undefined : report?.findings.find((f) => f.id === chosen)
  // What keeps the job from being clear lies open with its reason until one looks elsewhere.
  const unasked = chosen === null || tightest?.status === 'clear' ? undefined : tightest
  const selected = wanted ?? unasked
  const marks = marksOf(tightest, selected)
  const select = (id: string | undefined) => {
    setChosen(id ?? null)
    const at = report?.findings.find((f) => f.id === id)?.at
    if (at) onLook({ ...look, z: at.z })
  }
  // The plane follows the hand at once; the cross-section follows as soon as it is drawn.
  const z = look.z ?? drawings?.cross.z ?? 0
  // What is of older numbers is to be read, not to be worked with.
  const actions: FindingActions = {
    apply: (fix) => (old ? undefined : onFix(fix)),
    goTo: (path) => {
      const name = old ? undefined : fieldOf(path)
      return name && goTo(name)
    },
    placeName,
  }
  const help = tightest && bestHelp(tightest)
  return (
    <div className="answer" id="answer" aria-busy={check.kind === 'working'}>
      <p className="unseen" aria-live="polite">
        {fresh && tightest && `${check.report.verdict}. Tightest: ${tightest.title}, ${signed(tightest.margin.worst)}.`}
      </p>
      <div>
        {report && (fresh || check.kind === 'working') ? (
          <VerdictBand
            verdict={report.verdict}
            tightest={tightest}
            notChecked={report.notChecked.length}
            help={help && <FixLine fix={help} actions={actions} />}
          >
            {input && <SaveSled desk={desk} input={input} layout={report.layout} verdict={report.verdict} />}
          </VerdictBand>
        ) : (
          <NoVerdict check={check} retry={retry} />
        )}
        {done}
      </div>
      <section className="drawing-sheet" aria-labelledby="section-title">
        <div className="panel-head">
          <h2 id="section-title">Lengthwise section</h2>
          <p className="small soft">{drawings ? 'to scale' : 'where the sizes are taken'}</p>
          {drawings && (
            <label className="panel-tool">
              Cut at θ
              <input
                className="slider"
                type="range"
                min={0}
                max={355}
                step={5}
                value={look.theta}
                aria-valuetext={`${look.theta} degrees`}
                onChange={(event) => onLook({ ...look, theta: Number(event.target.value) })}
              />
              <output className="number">{String(look.theta).padStart(3, ' ')}°</output>
            </label>
          )}
        </div>
        {old && drawings && <OldNote />}
        <div className={old} inert={old !== undefined}>
          {drawings ? (
            <LengthwiseSection
              view={drawings.lengthwise}
              z={z}
              onZ={(to) => onLook({ ...look, z: to })}
              marks={marks}
              lit={field}
            />
          ) : (
            <MeasureSketch lit={field} />
          )}
        </div>
      </section>
      {report && drawings ? (
        <div className={old ? 'lower old' : 'lower'} inert={old !== undefined}>
          <FindingsList
            findings={report.findings}
            notChecked={report.notChecked}
            assumptions={report.assumptions}
            selected={selected?.id}
            onSelect={select}
            actions={actions}
            trying={quick.trying}
          />
          <div className="side-views">
            <section aria-labelledby="cross-title">
              <div className="panel-head">
                <h2 id="cross-title">Cross-section</h2>
                <p className="small soft number">z {fixed(drawings.cross.z, 1)} mm, from the rear</p>
              </div>
              <div className="drawing-sheet">
                <CrossSection view={drawings.cross} marks={marks} />
              </div>
              <GapTable gaps={drawings.cross.gaps} passing={drawings.cross.passing.length > 0} />
            </section>
            <SolidPanel
              solid={solid.solid}
              trouble={solid.trouble}
              shown={solidShown}
              onShow={() => setSolidShown(true)}
              theme={theme}
            />
          </div>
        </div>
      ) : (
        <Legend />
      )}
    </div>
  )
}

/** Doubt is met with a measurement first, a clash with a change. */
function bestHelp(f: Finding): Fix | undefined {
  const measure = f.status === 'unsure' ? f.fix.find((fix) => fix.value === undefined) : undefined
  return measure ?? f.fix[0]
}

function marksOf(tightest: Finding | undefined, selected: Finding | undefined): Mark[] {
  return [tightest, selected === tightest ? undefined : selected].flatMap((f) =>
    f?.at
      ? {
          at: f.at,
          tone: f === tightest ? f.status : 'blue',
          ...(f === selected && f.unit === 'mm' && { text: fixed(f.value) }),
        }
      : [],
  )
}

const OldNote = () => <p className="old-note small">Drawn from the numbers before; the form is not complete.</p>
