/** A dimension after ISO 129-1: extension lines, dimension line with filled arrowheads, its text above the line. */
export interface DimensionProps {
  /** The two places that are measured, px. */
  readonly from: readonly [number, number]
  readonly to: readonly [number, number]
  /** Where the dimension line lies: its y for a level one, its x for an upright one, px. */
  readonly at: number
  readonly upright?: boolean
  readonly text: string
  /** Lit up: its field has the focus. */
  readonly lit?: boolean
}

/** Beyond the dimension line, and short of the object, px. */
const past = 4
const short = 2
/** A line too short for arrows inside has them outside, px. */
const tight = 22

export function Dimension({ from, to, at, upright = false, text, lit = false }: DimensionProps) {
  const [a, b] = upright ? [from[1], to[1]] : [from[0], to[0]]
  const [low, high] = [Math.min(a, b), Math.max(a, b)]
  const outside = high - low < tight
  const point = (along: number, across: number) => (upright ? `${across} ${along}` : `${along} ${across}`)
  const line = outside ? `M${point(low - 12, at)}L${point(high + 12, at)}` : `M${point(low, at)}L${point(high, at)}`
  const extension = ([x, y]: readonly [number, number]) => {
    const [along, across] = upright ? [y, x] : [x, y]
    const way = Math.sign(at - across)
    return `M${point(along, across + short * way)}L${point(along, at + past * way)}`
  }
  const arrow = (tip: number, way: number) =>
    `M${point(tip, at)}L${point(tip + 8 * way, at - 2.2)}L${point(tip + 8 * way, at + 2.2)}Z`
  const middle = (low + high) / 2
  return (
    <g className={lit ? 'dimension dimension-lit' : 'dimension'}>
      <path className="dimension-line" d={`${extension(from)}${extension(to)}${line}`} />
      <path className="dimension-arrow" d={`${arrow(low, outside ? -1 : 1)}${arrow(high, outside ? 1 : -1)}`} />
      <text
        textAnchor="middle"
        transform={upright ? `translate(${at - 5} ${middle}) rotate(-90)` : `translate(${middle} ${at - 5})`}
      >
        {text}
      </text>
    </g>
  )
}
