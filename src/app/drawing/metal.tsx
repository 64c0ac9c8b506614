import type { CutMetal } from '../../papers/metal-section.ts'
import { breakLine } from './break-line.ts'
import { type Frame, pathOf } from './frame.ts'

/** Cut metal: hatched, its edges thick, and a freehand line where the drawing breaks off. */
export function Metal({ metal, frame }: { readonly metal: readonly CutMetal[]; readonly frame: Frame }) {
  return (
    <g className="metal">
      {metal.map((m, i) => {
        const key = `${m.section}-${i}`
        const ring = pathOf(m.ring, frame, true)
        return (
          <g key={key}>
            <path className="metal-wash" d={ring} />
            <path fill={`url(#hatch-metal-${m.order % 2})`} d={ring} />
            <path className="line-thick" d={m.edges.map((e) => pathOf(e, frame)).join('')} />
            <path className="line-thin" d={m.broken.map((b) => breakLine(b, frame)).join('')} />
          </g>
        )
      })}
    </g>
  )
}
