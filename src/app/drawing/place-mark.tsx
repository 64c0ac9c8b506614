/** A ring around a place in a drawing: the tightest one, or the one of the finding that is open. */
export function PlaceMark(props: {
  readonly x: number
  readonly y: number
  readonly tone: string
  readonly text?: string | undefined
}) {
  const { x, y, tone, text } = props
  return (
    <g className={`place place-${tone}`}>
      <circle className="place-halo" cx={x} cy={y} r="7.5" />
      <circle cx={x} cy={y} r="7.5" />
      <circle className="place-dot" cx={x} cy={y} r="1.6" />
      <text x={x - 12} y={y + 4} textAnchor="end">
        {text}
      </text>
    </g>
  )
}
