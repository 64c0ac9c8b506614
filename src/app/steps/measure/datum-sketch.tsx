import { useState } from 'react'
import { useProject } from '../../work/work-context.ts'

/** Where z and θ start, drawn small; open while nothing is measured. */
export function DatumSketch() {
  const empty = useProject((p) => p.sections.every((s) => s.length === ''))
  // It stays as it is when the first size comes: nothing moves under the hand that types.
  const [open] = useState(empty)
  return (
    <details className="more datum" open={open}>
      <summary>Where z and θ start</summary>
      <svg
        viewBox="0 0 440 146"
        role="img"
        aria-label="z is 0 at the rear face of the hilt and grows towards the blade. Seen from the rear, the clock angle θ is 0 at the main switch line, drawn up, and grows clockwise."
      >
        <path className="datum-metal" d="M24 28H268V46H24ZM24 94H268V112H24Z" />
        <path className="datum-axis" d="M8 70H284" />
        <path className="datum-line" d="M24 16V124M24 120H120" markerEnd="url(#datum-arrow)" />
        <text x="30" y="66">
          z = 0, rear
        </text>
        <text x="126" y="124">
          z, towards the blade
        </text>
        <text x="262" y="66" textAnchor="end">
          length
        </text>
        <path className="datum-switch" d="M150 28v-8h22v8" />
        <text x="178" y="22">
          main switch
        </text>
        <circle className="datum-ring" cx="356" cy="72" r="42" />
        <circle className="datum-void" cx="356" cy="72" r="30" />
        <path className="datum-axis" d="M356 18V126M302 72H410" />
        <path className="datum-line" d="M356 58A14 14 0 0 1 370 72" markerEnd="url(#datum-arrow)" />
        <text x="362" y="22">
          θ = 0
        </text>
        <text x="404" y="66">
          90°
        </text>
        <text x="356" y="140" textAnchor="middle">
          seen from the rear
        </text>
        <defs>
          <marker id="datum-arrow" viewBox="0 0 8 8" refX="7" refY="4" markerWidth="7" markerHeight="7" orient="auto">
            <path className="datum-head" d="M0 1L8 4L0 7Z" />
          </marker>
        </defs>
      </svg>
    </details>
  )
}
