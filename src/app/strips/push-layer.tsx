import './push-layer.css'
import { round } from '../drawing/frame.ts'
import type { StripLayout } from './strip-frame.ts'
import type { PushedStrips } from './use-pushed.ts'

/** The depth of what is pushed in, as a line; gap and map below are still of what is in its place, and say so. */
export function PushLayer({ layout, pushed }: { readonly layout: StripLayout; readonly pushed: PushedStrips }) {
  const { frame, section, gap, unrolled, left, width } = layout
  const x = round(frame.x(pushed.face))
  const beyond = x < left || x > width - 16
  return (
    <g className="strip-push">
      {[gap, unrolled].map(({ y, height }) => (
        <g key={y}>
          <rect className="push-veil" x={left} y={y - 2} width={width - left} height={height + 4} />
          <text x={left + 10} y={y + height / 2} dy="0.35em">
            all in place
          </text>
        </g>
      ))}
      {!beyond && (
        <>
          <path className="push-depth-line" d={`M${x} ${section.y}V${unrolled.y + unrolled.height}`} />
          {/* In the veil: the section has its own numbers. */}
          <text x={x + (x > width / 2 ? -6 : 6)} y={gap.y + 10} textAnchor={x > width / 2 ? 'end' : 'start'}>
            {pushed.label}
          </text>
        </>
      )}
    </g>
  )
}
