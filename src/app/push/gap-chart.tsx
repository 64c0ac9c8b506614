import type { InsertionWay } from '../../papers/insertion-way.ts'
import { fixed } from '../sheet/numbers.ts'
import { gapLine } from './gap-line.ts'
import { placeTold, travelTo } from './pushing.ts'

const width = 320
const height = 72

/** The least gap over the way in: as measured, and as a band down to the worst; where it touches, and where it is now. */
export function GapChart({ way, travel }: { readonly way: InsertionWay; readonly travel: number | undefined }) {
  const line = gapLine(way, width, height)
  const tightest = way.samples.toSorted((a, b) => a.gap - b.gap)[0]
  const label =
    `Least gap on the way in, ${placeTold(way, way.from)} to ${fixed(way.to, 1)} mm` +
    (tightest && Number.isFinite(tightest.gap)
      ? `; tightest ${fixed(tightest.gap)} mm at ${fixed(tightest.depth, 1)}.`
      : '.')
  return (
    <figure className="gap-chart">
      <svg viewBox={`0 0 ${width} ${height}`} preserveAspectRatio="none" role="img" aria-label={label}>
        <rect className="gap-clash" x="0" y={line.y(0)} width={width} height={height - line.y(0)} />
        {line.bands.map((points) => (
          <polygon key={points} className="gap-band" points={points} />
        ))}
        <line className="gap-zero" x1="0" x2={width} y1={line.y(0)} y2={line.y(0)} />
        <line className="gap-limit" x1="0" x2={width} y1={line.y(way.limit)} y2={line.y(way.limit)} />
        {line.lines.map((points) => (
          <polyline key={points} className="gap-line" points={points} />
        ))}
        {way.touches.map((t) => {
          const x = line.x(travelTo(way, t.depth))
          return (
            <line
              key={`${t.depth} ${t.obstacle} ${t.mover}`}
              className={t.overlap > 0 ? 'gap-touch' : 'gap-near'}
              x1={x}
              x2={x}
              y1="0"
              y2={height}
            />
          )
        })}
        {travel !== undefined && (
          <line className="gap-now" x1={line.x(travel)} x2={line.x(travel)} y1="0" y2={height} />
        )}
      </svg>
      <figcaption className="gap-scale small soft number" aria-hidden="true">
        <b>least gap, mm</b>
        <span style={{ top: 0 }}>{fixed(line.most, 1)}</span>
        <span style={{ top: `${(100 * line.y(0)) / height}%` }}>0</span>
      </figcaption>
    </figure>
  )
}
