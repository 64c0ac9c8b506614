import type { PlanBody, PlanSolid } from './plan.ts'

/** A number in the plan that no solid can be made from: the kernel would take it in silence. */
export interface BadNumber {
  readonly item: string
  readonly field: string
  readonly got: number
  readonly limit: string
}

/** Largest coordinate believed, mm. */
const most = 2000
/** Thinnest solid handed to the kernel, mm. */
const thinnest = 1e-3

/** Everything that must be caught before the kernel, which gives an empty or unmoved solid without a word. */
export function checkPlan(body: PlanBody): BadNumber[] {
  return body.items.flatMap((item) => checkSolid(item.solid).map((b) => ({ item: item.id, ...b })))
}

function checkSolid(s: PlanSolid): Omit<BadNumber, 'item'>[] {
  const found: Omit<BadNumber, 'item'>[] = []
  const coordinate = (field: string, got: number) => {
    if (!(Math.abs(got) <= most)) found.push({ field, got, limit: `a number between −${most} and ${most} mm` })
  }
  const size = (field: string, got: number) => {
    if (!(got >= thinnest && got <= most)) found.push({ field, got, limit: `${thinnest} to ${most} mm` })
  }
  const angle = (field: string, got: number) => {
    if (!(Math.abs(got) <= 3600)) found.push({ field, got, limit: 'an angle in degrees' })
  }
  const outline = (points: readonly (readonly [number, number])[]) => {
    for (const [i, [a, b]] of points.entries()) {
      coordinate(`points/${i}/0`, a)
      coordinate(`points/${i}/1`, b)
    }
    if (!(areaOf(points) > thinnest * thinnest))
      found.push({ field: 'points', got: areaOf(points), limit: 'an outline counted counter-clockwise, with an area' })
  }
  if (s.shape === 'spoke') {
    coordinate('z', s.z)
    angle('theta', s.theta)
    size('radius', s.radius)
    size('length', s.rOut - s.rIn)
    coordinate('rIn', s.rIn)
    return found
  }
  if (s.shape === 'plate') {
    angle('theta', s.theta)
    coordinate('rIn', s.rIn)
    size('height', s.rOut - s.rIn)
    outline(s.points)
    return found
  }
  coordinate('z0', s.z0)
  size('length', s.z1 - s.z0)
  if (s.shape === 'cylinder' || s.shape === 'box') {
    coordinate('x', s.x)
    coordinate('y', s.y)
  }
  if (s.shape === 'cylinder') {
    size('r0', s.r0)
    size('r1', s.r1)
  }
  if (s.shape === 'box') {
    size('width', s.width)
    size('height', s.height)
    angle('facing', s.facing)
  }
  if (s.shape === 'ring-sector') {
    coordinate('x', s.x ?? 0)
    coordinate('y', s.y ?? 0)
    if (!(s.rIn >= 0)) found.push({ field: 'rIn', got: s.rIn, limit: '0 or more' })
    size('thickness', s.rOut - s.rIn)
    angle('theta', s.theta)
    if (!(s.half > 0 && s.half <= 180)) found.push({ field: 'half', got: s.half, limit: 'above 0 and at most 180°' })
  }
  if (s.shape === 'extruded') outline(s.points)
  return found
}

export function areaOf(points: readonly (readonly [number, number])[]): number {
  return points.reduce((sum, [x, y], i) => {
    const [u, v] = points[(i + 1) % points.length] as readonly [number, number]
    return sum + (x * v - u * y) / 2
  }, 0)
}
