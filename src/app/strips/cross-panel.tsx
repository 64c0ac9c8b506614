import './cross-panel.css'
import { useMemo } from 'react'
import { CrossSection } from '../drawing/cross-section.tsx'
import { GapTable } from '../drawing/gap-table.tsx'
import { fixed } from '../sheet/numbers.ts'
import { useView, useWork } from '../work/work-context.ts'
import { CrossGrips } from './cross-grips.tsx'
import { TypedNumber } from './typed-number.tsx'
import { useCursor } from './use-cursor.ts'
import { useLit } from './use-lit.ts'
import { useCross } from './use-strips.ts'

/** The cross-section at the cursor, its plane moved by hand or by typing; of what is pushed in, where it has got to. */
export function CrossPanel() {
  const { view, judged } = useWork()
  const cursor = useCursor()
  const push = useView((v) => v.push)
  const [way, depth] = [push?.insertion, push?.depth]
  const asked = useMemo(() => (way === undefined || depth === undefined ? undefined : { way, depth }), [way, depth])
  const cross = useCross(cursor.z, asked)
  const { marks } = useLit()
  const whole = judged.views?.lengthwise
  const state = useView((v) => v.state)
  if (!whole || !cross) return undefined
  const { pushed } = cross
  const late = Math.abs(cross.view.z - cursor.z) > 0.05 || pushed?.way !== way || pushed?.depth !== depth
  const beyond = pushed?.begins ?? 0
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
          min={Math.floor(whole.z0 + Math.min(0, beyond))}
          max={Math.ceil(whole.z1 + Math.max(0, beyond))}
          step={0.5}
          onValue={(z) => view.setState({ cursor: { z, theta: cursor.theta } })}
        />
        <span className="soft small">
          seen from the rear
          {pushed ? `, ${pushed.name}: pushed in to ${fixed(pushed.depth, 1)} mm` : named && `, ${named}`}
        </span>
      </div>
      {/* What is drawn of another height fades when it stays so. */}
      <div className={late ? 'cross-late' : undefined} aria-busy={late}>
        <CrossSection
          view={cross.view}
          marks={pushed ? [] : marks}
          tallest={300}
          // What is pushed in is not moved by hand: it lies elsewhere than its fields say.
          over={(frame) => !pushed && <CrossGrips view={cross.view} handles={cross.handles} frame={frame} />}
        />
        <GapTable gaps={cross.view.gaps} passing={cross.view.passing.length > 0} />
      </div>
    </section>
  )
}
