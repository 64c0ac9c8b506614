import { carve } from '../../geometry/region/carve.ts'
import { reachFromAxis } from '../../geometry/region/farthest.ts'
import { clock, norm, type Point, polar } from '../../geometry/region/point.ts'
import { disc, outside, type Region, rectangle, sector } from '../../geometry/region/region.ts'
import { remember } from '../../geometry/remember.ts'
import type { Solid } from '../../geometry/solid/solid.ts'
import type { Body, BoreShape, Box, Opening } from './body.ts'
import { least, type Pick } from './pick.ts'
import { chamfer, cone, taper } from './sloped.ts'

/** What a doubt about places and angles adds to a body on all sides. */
export interface Allowance {
  /** Swells it in the cross-section, mm; negative shrinks it. */
  readonly grow?: number
  /** Widens it to hold itself turned by so many degrees either way; negative leaves what every such turn shares. */
  readonly widen?: number
}

/** The body with numbers only. */
export function realise(body: Body, pick: Pick, { grow = 0, widen = 0 }: Allowance = {}): Solid {
  const s = body.shape
  const turn = body.turn ? pick(body.turn, 0) : 0
  const arc = Math.sin((widen * Math.PI) / 180)
  const swell = body.swell ? pick(body.swell, 1) : 0
  const g = grow + swell
  if (s.kind === 'pin') {
    const radius = Math.max(least, pick(s.radius, 1))
    const tip = tilted(pick(s.rIn, -1), radius, arc)
    const rOut = Math.max(pick(s.rOut, 1), tip + least)
    const side = Math.max(rOut, -tip) * arc
    const [z0, z1] = [pick(s.z, -1), pick(s.z, 1)]
    const height = { z: (z0 + z1) / 2, stretch: (z1 - z0) / 2 }
    return { kind: 'radial', theta: s.theta + turn, ...height, radius, rIn: tip, rOut, grow: g, side }
  }
  const z0 = pick(s.z0, -1) - swell
  const z1 = Math.max(pick(s.z1, 1) + swell, z0)
  if (s.kind === 'round') {
    const at = { x: pick(s.x, 0), y: pick(s.y, 0) }
    const c = turn === 0 ? at : polar(norm(at.x, at.y), clock(at) + turn)
    const round = g + norm(c.x, c.y) * chord(widen)
    const [r0, r1] = [Math.max(least, pick(s.r0, 1)), Math.max(least, pick(s.r1, 1))]
    return r0 === r1
      ? { kind: 'prism', region: disc(c, r0), z0, z1, grow: round }
      : { kind: 'turned', c, ...cone(s, pick, r0, r1, swell), grow: round }
  }
  if (s.kind === 'bore') {
    const c = { x: pick(s.x, 0), y: pick(s.y, 0) }
    const [r0, r1] = [pick(s.r0, -1), pick(s.r1, -1)]
    const whole = {
      kind: 'bore',
      c,
      z0,
      z1,
      ...(r0 === r1 ? { r0, r1 } : taper(s, pick, { z0, z1, r0, r1 })),
      grow: g,
    } as const
    if (!s.openings || s.openings.length === 0) return whole
    const region = slotted(s, Math.min(r0, r1), c, pick, turn, arc)
    return { kind: 'prism', region, z0, z1, grow: g, ...(r0 === r1 ? {} : { within: whole }) }
  }
  if (s.kind === 'box') {
    return { kind: 'prism', region: block(s, pick, turn, widen), z0, z1, grow: g }
  }
  if (s.kind === 'sector') {
    const rIn = Math.max(0, pick(s.rIn, -1))
    const rOut = s.rOut ? Math.max(rIn + least, pick(s.rOut, 1)) : Number.POSITIVE_INFINITY
    return {
      kind: 'prism',
      region: sector(rIn, rOut, s.theta + turn, Math.max(0.01, pick(s.half, 1) + widen)),
      z0,
      z1,
      grow: g,
    }
  }
  const round = widen === 0 ? g : g + reachFromAxis(s.region) * chord(widen)
  const within = s.taper && chamfer(s, s.taper, pick, { z0, z1, swell, grow: round })
  return { kind: 'prism', region: s.region, z0, z1, grow: round, ...(within ? { within } : {}) }
}

/**
 * The inner end of a flat tip that may be turned: its corners come nearer to the axis' plane than its middle. A pin that
 * reaches past the axis comes no nearer by being turned than it is.
 */
function tilted(rIn: number, half: number, arc: number): number {
  const bent = arc < 0 ? -Math.abs(rIn) : Math.max(0, rIn)
  return rIn - half * arc - bent * (1 - Math.sqrt(1 - arc * arc))
}

/** How far a point at radius 1 gets by so many degrees of turn; the sign is kept. */
const chord = (degrees: number): number => 2 * Math.sin((degrees * Math.PI) / 360)

/** A block whose middle lies less aside of the way it faces looks away from the axis, mm. */
const radial = 1e-6

/** A block in the wall, turned about the hilt's axis, or wide enough to hold itself turned. */
function block(s: Box, pick: Pick, turn: number, widen: number): Region {
  const [x, y] = [pick(s.x, 0), pick(s.y, 0)]
  const [hw, hh] = [Math.max(least, pick(s.halfWidth, 1)), Math.max(least, pick(s.halfHeight, 1))]
  const at = polar(norm(x, y), (Math.atan2(y, x) * 180) / Math.PI + turn)
  if (widen === 0) return rectangle(at, hw, hh, s.facing + turn)
  const far = norm(x, y) + norm(hw, hh)
  const f = (s.facing * Math.PI) / 180
  if (Math.abs(x * Math.sin(f) - y * Math.cos(f)) > radial || x * Math.cos(f) + y * Math.sin(f) < 0) {
    const aside = far * chord(widen)
    return rectangle(at, Math.max(least, hw + aside), Math.max(least, hh + aside), s.facing + turn)
  }
  const arc = Math.sin((widen * Math.PI) / 180)
  return rectangle(
    at,
    Math.max(least, hw + far * arc),
    Math.max(least, hh + (hw + far * Math.abs(arc)) * arc),
    s.facing,
  )
}

/** A bore with slots in its wall: the metal less each slot, which starts inside the bore. */
function slotted(s: BoreShape, r: number, c: Point, pick: Pick, turn: number, arc: number): Region {
  return lessSlots({ r, c, slots: (s.openings ?? []).map((o) => slotOf(o, pick, turn, arc)) })
}

interface Slots {
  readonly r: number
  readonly c: Point
  /** Clock angle, floor and half width of each. */
  readonly slots: readonly (readonly [number, number, number])[]
}

/** Outlines are dear to cut out, and a bore meets many bodies. */
const lessSlots = remember(
  200,
  ({ r, c, slots }: Slots) => `${r},${c.x},${c.y}:${slots.join(';')}`,
  ({ r, c, slots }) =>
    carve(
      outside(c, r),
      slots.map(([theta, floor, half]) => rectangle(polar(floor / 2, theta), half, floor / 2, theta)),
    ),
)

/** Turned either way a slot leaves the less room the farther out it is met. */
function slotOf(o: Opening, pick: Pick, turn: number, arc: number): Slots['slots'][number] {
  const floor = o.floor ? pick(o.floor, -1) : 1000
  return [o.theta + turn, floor, Math.max(least, pick(o.halfWidth, -1) - o.reach * arc)]
}
