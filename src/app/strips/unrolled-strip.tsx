import { memo, useId } from 'react'
import type { UnrolledRing, UnrolledView } from '../../papers/unrolled.ts'
import type { UnrolledMark } from '../../papers/unrolled-marks.ts'
import { round } from '../drawing/frame.ts'
import { fixed } from '../sheet/numbers.ts'
import { type MarkName, markNames } from './mark-names.ts'
import type { Range, StripLayout } from './strip-frame.ts'

export interface UnrolledStripProps {
  readonly view: UnrolledView
  readonly layout: StripLayout
  /** What the section above shows: metal that is broken off there has no map. */
  readonly whole: Range
  /** References whose mark is lit. */
  readonly lit: readonly string[]
}

/** The hilt unrolled, seen from outside: the darker, the less room; lines of equal room; what is in and on the wall. */
export const UnrolledStrip = memo(function UnrolledStrip({ view, layout, whole, lit }: UnrolledStripProps) {
  const clip = useId()
  const { frame, unrolled, left, width } = layout
  const y = (theta: number): number => round(unrolled.y + (theta / 360) * unrolled.height)
  const x = (z: number): number => round(frame.x(z))
  const x0 = Math.max(left, frame.x(Math.max(view.z0, whole.z0)))
  const x1 = Math.min(width - 16, frame.x(Math.min(view.z1, whole.z1)))
  const path = (rings: readonly UnrolledRing[]): string =>
    rings.map((r) => `${r.map(([z, t], i) => `${i === 0 ? 'M' : 'L'}${x(z)} ${y(t)}`).join('')}Z`).join('')
  const names = markNames(view.marks, layout, { x0, x1, y0: unrolled.y, y1: unrolled.y + unrolled.height })
  return (
    <g className="strip-unrolled">
      <clipPath id={clip}>
        <rect x={x0} y={unrolled.y} width={Math.max(0, x1 - x0)} height={unrolled.height} />
      </clipPath>
      <g clipPath={`url(#${clip})`}>
        <rect className="room-0" x={x0} y={unrolled.y} width={Math.max(0, x1 - x0)} height={unrolled.height} />
        {view.bands.map((b, i) => (
          <path key={b.level} className={`room-${i + 1}`} fillRule="evenodd" d={path(b.rings)} />
        ))}
        <path className="room-none" fillRule="evenodd" d={path(view.overlap)} />
        {[90, 180, 270].map((t) => (
          <line key={t} className="quarter" x1={x0} x2={x1} y1={y(t)} y2={y(t)} />
        ))}
        {view.seams.map((s) => (
          <line key={s.z} className="seam" x1={x(s.z)} x2={x(s.z)} y1={unrolled.y} y2={unrolled.y + unrolled.height}>
            <title>{`${s.name} begins at z ${fixed(s.z, 1)}`}</title>
          </line>
        ))}
        {view.marks.map((m) => (
          <MarkOnWall key={m.id} mark={m} name={names.get(m.id)} layout={layout} lit={lit.includes(m.id)} />
        ))}
      </g>
      <rect className="unrolled-edge" x={x0} y={unrolled.y} width={Math.max(0, x1 - x0)} height={unrolled.height} />
      {[0, 90, 180, 270, 360].map((t) => (
        <text
          key={t}
          className="angle-name"
          x={left - 8}
          y={y(t)}
          dy={t === 0 ? '0.7em' : t === 360 ? '0em' : '0.35em'}
          textAnchor="end"
        >
          {t}°
        </text>
      ))}
    </g>
  )
})

/** Drawn again where it reaches over 0°. */
function MarkOnWall({
  mark,
  name,
  layout,
  lit,
}: {
  readonly mark: UnrolledMark
  readonly name: MarkName | undefined
  readonly layout: StripLayout
  readonly lit: boolean
}) {
  const { frame, unrolled } = layout
  const tall = unrolled.height / 360
  const theta = ((mark.theta % 360) + 360) % 360
  const turns = [0, -360, 360].filter((t) => theta + t + mark.halfTheta > 0 && theta + t - mark.halfTheta < 360)
  const whole = mark.halfTheta >= 180
  const cx = round(frame.x(mark.z))
  const rx = round(mark.halfZ * frame.scale)
  const ry = round(mark.halfTheta * tall)
  return (
    <g className={`wall-mark wall-${mark.kind}${lit ? ' wall-lit' : ''}`}>
      <title>{`${mark.name}, z ${fixed(mark.z, 1)}, θ ${fixed(mark.theta, 0)}°`}</title>
      {(whole ? [0] : turns).map((t) => {
        const cy = whole ? unrolled.y + unrolled.height / 2 : round(unrolled.y + (theta + t) * tall)
        return mark.form === 'round' ? (
          <ellipse key={t} cx={cx} cy={cy} rx={Math.max(2, rx)} ry={Math.max(2, ry)} />
        ) : (
          <rect key={t} x={round(cx - rx)} y={round(cy - ry)} width={2 * rx} height={2 * ry} />
        )
      })}
      {name && (
        <text x={round(name.x)} y={round(name.y)} textAnchor={name.anchor}>
          {mark.name}
        </text>
      )}
    </g>
  )
}

/** The map in words. */
export function unrolledTold(view: UnrolledView): string {
  const marks = view.marks.map((m) => `${m.name} at z ${fixed(m.z, 1)}, θ ${fixed(m.theta, 0)}°`)
  const seams = view.seams.map((s) => `${s.name} from z ${fixed(s.z, 1)}`)
  return `The hilt unrolled, seen from outside, blade to the right, θ growing downwards; the darker, the less room. ${[...seams, ...marks].join('; ') || 'Nothing in the wall'}.`
}
