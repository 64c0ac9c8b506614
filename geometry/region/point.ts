/** A point of a cross-section, mm: x towards θ = 0, y towards θ = 90° (clockwise as seen from the rear). */
export interface Point {
  readonly x: number
  readonly y: number
}

export const point = (x: number, y: number): Point => ({ x, y })

export const origin: Point = { x: 0, y: 0 }

export const radians = (degrees: number): number => (degrees * Math.PI) / 180
export const degrees = (rad: number): number => (rad * 180) / Math.PI

/** The point at radius r (mm) and clock angle θ (degrees). */
export const polar = (r: number, theta: number): Point => ({
  x: r * Math.cos(radians(theta)),
  y: r * Math.sin(radians(theta)),
})

/** Length of (x, y). A plain root: Math.hypot guards against overflow that millimetres never see, at ten times the cost. */
export const norm = (x: number, y: number): number => Math.sqrt(x * x + y * y)

export const distance = (a: Point, b: Point): number => norm(a.x - b.x, a.y - b.y)

/** Clock angle of a point in degrees, 0 ≤ θ < 360. */
export function clock(p: Point): number {
  const theta = degrees(Math.atan2(p.y, p.x))
  return theta < 0 ? theta + 360 : theta
}

/** An angle brought into 0 ≤ θ < 360. */
export const wrap = (theta: number): number => ((theta % 360) + 360) % 360

/** The signed smallest turn from a to b, degrees, −180 < turn ≤ 180. */
export function turnBetween(a: number, b: number): number {
  const t = wrap(b - a)
  return t > 180 ? t - 360 : t
}
