import type { StripLayout } from './strip-frame.ts'

/** What each strip is. Beside it where there is room, above it on a small sheet. */
export function StripNames({
  layout,
  theta,
  small,
}: {
  readonly layout: StripLayout
  readonly theta: number
  readonly small: boolean
}) {
  const { section, gap, unrolled } = layout
  const names = [
    { y: section.y, name: 'Section', more: `cut at θ ${theta.toFixed(0)}°` },
    { y: gap.y, name: 'Least gap', more: 'mm' },
    { y: unrolled.y, name: 'Unrolled', more: 'from outside' },
  ]
  return (
    <g className="strip-names" aria-hidden="true">
      {names.map(({ y, name, more }) => (
        <g key={name}>
          <text className="strip-name" x={8} y={small ? y - 10 : y + 11}>
            {name}
          </text>
          <text className="strip-more" x={small ? 16 + 8 * name.length : 8} y={small ? y - 10 : y + 26}>
            {more}
          </text>
        </g>
      ))}
      {!small && <RoomKey y={unrolled.y + 34} />}
    </g>
  )
}

/** From too little room to open ground, as on the map. */
const shades = [0, 1, 2, 3, 4, 5].map((i) => `room-${i}`)
const keyWidth = 10

/** What the shades of the map stand for. */
function RoomKey({ y }: { readonly y: number }) {
  return (
    <g className="room-key">
      {shades.map((shade, i) => (
        <rect key={shade} className={shade} x={8 + keyWidth * i} y={y} width={keyWidth} height="9" />
      ))}
      <text className="strip-more" x={8} y={y + 22}>
        tight
      </text>
      <text className="strip-more" x={8 + keyWidth * shades.length} y={y + 22} textAnchor="end">
        wide
      </text>
    </g>
  )
}
