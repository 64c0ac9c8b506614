import { diameterLabels, dimensionChains } from '../../papers/dimension-chains.ts'
import type { LengthwiseView } from '../../papers/lengthwise.ts'
import { Dimension } from '../drawing/dimension.tsx'
import { fixed } from '../sheet/numbers.ts'
import type { StripLayout } from './strip-frame.ts'

/** Two chains below the section, and the bores' widths above it (ISO 129-1). */
export function ChainDimensions({ view, layout }: { readonly view: LengthwiseView; readonly layout: StripLayout }) {
  const { frame, section, left, width } = layout
  const bottom = section.y + section.height
  const [contents, sections] = dimensionChains(view)
  const edge = bottom - 48
  // The stretch of a line that is in view: its number stands there, not at a middle that may lie beyond the edge.
  const seen = (from: number, to: number) => [Math.max(left, frame.x(from)), Math.min(width - 16, frame.x(to))] as const
  return (
    <g className="chains">
      {[contents, sections].map((chain, row) =>
        chain.map(({ from, to }) => {
          const [a, b] = seen(from, to)
          const at = bottom - 28 + row * 22
          const text = fixed(to - from, 1)
          return (
            <g key={`${row} ${from}`} className="dimension">
              <Dimension from={[frame.x(from), edge]} to={[frame.x(to), edge]} at={at} text="" />
              {/* A stretch too short for its number keeps its line; the number is told when one zooms in. */}
              {b - a > letter * text.length && (
                <text x={(a + b) / 2} y={at - 5} textAnchor="middle">
                  {text}
                </text>
              )}
            </g>
          )
        }),
      )}
      {diameterLabels(view).map(({ id, z0, z1, text }) => {
        const [a, b] = seen(z0, z1)
        return (
          b - a > letter * text.length && (
            <text key={id} className="bore-width" x={(a + b) / 2} y={section.y + 14} textAnchor="middle">
              {text}
            </text>
          )
        )
      })}
    </g>
  )
}

/** Room for each letter of a number, with what must be free beside it, px. */
const letter = 7
