import type { Body, Opening, Shape } from '../body/body.ts'
import type { FeatureInput, ScrewInput } from '../project/schema/hilt.ts'
import type { QuantityInput } from '../project/schema/quantity.ts'
import { add, exact, known, least, most, type Quantity, scale, sub } from '../quantity/quantity.ts'
import { parseThread } from '../rules/thread-designation.ts'
import { ask, type Context, wrong } from './context.ts'
import type { Ends, Heights } from './heights.ts'
import type { Intrusion, Section } from './metal.ts'
import { quantityOf } from './quantity.ts'
import { turned } from './turned.ts'
import { wallAt } from './wall.ts'

/** A slot in the wall: where along z, its cross-section, and how deep. */
export interface WallOpening {
  readonly id: string
  readonly name: string
  readonly section: string
  readonly z0: Quantity
  readonly z1: Quantity
  readonly opening: Opening
}

/** How far an intrusion is drawn into the metal behind it, mm; the metal there hides it anyway. */
const root = 2

/** Tells where features and screws lie along z: their middle, with their length around it. */
export function placeFeatures(ctx: Context, heights: Heights): void {
  for (const f of ctx.project.features) {
    const path = `features/${f.id}`
    heights.define(path, () => {
      const at = heights.place(f.at.z, `${path}/at/z`)
      const length = lengthOf(ctx, f, path)
      if (!at || !length) return undefined
      const face = f.at.face ?? 'middle'
      const rear = face === 'rear' ? at : sub(at, scale(length, face === 'blade' ? 1 : 0.5))
      return { rear, blade: add(rear, length) }
    })
  }
}

function lengthOf(ctx: Context, f: FeatureInput, path: string): Quantity | undefined {
  const s = f.shape
  const input = s.form === 'pin' || s.form === 'round' ? s.diameter : s.length
  return quantityOf(ctx, input, {
    path: `${path}/shape/${s.form === 'pin' || s.form === 'round' ? 'diameter' : 'length'}`,
    as: 'outside',
  })
}

/** Everything that takes room in the bore: intrusions and screw tips. */
export function intrusionsOf(ctx: Context, heights: Heights, sections: readonly Section[]): Intrusion[] {
  const features = ctx.project.features
    .filter((f) => f.kind === 'intrusion')
    .flatMap((f) => intrusion(ctx, heights, sections, f))
  return [...features, ...ctx.project.screws.flatMap((s) => screwTip(ctx, heights, sections, s))]
}

function intrusion(ctx: Context, heights: Heights, sections: readonly Section[], f: FeatureInput): Intrusion[] {
  const path = `features/${f.id}`
  const ends = heights.ends(path, path)
  const section = sectionOf(ctx, sections, f.on, path)
  const theta =
    f.at.theta === undefined ? exact(0) : quantityOf(ctx, f.at.theta, { path: `${path}/at/theta`, as: 'angle' })
  if (!ends || !section || !theta) return []
  const s = f.shape
  if (s.form === 'round' || s.form === 'slot') {
    wrong(
      ctx,
      'contradiction',
      `${path}/shape/form`,
      s.form,
      'pin, block or ring-sector',
      'An intrusion takes room: name its form, or call the feature a hole or slot.',
    )
    return []
  }
  const middle = scale(add(ends.rear, ends.blade), 0.5)
  const wall = wallAt(section, middle, theta)
  const rIn = tipOf(ctx, s, wall, path)
  if (!rIn) return []
  const rOut = exact(Math.max(wall?.nominal ?? rIn.nominal, rIn.nominal) + root)
  const shape: Shape | undefined =
    s.form === 'pin'
      ? { kind: 'pin', z: middle, theta: theta.nominal, radius: scale(sub(ends.blade, ends.rear), 0.5), rIn, rOut }
      : s.form === 'block'
        ? block(ctx, s.width, path, theta.nominal, rIn, rOut, ends)
        : ringSector(ctx, s.half, path, theta.nominal, rIn, ends)
  if (!shape) return []
  const whole = s.form === 'ring-sector' && shape.kind === 'sector' && shape.half.nominal >= 180
  const turn = whole ? undefined : turned(theta)
  const body: Body = {
    id: path,
    of: path,
    name: f.name ?? f.id,
    shape,
    ...(turn ? { turn } : {}),
    ...(section.play ? { sway: section.play } : {}),
    ...(f.states ? { states: f.states } : {}),
  }
  return [{ body, section: section.id, fitted: f.fitted ?? 'before' }]
}

