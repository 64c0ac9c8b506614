import '../drawing/drawing.css'
import type { CutMetal } from '../../papers/metal-section.ts'
import { threadProfile } from '../../papers/thread-profile.ts'
import { Dimension } from '../drawing/dimension.tsx'
import { frameOf, pathOf } from '../drawing/frame.ts'
import { Metal } from '../drawing/metal.tsx'
import { useWidth } from '../drawing/use-width.ts'

/** A bore such as any hilt has, for showing what the fields ask for; nothing is computed from it. */
const bore = 15
const depth = 150
const thread = { length: 11, crest: 15.6, root: 17.4, pitch: 2.6 }
const outer = 20
const end = 4

const wall: CutMetal[] = [1, -1].map((side) => {
  const inner = [
    ...threadProfile(0, thread.length, thread.crest, thread.root, thread.pitch),
    [thread.length, bore],
    [depth, bore],
    [depth, 0],
  ] as const
  const flip = (points: readonly (readonly [number, number])[]) => points.map(([z, r]) => [z, side * r] as const)
  return {
    section: 'sketch',
    name: 'hilt',
    order: 0,
    ring: flip([...inner, [depth + end, 0], [depth + end, outer], [0, outer]]),
    edges: [
      flip(inner),
      flip([
        [0, thread.crest],
        [0, outer],
      ]),
    ],
    broken: [
      flip([
        [0, outer],
        [depth + end, outer],
      ]),
      flip([
        [depth + end, outer],
        [depth + end, 0],
      ]),
    ],
  }
})

/** What goes where in the usual arrangement, dashed. */
const ghosts = [
  { name: 'speaker', z0: 4, z1: 10, v0: -13, v1: 13 },
  { name: 'cell', z0: 20, z1: 86, v0: -13, v1: 5.4 },
  { name: 'board', z0: 22, z1: 64, v0: 7.4, v1: 13 },
]

/** Before anything is typed: where the sizes are taken. The field that has the focus lights its dimension. */
export function MeasureSketch({ lit }: { readonly lit: string | undefined }) {
  const [ref, width] = useWidth<HTMLDivElement>()
  const margin = { left: 64, right: 18, top: 18, bottom: 34 }
  const frame = frameOf({ z0: 0, z1: depth + end, reach: outer, width, margin, tallest: 260, leastScale: 1.7 })
  const { x, y } = frame
  return (
    <div className="strip" ref={ref}>
      {width > 0 && (
        <svg
          width={frame.width}
          height={frame.height}
          role="img"
          aria-label="Where to measure: the bore is the inner width of the tube, the depth runs from the mouth to the end of the bore, the thread at the mouth is optional. Speaker, cell and board lie in it in this order."
        >
          <Metal metal={wall} frame={frame} />
          {ghosts.map((g) => (
            <g key={g.name} className="ghost">
              <path
                d={pathOf(
                  [
                    [g.z0, g.v0],
                    [g.z1, g.v0],
                    [g.z1, g.v1],
                    [g.z0, g.v1],
                  ],
                  frame,
                  true,
                )}
              />
              <text
                transform={`translate(${x((g.z0 + g.z1) / 2)} ${y((g.v0 + g.v1) / 2)})${g.z1 - g.z0 < 10 ? ' rotate(-90)' : ''}`}
                textAnchor="middle"
                dy="0.35em"
              >
                {g.name}
              </text>
            </g>
          ))}
          <path className="line-axis" d={`M${x(0) - 8} ${y(0)}H${x(depth + end) + 8}`} />
          <Dimension
            upright
            from={[x(depth) - 26, y(bore)]}
            to={[x(depth) - 26, y(-bore)]}
            at={x(depth) - 26}
            text="bore"
            lit={lit === 'bore'}
          />
          <Dimension
            upright
            from={[x(0), y(thread.root)]}
            to={[x(0), y(-thread.root)]}
            at={34}
            text="thread"
            lit={lit === 'thread' || lit === 'threadLength'}
          />
          <Dimension
            from={[x(0), y(-outer)]}
            to={[x(depth), y(-outer)]}
            at={y(-outer) + 24}
            text="depth"
            lit={lit === 'depth'}
          />
        </svg>
      )}
    </div>
  )
}
