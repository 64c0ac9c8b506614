import type { Frame } from './frame.ts'

export interface RulerProps {
  readonly frame: Frame
  readonly z0: number
  readonly z1: number
  /** Where the ruler's edge lies, px. */
  readonly y: number
}

/** The z ruler that strips share: millimetres from the rear datum. */
export function Ruler({ frame, z0, z1, y }: RulerProps) {
  const fine = frame.scale >= 4.5 ? 1 : frame.scale >= 2 ? 5 : 10
  const named = frame.scale >= 3 ? 10 : frame.scale >= 1.7 ? 20 : 50
  const first = Math.ceil(z0 / fine) * fine
  const marks = Array.from({ length: Math.floor((z1 - first) / fine + 1e-9) + 1 }, (_, i) => first + i * fine)
  return (
    <g className="ruler">
      <line className="ruler-edge" x1={frame.x(z0)} x2={frame.x(z1)} y1={y} y2={y} />
      {marks.map((z) => {
        const long = z % named === 0 ? 9 : z % 5 === 0 ? 6 : 3.5
        return <line key={z} x1={frame.x(z)} x2={frame.x(z)} y1={y} y2={y - long} />
      })}
      {marks
        .filter((z) => z % named === 0)
        .map((z) => (
          <text key={z} x={frame.x(z)} y={y - 12} textAnchor="middle">
            {z}
          </text>
        ))}
    </g>
  )
}