/** Radius of the inner end: as given, or the bore wall less how far it sticks in. A domed tip is flat at the worst. */
function tipOf(
  ctx: Context,
  s: { reach?: QuantityInput | undefined; tip?: QuantityInput | undefined; round?: QuantityInput | undefined },
  wall: Quantity | undefined,
  path: string,
): Quantity | undefined {
  const tip = quantityOf(ctx, s.tip, { path: `${path}/shape/tip`, as: 'offset', min: 0, max: 200 })
  const reach = quantityOf(ctx, s.reach, { path: `${path}/shape/reach`, as: 'length' })
  const reached = reach && wall && sub(wall, reach)
  if (tip && reached && (least(tip) > most(reached) || most(tip) < least(reached)))
    ask(
      ctx,
      `${path}/shape/tip`,
      tip.nominal,
      `${reached.nominal.toFixed(2)} mm, the bore wall less its reach`,
      'Which of the two is right? The one that sticks in farther is taken.',
    )
  const end = tip && reached && least(reached) < least(tip) ? reached : (tip ?? reached)
  if (!end) {
    const given = s.tip !== undefined || s.reach !== undefined
    if (!given || reach)
      ctx.missing.push({
        path: `${path}/shape/${given ? 'tip' : 'reach'}`,
        what: given ? 'the bore wall it sticks in from' : 'how far it sticks into the bore',
        hint: given ? 'Give the radius of its tip from the axis.' : 'Measure from the bore wall to its inner end.',
        of: path,
      })
    return undefined
  }
  if (end.nominal < 0)
    ask(
      ctx,
      `${path}/shape/${tip ? 'tip' : 'reach'}`,
      (reach ?? end).nominal,
      'an inner end that does not pass the axis',
      'Does it really reach across the whole bore?',
    )
  const dome = quantityOf(ctx, s.round, { path: `${path}/shape/round`, as: 'offset', min: 0, max: 20 })
  return dome && dome.nominal > 0 ? add(end, domed(dome.nominal, `${path}/shape/round`)) : end
}

/** The corners a dome does not have: how much of its height they are worth depends on where it is met. */
function domed(round: number, path: string): Quantity {
  const spread = { path, kind: 'unknown', minus: 0, plus: round, distribution: 'rectangular' } as const
  return known(0, { ...spread, source: 'computed', from: 'round tip taken as flat' })
}

function block(
  ctx: Context,
  widthIn: unknown,
  path: string,
  theta: number,
  rIn: Quantity,
  rOut: Quantity,
  ends: { rear: Quantity; blade: Quantity },
): Shape | undefined {
  const width = quantityOf(ctx, widthIn as never, { path: `${path}/shape/width`, as: 'outside' })
  const [c, s] = [Math.cos((theta * Math.PI) / 180), Math.sin((theta * Math.PI) / 180)]
  const middle = scale(add(rIn, rOut), 0.5)
  return (
    width && {
      kind: 'box',
      x: scale(middle, c),
      y: scale(middle, s),
      halfWidth: scale(width, 0.5),
      halfHeight: scale(sub(rOut, rIn), 0.5),
      facing: theta,
      z0: ends.rear,
      z1: ends.blade,
    }
  )
}

function ringSector(
  ctx: Context,
  halfIn: unknown,
  path: string,
  theta: number,
  rIn: Quantity,
  ends: { rear: Quantity; blade: Quantity },
): Shape | undefined {
  const half = quantityOf(ctx, halfIn as never, { path: `${path}/shape/half`, as: 'angle', min: 0.1, max: 180 })
  return (
    half && { kind: 'sector', rIn, theta, half: half.nominal >= 180 ? exact(180) : half, z0: ends.rear, z1: ends.blade }
  )
}

function screwTip(ctx: Context, heights: Heights, sections: readonly Section[], s: ScrewInput): Intrusion[] {
  const path = `screws/${s.id}`
  const section = sectionOf(ctx, sections, s.on, path)
  const parsed = parseThread(s.thread, `${path}/thread`)
  if (!parsed.ok) ctx.problems.push(...parsed.problems)
  const z = heights.place(s.at.z, `${path}/at/z`)
  const theta =
    s.at.theta === undefined ? exact(0) : quantityOf(ctx, s.at.theta, { path: `${path}/at/theta`, as: 'angle' })
  if (!section || !parsed.ok || !z || !theta) return []
  const tip = quantityOf(ctx, s.tip, { path: `${path}/tip`, as: 'offset', min: 0, max: 200 })
  if (!tip) {
    if (s.tip === undefined)
      ctx.missing.push({
        path: `${path}/tip`,
        what: 'radius of the screw tip from the axis',
        hint: 'Screw it home and measure how far it stands in.',
        of: path,
      })
    return []
  }
  const wall = wallAt(section, z, theta)
  const rOut = exact(Math.max(wall?.nominal ?? 0, tip.nominal) + root)
  const shape: Shape = { kind: 'pin', z, theta: theta.nominal, radius: exact(parsed.value.major / 2), rIn: tip, rOut }
  const turn = turned(theta)
  const body: Body = {
    id: path,
    of: path,
    name: s.name ?? `screw ${s.id}`,
    shape,
    ...(turn ? { turn } : {}),
    ...(section.play ? { sway: section.play } : {}),
    ...(s.states ? { states: s.states } : {}),
  }
  return [{ body, section: section.id, fitted: s.fitted ?? 'after' }]
}

