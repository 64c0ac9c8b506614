import './drawing.css'
import { type ReactNode, useId } from 'react'
import type { CrossSectionView } from '../../papers/cross-section.ts'
import type { SledLayer } from '../../papers/cross-sled.ts'
import { fixed } from '../sheet/numbers.ts'
import { type PlacedGap, placeGaps } from './gap-labels.ts'
import type { Mark } from './lengthwise-section.tsx'
import { type CrossFrame, outlinePaths, place } from './outline-path.ts'
import { PlaceMark } from './place-mark.tsx'
import { useWidth } from './use-width.ts'

export interface CrossSectionProps {
  readonly view: CrossSectionView
  /** Marks at this height are ringed. */
  readonly marks: readonly Mark[]
  /** Largest height of the drawing, px. */
  readonly tallest?: number
  /** What lies over the drawing and can be taken hold of. */
  readonly over?: (frame: CrossFrame) => ReactNode
}

/** Room beside the circle for the numbers, and above it for the angles, px. */
const beside = 68
const above = 22
/** A mark this near the plane is shown in it, mm. */
const near = 0.6

/** The cross-section as seen from the rear: gaps as numbers, the tightest drawn thick. */
export function CrossSection({ view, marks, tallest = 340, over }: CrossSectionProps) {
  const [ref, width] = useWidth<HTMLDivElement>()
  const [clip, wall] = [useId(), useId()]
  const radius = Math.max(40, Math.min((width - 2 * beside) / 2, (tallest - 2 * above) / 2))
  const size = 2 * (radius + above)
  const frame: CrossFrame = { scale: radius / view.reach, cx: width / 2, cy: size / 2 }
  const outer = (view.outside ?? view.reach) * frame.scale
  const gaps = placeGaps(view.gaps, frame, radius)
  const bore = outlinePaths(view.free, frame)
  // What sits in the wall passes it by its own hole.
  const inside = view.contents.filter((c) => !c.inWall)
  return (
    <div ref={ref} className="cross">
      {width > 0 && (
        <svg width={width} height={size} {...(over ? {} : { role: 'img' })} aria-label={told(view)}>
          <clipPath id={clip}>
            <circle cx={frame.cx} cy={frame.cy} r={outer} />
          </clipPath>
          <clipPath id={wall}>
            {view.metal && <path clipRule="evenodd" d={`${circlePath(frame.cx, frame.cy, outer)}${bore}`} />}
          </clipPath>
          {view.metal && (
            <g clipPath={`url(#${clip})`}>
              <circle className="metal-wash" cx={frame.cx} cy={frame.cy} r={outer} />
              <circle fill="url(#hatch-metal-0)" cx={frame.cx} cy={frame.cy} r={outer} />
              <path className="cross-void" d={bore} />
            </g>
          )}
          {view.sleds.map((s) => (
            <SledAcross key={s.id} sled={s} frame={frame} />
          ))}
          {[...view.contents, ...view.intrusions].map((c) => (
            <g key={c.id} className={`part wash-${c.kind}`}>
              <path className="part-cut" d={outlinePaths(c.outlines, frame)} />
            </g>
          ))}
          <g clipPath={`url(#${wall})`}>
            <path fill="url(#hatch-lack)" d={inside.map((c) => outlinePaths(c.outlines, frame)).join('')} />
          </g>
          {view.metal && (
            <g clipPath={`url(#${clip})`}>
              <path className="line-thick" d={bore} />
            </g>
          )}
          {view.metal && (
            <circle
              className={view.outside === undefined ? 'line-broken' : 'line-thick'}
              cx={frame.cx}
              cy={frame.cy}
              r={outer}
            />
          )}
          <path className="line-phantom" d={outlinePaths(view.passing, frame)} />
          <Angles frame={frame} radius={radius} />
          {gaps.map((g) => (
            <GapMark key={`${g.gap.ids.join(' ')} ${g.gap.passing}`} placed={g} />
          ))}
          {marks
            .filter((m) => Math.abs(m.at.z - view.z) <= near)
            .map((m) => {
              const turn = (m.at.theta * Math.PI) / 180
              const [x, y] = place(frame, { x: m.at.r * Math.cos(turn), y: m.at.r * Math.sin(turn) })
              return <PlaceMark key={`${m.tone} ${x} ${y}`} x={x} y={y} tone={m.tone} text={m.text} />
            })}
          {over?.(frame)}
        </svg>
      )}
    </div>
  )
}

