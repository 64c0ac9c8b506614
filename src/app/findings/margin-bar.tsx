import type { Finding } from '../../checks/finding.ts'
import { signed } from '../sheet/numbers.ts'

/** The stretch of margins that all bars of a list share, so that they can be compared. */
export interface MarginScale {
  readonly from: number
  readonly to: number
}

/** Bars of one unit share a scale that shows what is near the limit; what is far off runs out of it. */
export function marginScale(findings: readonly Finding[]): MarginScale {
  const worst = Math.min(0, ...findings.map((f) => f.margin.worst))
  const least = Math.max(-4, worst * 1.1)
  return { from: Math.min(-0.5, least), to: Math.max(1.5, -least) }
}

export interface MarginBarProps {
  readonly finding: Finding
  readonly scale: MarginScale
}

/** From the worst to the best margin, the nominal as a tick, the limit as the upright line. Left of it does not hold. */
export function MarginBar({ finding, scale }: MarginBarProps) {
  const { worst, nominal, best } = finding.margin
  const at = (m: number): number => 100 * ((m - scale.from) / (scale.to - scale.from))
  const inside = (m: number): number => Math.min(100, Math.max(0, at(m)))
  const [a, b, limit] = [inside(worst), inside(best), at(0)]
  const lacking = Math.max(0, Math.min(b, limit) - a)
  return (
    <svg
      className={`bar bar-${finding.status}`}
      height="20"
      role="img"
      aria-label={`Over the limit: worst ${signed(worst)}, nominal ${signed(nominal)}, best ${signed(best)} ${finding.unit}`}
    >
      <line className="bar-line" x1="0" x2="100%" y1="10" y2="10" />
      {at(worst) <= 100 && at(best) >= 0 && (
        <rect className="bar-span" x={`${a}%`} width={`${Math.max(0.6, b - a)}%`} y="5" height="10" />
      )}
      {lacking > 0 && <rect fill="url(#hatch-lack)" x={`${a}%`} width={`${lacking}%`} y="5" height="10" />}
      <line className="bar-limit" x1={`${limit}%`} x2={`${limit}%`} y1="0" y2="20" />
      {at(nominal) >= 0 && at(nominal) <= 100 && (
        <line className="bar-nominal" x1={`${at(nominal)}%`} x2={`${at(nominal)}%`} y1="3" y2="17" />
      )}
      {at(best) > 100 && (
        <svg x="100%" overflow="visible" aria-hidden="true">
          <path className="bar-beyond" d="M-7 5l5 5-5 5" />
        </svg>
      )}
      {at(worst) < 0 && <path className="bar-beyond" d="M7 5l-5 5 5 5" />}
    </svg>
  )
}
