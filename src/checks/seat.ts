import { contributionsOf, marginsOf } from '../quantity/margins.ts'
import { add, bend, combine, exact, least, most, type Quantity, reachOf, scale, sub } from '../quantity/quantity.ts'
import { alongTaper } from '../resolve/along-taper.ts'
import type { Sled } from '../resolve/assembly.ts'
import { sectionsDuring } from '../resolve/insertions.ts'
import type { Step } from '../resolve/metal.ts'
import { type Finding, type Fix, finding } from './finding.ts'
import { downTo, heightFix } from './fix-value.ts'
import { reading } from './reading.ts'
import { holds } from './verdict.ts'
import { mm } from './words.ts'
import type { Check, Result, World } from './world.ts'

type SeatInput = NonNullable<Sled['input']['seats']>[number]

/** Contacts that are meant: a face on a shoulder, a ring that centres in a bore. Only overlap beyond the fit counts. */
export const seat: Check = {
  name: 'seat',
  title: 'Seats',
  what: 'Contacts that are meant, judged by their fit class: an end face on a shoulder, a ring or body that centres in a bore.',
  run: (world) =>
    world.assembly.sleds.flatMap((sled) => (sled.input.seats ?? []).flatMap((s, i) => judged(world, sled, s, i))),
}

function judged(world: World, sled: Sled, s: SeatInput, i: number): Result[] {
  const step = world.assembly.sections.flatMap((o) => o.steps).find((o) => o.id === s.against)
  const id = `seat:${sled.id}:${s.id ?? i}`
  const path = `sleds/${sled.id}/seats/${s.id ?? i}`
  if (!step)
    return [
      {
        id,
        check: 'seat',
        title: `Seat of ${sled.name}`,
        parts: [`sleds/${sled.id}`],
        missing: `a bore step called ${s.against}`,
        path: `${path}/against`,
        hint: 'Name the step as sections/<section>/<step>.',
      },
    ]
  if (s.face === 'around') return around(world, sled, s, step, id)
  return [face(world, sled, s, step, id)]
}

/** A ring in its bore: bore less ring, on the diameter, against what the fit class allows. */
function around(world: World, sled: Sled, s: SeatInput, step: Step, id: string): Result[] {
  const radius =
    s.ring === undefined
      ? Math.max(...sled.pieces.map((p) => p.radius))
      : sled.rings.find((r) => r.id === s.ring)?.radius
  const bore = narrowest(world, sled, s, step)
  if (radius === undefined || !bore) {
    const lacking = radius === undefined ? `the ring ${s.ring}` : `the diameter of ${step.name}`
    return [
      {
        id,
        check: 'seat',
        title: `Seat of ${sled.name} in ${step.name}`,
        parts: [`sleds/${sled.id}`, step.id],
        missing: lacking,
        path: step.id,
        hint: 'Measure it, or correct the seat.',
      },
    ]
  }
  const fit = s.fit ?? 'slide'
  const off = Math.hypot(step.x.nominal, step.y.nominal)
  const gap = combine([[bore, 2], [exact(2 * radius), -1], [sled.print.error, -2], ...beside(step)])
  const allowed = fit === 'press' || fit === 'snug' ? sled.print.fit.press.min : 0
  return [
    built(
      world,
      sled,
      step,
      id,
      `${fit} fit`,
      gap,
      allowed,
      `Bore ${mm(2 * bore.nominal)} − ${s.ring === undefined ? 'sled' : 'ring'} ${mm(2 * radius)}${off > 0 ? ` − 2 × ${mm(off)} beside the axis` : ''} = ${mm(gap.nominal)} on the diameter`,
      `${fit} fit: ${sled.print.source}`,
      (lack) => ringFix(sled, s, radius - lack / 2),
    ),
  ]
}

/** What a bore beside the axis takes from the fit: the sled and all its other seats lie on the axis. */
function beside({ x, y, sway }: Step): [Quantity, number][] {
  const off = Math.hypot(x.nominal, y.nominal)
  const [c, s] = off > 0 ? [x.nominal / off, y.nominal / off] : [1, 0]
  const across = reachOf(x) + reachOf(y)
  return [
    [x, -2 * c],
    [y, -2 * s],
    [bend(off > across ? across ** 2 / 2 / (off - across) : across, [x, y], 'a bore beside the axis'), 2],
    // Nobody knows to which side; play of a joint is not meant, for a section that has it goes with the sled.
    [{ nominal: 0, terms: (sway?.terms ?? []).filter((t) => t.spread.kind === 'unknown') }, 2],
  ]
}

