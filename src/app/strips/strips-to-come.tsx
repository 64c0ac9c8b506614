import './strips-to-come.css'
import type { StripLayout } from './strip-frame.ts'

/** Holds the room of the gap strip and the map until they are worked out. */
export function StripsToCome({ layout }: { readonly layout: StripLayout }) {
  const { gap, unrolled, left, width } = layout
  return (
    <g className="strips-to-come">
      {[gap, unrolled].map(({ y, height }) => (
        <g key={y}>
          <rect x={left} y={y} width={Math.max(0, width - 16 - left)} height={height} />
          <text x={left + 10} y={y + height / 2} dy="0.35em">
            being worked out …
          </text>
        </g>
      ))}
    </g>
  )
}