const circlePath = (x: number, y: number, r: number): string =>
  `M${x - r} ${y}A${r} ${r} 0 1 0 ${x + r} ${y}A${r} ${r} 0 1 0 ${x - r} ${y}Z`

function SledAcross({ sled, frame }: { readonly sled: CrossSectionView['sleds'][number]; readonly frame: CrossFrame }) {
  return (
    <g className="sled">
      {sled.bodies.map((layers, body) =>
        layers.map((layer, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: bodies and layers have no names of their own and never move.
          <LayerAcross key={`${body} ${i}`} layer={layer} before={layers.slice(0, i)} frame={frame} />
        )),
      )}
      <path className="line-mid" d={outlinePaths(sled.edges, frame)} />
    </g>
  )
}

interface LayerProps {
  readonly layer: SledLayer
  /** What it is built on: its cuts go through that, too. */
  readonly before: readonly SledLayer[]
  readonly frame: CrossFrame
}

/** Added material, and the paper seen through what is cut out of it. */
function LayerAcross({ layer, before, frame }: LayerProps) {
  const clip = useId()
  const body = outlinePaths(layer.adds, frame)
  const solid = before.map((l) => outlinePaths(l.adds, frame)).join('') + body
  return (
    <>
      <clipPath id={clip}>
        <path d={solid} />
      </clipPath>
      <path className="wash-sled" d={body} />
      <path fill="url(#hatch-sled)" d={body} />
      <path
        className="cross-void"
        clipPath={`url(#${clip})`}
        d={layer.cuts.map((c) => outlinePaths([c], frame)).join('')}
      />
    </>
  )
}

/** Centre lines, and the four quarters of the clock angle. */
function Angles({ frame, radius }: { readonly frame: CrossFrame; readonly radius: number }) {
  const { cx, cy } = frame
  const out = radius + 5
  return (
    <g className="angles">
      <path className="line-axis" d={`M${cx - out} ${cy}H${cx + out}M${cx} ${cy - out}V${cy + out}`} />
      <text x={cx} y={cy - out - 4} textAnchor="middle">
        θ 0°
      </text>
      <text x={cx} y={cy + out + 13} textAnchor="middle">
        180°
      </text>
    </g>
  )
}

function GapMark({ placed: { gap, p, q, label, side } }: { readonly placed: PlacedGap }) {
  const tone = gap.gap < gap.limit ? 'gap gap-short' : 'gap'
  const [mx, my] = [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2]
  const [x, y] = label
  const near = side === 'left' ? x + 4 : x - 4
  return (
    <g className={gap.tightest ? `${tone} gap-tightest` : tone}>
      <path className="gap-leader" d={`M${mx} ${my}L${near} ${y}`} />
      <path className="gap-line" d={`M${p[0]} ${p[1]}L${q[0]} ${q[1]}`} />
      <circle className="gap-end" cx={mx} cy={my} r={gap.tightest ? 3 : 2} />
      <text x={x} y={y} dy="0.35em" textAnchor={side === 'left' ? 'end' : 'start'}>
        {fixed(gap.gap)}
      </text>
    </g>
  )
}

/** The picture in words. */
function told(view: CrossSectionView): string {
  const things = [...view.sleds, ...view.contents, ...view.intrusions].map((c) => c.name)
  const gaps = view.gaps.map((g) => `${g.a} to ${g.b} ${fixed(g.gap)}`)
  const bore = view.bore ?? 'no metal'
  return `Cross-section at z ${fixed(view.z, 1)} mm, seen from the rear. ${bore}; ${things.join(', ') || 'nothing in it'}. Gaps in millimetres: ${gaps.join('; ') || 'none under 3'}.`
}
