import { isBeside, isPushed, isXy } from '../project/forms.ts'
import type { AcrossInput, Beside, Pushed } from '../project/schema/place.ts'
import type { QuantityInput } from '../project/schema/quantity.ts'
import { add, bend, combine, doubt, exact, most, type Quantity, reachOf, scale, sub } from '../quantity/quantity.ts'
import { type Context, wrong } from './context.ts'
import { type Extent, reachAlong } from './extent.ts'
import { quantityOf } from './quantity.ts'
import { turned } from './turned.ts'
import { isBare } from './typed-limit.ts'

/** Where a part's middle lies in the cross-section, and the clock angle it faces. */
export interface Across {
  readonly x: Quantity
  readonly y: Quantity
  readonly facing: number
  /** Doubt about the way it faces, degrees about 0: its own, or that of the clock angle it was placed at. */
  readonly turn?: Quantity
  /** How far it may lie aside, any way, for what is turned against it reaching farther; nominal 0. */
  readonly sway?: Quantity
}

export interface AcrossAsk {
  readonly path: string
  readonly extent: Extent
  /** Clock angle it faces, where that was given. */
  readonly facing: Quantity | undefined
  /** True where the place is made, as in a sled; false where it was measured, as in the wall. */
  readonly drawn: boolean
  /** Radius of the sled's outside there. */
  readonly envelope: Quantity | undefined
  /** Another part's place and extent. */
  readonly beside: (ref: string, path: string) => { readonly across: Across; readonly extent: Extent } | undefined
}

const onAxis: Across = { x: exact(0), y: exact(0), facing: 0 }

/** The place of a part in the cross-section; undefined where it is wrong or does not fit at all. */
export function acrossOf(ctx: Context, input: AcrossInput | undefined, ask: AcrossAsk): Across | undefined {
  if (input === undefined) return { ...onAxis, ...facingOf(ask, exact(0)) }
  if (isXy(input)) {
    const [x, y] = [offset(ctx, input.x, ask, 'x'), offset(ctx, input.y, ask, 'y')]
    return x && y && { x, y, ...facingOf(ask, exact(0)) }
  }
  if (isBeside(input)) return besidePart(ctx, input, ask)
  if (isPushed(input)) return pushedOut(ctx, input, ask)
  const [r, theta] = [offset(ctx, input.r, ask, 'r'), direction(ctx, input.theta, ask, 'theta')]
  return r && theta && { ...along(r, theta), ...facingOf(ask, theta) }
}

/** As given, or the way it was placed, with the doubt about that. */
function facingOf(ask: AcrossAsk, theta: Quantity): Pick<Across, 'facing' | 'turn'> {
  const faces = ask.facing ?? theta
  const turn = turned(faces)
  return { facing: faces.nominal, ...(turn ? { turn } : {}) }
}

/** Doubt about how a part stands turned against the clock angle it is placed at: none where it faces that way. */
const against = (ask: AcrossAsk, theta: Quantity): Quantity =>
  ask.facing ? add(doubt(ask.facing), doubt(theta)) : exact(0)

function offset(ctx: Context, input: QuantityInput, ask: AcrossAsk, field: string): Quantity | undefined {
  return drawn(quantityOf(ctx, input, { path: `${ask.path}/${field}`, as: 'offset' }), input, ask)
}

function direction(ctx: Context, input: QuantityInput, ask: AcrossAsk, field: string): Quantity | undefined {
  return drawn(quantityOf(ctx, input, { path: `${ask.path}/${field}`, as: 'angle' }), input, ask)
}

/** A bare number in a sled is where it will be drawn to hold the part, not a reading: only the print makes it stray. */
function drawn(q: Quantity | undefined, input: QuantityInput, ask: AcrossAsk): Quantity | undefined {
  return q && ask.drawn && isBare(input) ? exact(q.nominal) : q
}

