import './cross-panel.css'
import { CrossSection } from '../drawing/cross-section.tsx'
import { GapTable } from '../drawing/gap-table.tsx'
import { useView, useWork } from '../work/work-context.ts'
import { CrossGrips } from './cross-grips.tsx'
import { TypedNumber } from './typed-number.tsx'
import { useCursor } from './use-cursor.ts'
import { useLit } from './use-lit.ts'
import { useCross } from './use-strips.ts'

/** The cross-section at the cursor, its plane moved by hand or by typing. */
export function CrossPanel() {
  const { view, judged } = useWork()
  const cursor = useCursor()
  const cross = useCross(cursor.z)
  const { marks } = useLit()
  const whole = judged.views?.lengthwise
  const state = useView((v) => v.state)
  if (!whole || !cross) return undefined
  const late = Math.abs(cross.view.z - cursor.z) > 0.05
  const named = judged.report?.states.find((s) => s.id === state)?.name
  return (
    <section className="cross-panel" aria-labelledby="cross-title">
      <div className="cross-head">
        <h2 id="cross-title">Cross-section</h2>
        <TypedNumber
          id="cross-plane"
          label="at z"
          unit="mm"
          value={cursor.z}
          places={1}
          min={Math.floor(whole.z0)}
          max={Math.ceil(whole.z1)}
          step={0.5}
          onValue={(z) => view.setState({ cursor: { z, theta: cursor.theta } })}
        />
        <span className="soft small">seen from the rear{named && `, ${named}`}</span>
      </div>
      {/* What is drawn of another height fades when it stays so. */}
      <div className={late ? 'cross-late' : undefined} aria-busy={late}>
        <CrossSection
          view={cross.view}
          marks={marks}
          tallest={300}
          over={(frame) => <CrossGrips view={cross.view} handles={cross.handles} frame={frame} />}
        />
        <GapTable gaps={cross.view.gaps} passing={cross.view.passing.length > 0} />
      </div>
    </section>
  )
}
