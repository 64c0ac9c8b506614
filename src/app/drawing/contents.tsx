import type { SectionedPart, SledSection } from '../../papers/lengthwise.ts'
import { type Frame, pathOf } from './frame.ts'

/** The sled cut open: wash, hatch, and its edges. */
export function CutSled({ sled, frame }: { readonly sled: SledSection; readonly frame: Frame }) {
  const fill = sled.fills.map((f) => pathOf(f, frame, true)).join('')
  return (
    <g className="sled">
      <path className="wash-sled" d={fill} />
      <path fill="url(#hatch-sled)" d={fill} />
      <path className="line-mid" d={sled.edges.map((e) => pathOf(e, frame)).join('')} />
    </g>
  )
}

/** What lies in the sled or sticks into the bore: seen from the side thin, where the plane cuts it with a full edge. */
export function Contents({ parts, frame }: { readonly parts: readonly SectionedPart[]; readonly frame: Frame }) {
  return (
    <g>
      {parts.map((p) => (
        <g key={p.id} className={`part wash-${p.kind}`}>
          <path className="part-seen" d={p.seen.map((s) => pathOf(s, frame, true)).join('')} />
          <path className="part-cut" d={p.cut.map((s) => pathOf(s, frame, true)).join('')} />
        </g>
      ))}
    </g>
  )
}

/** Names of parts; they lie over the axis, so that it does not strike them out. */
export function PartNames({ parts, frame }: { readonly parts: readonly SectionedPart[]; readonly frame: Frame }) {
  return (
    <g>
      {parts.map((p) => (
        <g key={p.id} className={`part wash-${p.kind}`}>
          <PartName part={p} frame={frame} />
        </g>
      ))}
    </g>
  )
}

/** Written into the part where there is room, upright where it is high rather than long. */
function PartName({ part, frame }: { readonly part: SectionedPart; readonly frame: Frame }) {
  const points = (part.cut.length > 0 ? part.cut : part.seen).flat()
  if (points.length === 0 || part.kind === 'contact') return undefined
  const [xs, ys] = [points.map(([z]) => frame.x(z)), points.map(([, v]) => frame.y(v))]
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]
  const needs = part.name.length * 7 + 8
  const [x, y] = [(x0 + x1) / 2, (y0 + y1) / 2]
  if (x1 - x0 >= needs && y1 - y0 >= 14)
    return (
      <text className="part-name" x={x} y={y} dy="0.35em" textAnchor="middle">
        {part.name}
      </text>
    )
  if (y1 - y0 >= needs && x1 - x0 >= 14)
    return (
      <text className="part-name" transform={`translate(${x} ${y}) rotate(-90)`} dy="0.35em" textAnchor="middle">
        {part.name}
      </text>
    )
  return undefined
}
