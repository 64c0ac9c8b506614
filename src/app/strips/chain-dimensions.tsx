import { diameterLabels, dimensionChains } from '../../papers/dimension-chains.ts'
import type { LengthwiseView } from '../../papers/lengthwise.ts'
import { Dimension } from '../drawing/dimension.tsx'
import { fixed } from '../sheet/numbers.ts'
import type { StripLayout } from './strip-frame.ts'

/** Two chains below the section, and the bores' widths above it (ISO 129-1). */
export function ChainDimensions({ view, layout }: { readonly view: LengthwiseView; readonly layout: StripLayout }) {
  const { frame, section } = layout
  const bottom = section.y + section.height
  const [contents, sections] = dimensionChains(view)
  const edge = bottom - 48
  return (
    <g className="chains">
      {[contents, sections].map((chain, row) =>
        chain.map(({ from, to }) => {
          const [a, b] = [frame.x(from), frame.x(to)]
          const text = fixed(to - from, 1)
          // A stretch too short for its number keeps its line; the number is told when one zooms in.
          return (
            <Dimension
              key={`${row} ${from}`}
              from={[a, edge]}
              to={[b, edge]}
              at={bottom - 28 + row * 22}
              text={b - a > 7 * text.length ? text : ''}
            />
          )
        }),
      )}
      {diameterLabels(view).map(({ id, z0, z1, text }) => {
        const room = frame.x(z1) - frame.x(z0)
        return (
          room > 7 * text.length && (
            <text
              key={id}
              className="bore-width"
              x={(frame.x(z0) + frame.x(z1)) / 2}
              y={section.y + 14}
              textAnchor="middle"
            >
              {text}
            </text>
          )
        )
      })}
    </g>
  )
}