/** A place at a radius and a clock angle. Turned, it shifts the farther the larger the radius may be. */
function along(r: Quantity, theta: Quantity): { x: Quantity; y: Quantity } {
  const [c, s] = [Math.cos((theta.nominal * Math.PI) / 180), Math.sin((theta.nominal * Math.PI) / 180)]
  const turn = doubt(theta)
  const k = (most(r) * Math.PI) / 180
  return {
    x: combine([
      [r, c],
      [turn, -s * k],
    ]),
    y: combine([
      [r, s],
      [turn, c * k],
    ]),
  }
}

/** Pushed towards the sled's outside until `gap` is left: round parts by their radius, flat ones by their corners. */
function pushedOut(ctx: Context, input: Pushed, ask: AcrossAsk): Across | undefined {
  const [theta, gap] = [direction(ctx, input.pushed, ask, 'pushed'), offset(ctx, input.gap, ask, 'gap')]
  // Where the hilt around it is wrong already, nobody knows how wide its sled is.
  if (!ask.envelope && ctx.problems.length > 0) return undefined
  if (!ask.envelope)
    return wrong(
      ctx,
      'contradiction',
      ask.path,
      'pushed',
      'a part beside its sled’s body',
      'Give x and y, or move it beside the sled.',
    )
  if (!theta || !gap) return undefined
  const faces = facingOf(ask, theta)
  const { facing } = faces
  const inside = sub(ask.envelope, gap)
  const e = ask.extent
  if (e.round) return { ...along(sub(inside, e.halfU), theta), ...faces }
  const turned = facing - theta.nominal
  const [out, side] = [reachAlong(e, turned), reachAlong(e, turned + 90)]
  const room = inside.nominal ** 2 - side.nominal ** 2
  if (room <= 0)
    return wrong(
      ctx,
      'does-not-fit',
      ask.path,
      `${(2 * side.nominal).toFixed(2)} mm wide`,
      `narrower than the sled, ${(2 * inside.nominal).toFixed(2)} mm`,
      'Turn it, choose a smaller part, or widen the sled.',
    )
  const root = Math.sqrt(room)
  const r = combine([
    [exact(root), 1],
    [doubt(inside), inside.nominal / root],
    [doubt(side), -side.nominal / root],
    [out, -1],
  ])
  const k = side.nominal / root
  // Wide parts go in the less far the wider they are: more than the straight line says.
  const [wide, near] = [reachOf(side), reachOf(inside)]
  const least = Math.sqrt(Math.max(0, (inside.nominal - near) ** 2 - (side.nominal + wide) ** 2))
  const short = root - k * wide - (inside.nominal / root) * near - least
  const sway = add(
    scale(against(ask, theta), slope(e, turned) + k * slope(e, turned + 90)),
    bend(short, [side, inside], 'how far a wide part goes in'),
    e.uneven ?? exact(0),
  )
  return { ...along(r, theta), ...faces, sway }
}

/** Beside another part: the other's reach towards it, the gap, and its own reach back. */
function besidePart(ctx: Context, input: Beside, ask: AcrossAsk): Across | undefined {
  const [theta, gap] = [direction(ctx, input.theta, ask, 'theta'), offset(ctx, input.gap, ask, 'gap')]
  const other = ask.beside(input.beside, `${ask.path}/beside`)
  if (!theta || !gap || !other) return undefined
  const faces = facingOf(ask, theta)
  const [theirs, own] = [other.across.facing - theta.nominal, faces.facing - theta.nominal]
  const d = add(reachAlong(other.extent, theirs), gap, reachAlong(ask.extent, own))
  const shift = along(d, theta)
  // Seen a little more from one side a part reaches farther, whichever side that is.
  const sway = add(
    scale(add(doubt(theta), other.across.turn ?? exact(0)), slope(other.extent, theirs)),
    scale(against(ask, theta), slope(ask.extent, own)),
    other.across.sway ?? exact(0),
    other.extent.uneven ?? exact(0),
    ask.extent.uneven ?? exact(0),
  )
  return { x: add(other.across.x, shift.x), y: add(other.across.y, shift.y), ...faces, sway }
}

/** By how much the reach of a part changes at most for a degree of turn, mm. */
function slope(e: Extent, turn: number): number {
  return e.round ? 0 : (reachAlong(e, turn + 90).nominal * Math.PI) / 180
}