/**
 * Radius of the bore where the ring, or the sled, lies in it, and from there to where it came in: of a taper at the
 * narrower end of that stretch.
 */
function narrowest(world: World, sled: Sled, s: SeatInput, step: Step): Quantity | undefined {
  const { r0, r1 } = step
  if (!r0 || !r1) return undefined
  const ring = sled.rings.find((r) => r.id === s.ring)
  const [from, to] = ring ? [exact(ring.z0), exact(ring.z1)] : [sled.ends.rear, sled.ends.blade]
  const { sections, insertions } = world.assembly
  const came = insertions
    .filter((i) => i.moves === `sleds/${sled.id}`)
    // A section that is not there yet comes over it from the other side.
    .map((i) => (i.heading === 'blade') === sectionsDuring(i, sections).some((o) => o.id === step.section))
  const within = (z: Quantity): Quantity => {
    const there = add(exact(z.nominal), sled.shift)
    if (there.nominal < step.z0.nominal) return step.z0
    return there.nominal > step.z1.nominal ? step.z1 : there
  }
  const a = came.includes(true) ? r0 : alongTaper(step, r0, r1, within(from))
  const b = came.includes(false) ? r1 : alongTaper(step, r0, r1, within(to))
  return least(a) < least(b) ? a : b
}

/** The ring that is typed, or the body where it centres itself, so wide. */
function ringFix(sled: Sled, s: SeatInput, radius: number): Fix[] {
  const value = downTo(2 * radius)
  const path = s.ring === undefined ? `sleds/${sled.id}/diameter` : `sleds/${sled.id}/rings/${s.ring}/diameter`
  const typed =
    s.ring === undefined
      ? sled.pieces.length === 1 && sled.rings.length === 0
      : sled.input.rings?.some((r) => r.id === s.ring)
  return typed && value > 0
    ? [{ text: `Make ${s.ring === undefined ? 'the sled' : 'the ring'} ${mm(value)} mm in diameter.`, path, value }]
    : []
}

/** A face on a shoulder: the sled sits where the metal stops it, so only how far that is from where it is drawn counts. */
function face(world: World, sled: Sled, s: SeatInput, step: Step, id: string): Finding {
  const gap = s.face === 'blade' ? sub(step.z0, sled.ends.blade) : sub(sled.ends.rear, step.z1)
  const shift = world.assembly.thresholds['seat-shift']
  // Too far short is as wrong as too far in: judged is the side on which it may be farther off.
  return built(
    world,
    sled,
    step,
    id,
    'face on a shoulder',
    least(gap) < -most(gap) ? gap : scale(gap, -1),
    -shift.value,
    `Drawn ${mm(gap.nominal)} from the shoulder of ${step.name}; the sled may sit up to ${mm(shift.value)} off`,
    `seat shift: ${shift.source}`,
    () => endFix(sled, s.face === 'blade' ? 'to' : 'from', s.face === 'blade' ? gap.nominal : -gap.nominal),
  )
}

/** The end face drawn on its shoulder. */
function endFix(sled: Sled, field: 'from' | 'to', by: number): Fix[] {
  const now = sled.ends[field === 'from' ? 'rear' : 'blade'].nominal
  const change = heightFix(`sleds/${sled.id}/${field}`, sled.input[field], now, by)
  return change ? [{ text: 'Draw the face on its shoulder.', ...change }] : []
}

function built(
  world: World,
  sled: Sled,
  step: Step,
  id: string,
  what: string,
  gap: Quantity,
  allowed: number,
  why: string,
  source: string,
  change: (lack: number) => Fix[],
): Finding {
  const margin = sub(gap, exact(allowed))
  const margins = marginsOf(margin)
  const contributions = contributionsOf(margin)
  return finding({
    id,
    check: 'seat',
    title: `${sled.name} in ${step.name}: ${what}`,
    value: gap.nominal,
    limit: allowed,
    unit: 'mm',
    margins,
    contributions,
    at: { z: (step.z0.nominal + step.z1.nominal) / 2, theta: 0, r: step.r0?.nominal ?? 0 },
    parts: [`sleds/${sled.id}`, step.id],
    state: 'every state',
    why: `${why}; ${mm(margins.worst + allowed)} at the worst, ${mm(margins.worst)} to ${mm(margins.best)} is left.`,
    source,
    fix: holds(margins) ? [] : [...change(-margins.worst), ...reading(world, { contributions, margins })],
  })
}
