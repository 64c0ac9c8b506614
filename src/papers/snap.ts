import type { HandleShape, Neighbour, PartHandle } from './part-handles.ts'

/** A place in the cross-section, mm. */
export interface Spot {
  readonly x: number
  readonly y: number
}

/** Where a part that is dragged comes to lie, and at what it was caught; nothing where it lies free. */
export interface Caught<T> {
  readonly to: T
  readonly at: string | undefined
}

/** Turns at which a part is caught on its way around, degrees. */
const turn = 15
/** Nearer to the axis than this a direction means nothing, mm. */
const middle = 0.5

/** Along the axis: its rear end wanted at `z0`, mm. The nearest face within `reach` mm catches it. */
export function snapAlong(handle: PartHandle, z0: number, reach: number): Caught<number> {
  const length = handle.z1 - handle.z0
  const places = handle.faces.map(({ z, name, end }) => ({ z0: end === 'rear' ? z : z - length, name }))
  const best = nearest(places, (p) => Math.abs(p.z0 - z0), reach)
  return best ? { to: rounded(best.z0), at: best.name } : { to: rounded(z0), at: undefined }
}

/**
 * In the cross-section: its middle wanted at a spot. Caught by the axis, the lines through it, even clock angles, the
 * rims it should not pass, and neighbours: touching, or with the least gap between.
 */
export function snapAcross(handle: PartHandle, wanted: Spot, reach: number): Caught<Spot> {
  const off = (p: Spot) => Math.hypot(p.x - wanted.x, p.y - wanted.y)
  if (off({ x: 0, y: 0 }) <= reach) return { to: { x: 0, y: 0 }, at: 'axis' }
  // A line first, then along it to what stops there: a part can lie on a line and at a rim.
  const line = nearest(onLines(handle, wanted), off, reach)
  const from = line ?? wanted
  const stop = nearest([...onRims(handle, from), ...besideOthers(handle, from)], off, reach)
  const best = stop ?? line
  const { x, y } = best ?? wanted
  return { to: { x: rounded(x), y: rounded(y) }, at: best?.name }
}

interface Place extends Spot {
  readonly name: string
}

function nearest<T>(places: readonly T[], off: (p: T) => number, reach: number): T | undefined {
  return places.reduce<T | undefined>(
    (best, p) => (off(p) <= reach && (!best || off(p) < off(best)) ? p : best),
    undefined,
  )
}

const rounded = (n: number): number => Number(n.toFixed(3)) + 0

function onLines({ shape }: PartHandle, { x, y }: Spot): Place[] {
  const away = Math.hypot(x, y)
  const facing = shape.kind === 'box' ? shape.facing : 0
  const ahead = x * cos(facing) + y * sin(facing)
  const even = turn * Math.round((Math.atan2(y, x) * 180) / Math.PI / turn)
  return [
    { x: ahead * cos(facing), y: ahead * sin(facing), name: 'middle line' },
    ...(away > middle ? [{ x: away * cos(even), y: away * sin(even), name: `θ ${(even + 360) % 360}°` }] : []),
  ]
}

/** Out along the direction it lies in, until its farthest point comes to the rim. */
function onRims({ shape, rims }: PartHandle, { x, y }: Spot): Place[] {
  const away = Math.hypot(x, y)
  if (away < middle) return []
  const [ux, uy] = [x / away, y / away]
  return rims.flatMap(({ radius, name }): Place[] => {
    const d = distanceAt(shape, ux, uy, radius)
    return d === undefined ? [] : [{ x: d * ux, y: d * uy, name }]
  })
}

/** How far out a shape can lie in a direction with all of it inside a radius; undefined where not even on the axis. */
function distanceAt(shape: HandleShape, ux: number, uy: number, radius: number): number | undefined {
  if (shape.kind === 'round') return radius >= shape.radius ? radius - shape.radius : undefined
  const c = cornersOf(shape).map((p) => {
    const along = p.x * ux + p.y * uy
    const room = radius ** 2 - (p.x ** 2 + p.y ** 2 - along ** 2)
    return room < 0 ? Number.NaN : Math.sqrt(room) - along
  })
  const least = Math.min(...c)
  return least >= 0 ? least : undefined
}

function cornersOf({ halfU, halfV, facing }: Extract<HandleShape, { kind: 'box' }>): Spot[] {
  return [1, -1].flatMap((u) =>
    [1, -1].map((v) => ({
      x: v * halfV * cos(facing) - u * halfU * sin(facing),
      y: v * halfV * sin(facing) + u * halfU * cos(facing),
    })),
  )
}

function besideOthers(handle: PartHandle, wanted: Spot): Place[] {
  return handle.beside.flatMap((other) =>
    [0, handle.gap].flatMap((gap) => {
      const name = gap === 0 ? `face of ${other.name}` : `least gap to ${other.name}`
      return besideOne(handle.shape, other, wanted, gap).map((spot) => ({ ...spot, name }))
    }),
  )
}

function besideOne(shape: HandleShape, other: Neighbour, wanted: Spot, gap: number): Spot[] {
  const [dx, dy] = [wanted.x - other.x, wanted.y - other.y]
  if (shape.kind === 'round' && other.shape.kind === 'round') {
    const away = Math.hypot(dx, dy)
    const d = shape.radius + other.shape.radius + gap
    return away < middle ? [] : [{ x: other.x + (dx / away) * d, y: other.y + (dy / away) * d }]
  }
  const facing = commonFacing(shape, other.shape)
  if (facing === undefined) return []
  const [v, u] = [dx * cos(facing) + dy * sin(facing), dy * cos(facing) - dx * sin(facing)]
  const [a, b] = [halves(shape, facing), halves(other.shape, facing)]
  const at = (toU: number, toV: number): Spot => ({
    x: other.x + toV * cos(facing) - toU * sin(facing),
    y: other.y + toV * sin(facing) + toU * cos(facing),
  })
  const [farU, farV] = [a.u + b.u, a.v + b.v]
  return [
    ...(Math.abs(u) < farU ? [at(u, Math.sign(v) * (farV + gap))] : []),
    ...(Math.abs(v) < farV ? [at(Math.sign(u) * (farU + gap), v)] : []),
  ]
}

/** The direction in which both lie square; undefined where they are turned against each other. */
function commonFacing(a: HandleShape, b: HandleShape): number | undefined {
  if (a.kind === 'round') return b.kind === 'round' ? 0 : b.facing
  if (b.kind === 'round') return a.facing
  const turned = (((a.facing - b.facing) % 90) + 90) % 90
  return turned < 0.5 || turned > 89.5 ? a.facing : undefined
}

function halves(shape: HandleShape, facing: number): { readonly u: number; readonly v: number } {
  if (shape.kind === 'round') return { u: shape.radius, v: shape.radius }
  const across = Math.abs(sin(shape.facing - facing)) > 0.7
  return across ? { u: shape.halfV, v: shape.halfU } : { u: shape.halfU, v: shape.halfV }
}

const cos = (degrees: number): number => Math.cos((degrees * Math.PI) / 180)
const sin = (degrees: number): number => Math.sin((degrees * Math.PI) / 180)