/** Slots that add room along the bore. Round holes are left as metal: nothing rides in them on the way in. */
export function openingsOf(ctx: Context, heights: Heights, sections: readonly Section[]): WallOpening[] {
  return ctx.project.features.flatMap((f) => {
    if (f.kind === 'intrusion' || f.shape.form !== 'slot') return []
    const path = `features/${f.id}`
    if (f.states || ctx.project.states.some((s) => s.without?.includes(path))) {
      ctx.assumptions.push(`"${f.name ?? f.id}" is not there in every state, so it is taken to leave no room.`)
      return []
    }
    const ends = heights.ends(path, path)
    const section = sectionOf(ctx, sections, f.on, path)
    const theta =
      f.at.theta === undefined ? exact(0) : quantityOf(ctx, f.at.theta, { path: `${path}/at/theta`, as: 'angle' })
    const width = quantityOf(ctx, f.shape.width, { path: `${path}/shape/width`, as: 'bore' })
    if (!ends || !section || !theta || !width) return []
    const wall = wallAt(section, scale(add(ends.rear, ends.blade), 0.5), theta)
    const depth =
      f.shape.depth === undefined
        ? undefined
        : quantityOf(ctx, f.shape.depth, { path: `${path}/shape/depth`, as: 'length' })
    // What rides in it is turned against it at the slot's floor, or at the outside where it goes through.
    const reach = Math.max((wall?.nominal ?? 0) + (depth?.nominal ?? 0), depth ? 0 : outsideRadius(section))
    const arc = (reach * Math.PI) / 180
    const narrower = theta.terms.map((t) => ({ spread: t.spread, gain: -Math.abs(t.gain) * arc }))
    const half = add(scale(width, 0.5), { nominal: 0, terms: narrower })
    askWhetherItReaches(ctx, section, ends, path)
    if (!depth && section.outside.length === 0 && turned(theta))
      ctx.missing.push({
        path: `sections/${section.id}/outside`,
        what: 'the outside diameter beside a slot through the wall',
        hint: 'How far a slot that may be turned is off depends on how far out it goes.',
        of: path,
      })
    const opening: Opening = {
      theta: theta.nominal,
      halfWidth: half,
      reach,
      ...(depth && wall ? { floor: add(wall, depth) } : {}),
    }
    return [{ id: path, name: f.name ?? f.id, section: section.id, z0: ends.rear, z1: ends.blade, opening }]
  })
}

/** A slot that ends where a bore step does, as measured: whether a skin of metal is left there nobody knows. */
function askWhetherItReaches(ctx: Context, section: Section, { rear, blade }: Ends, path: string): void {
  const past = section.steps.flatMap((s) => [sub(blade, s.z1), sub(s.z0, rear)])
  if (past.some((q) => q.nominal >= -1e-9 && least(q) < -1e-9))
    ctx.missing.push({
      path: `${path}/at/z`,
      what: 'whether the slot reaches the end of the bore step',
      hint: `Place it from that end, as {"of": "sections/${section.id}", "end": "rear"}, or let it go past the end.`,
      of: path,
    })
}

function outsideRadius(section: Section): number {
  return Math.max(...section.outside.flatMap((o) => [most(o.d0), most(o.d1)]), 0) / 2
}

export function sectionOf(ctx: Context, sections: readonly Section[], ref: string, path: string): Section | undefined {
  const found = sections.find((s) => ref === `sections/${s.id}`)
  if (found || ctx.project.sections.some((s) => ref === `sections/${s.id}`)) return found
  return wrong(
    ctx,
    'unknown-reference',
    `${path}/on`,
    ref,
    ctx.project.sections.map((s) => `sections/${s.id}`).join(', ') || 'a section',
    'Name the section it is in.',
  )
}
