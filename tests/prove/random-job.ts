import type { ProjectInput } from '../../src/project/schema/project.ts'
import { type RandomHilt, randomHilt, type Stretch } from './random-hilt.ts'
import { randomLoad } from './random-load.ts'
import { printerOf } from './random-printer.ts'
import { randomSize } from './random-size.ts'
import { type Rng, rngOf } from './rng.ts'

type Features = NonNullable<ProjectInput['features']>
type Sled = NonNullable<ProjectInput['sleds']>[number]
type Insertions = NonNullable<ProjectInput['insertions']>

const two = (n: number): number => Number(n.toFixed(2))
/** Least gap to the hilt, as the settings have it, mm. */
const clearance = 0.15

export interface Plan {
  readonly rng: Rng
  readonly hilt: RandomHilt
  /** The mouth the sled goes through, and where it comes to lie. */
  readonly heading: 'blade' | 'rear'
  readonly mouth: number
  readonly z0: number
  readonly z1: number
}

/**
 * A random job, the same for the same seed: a hilt, one or two sleds with what they carry, what sticks in, in which
 * order it all goes together. Most gaps are within a few tenths of what is needed, on both sides of it.
 */
export const randomJob = (seed: number): ProjectInput => plannedJob(seed).job

/** A random job and what it was drawn from. */
export interface PlannedJob {
  readonly job: ProjectInput
  readonly plan: Plan
  /** Of the sled. */
  readonly radius: number
}

export function plannedJob(seed: number): PlannedJob {
  const rng = rngOf(seed)
  const hilt = randomHilt(rng)
  const plan = planOf(rng, hilt)
  const margin = rng.between(-0.1, 0.5)
  const slim = rng.chance(0.12) ? rng.between(0.8, 2) : 0
  const throat = throatOf(plan, plan.z0, plan.z1)
  const radius = two(throat - clearance - margin - slim)
  const load = randomLoad(rng, {
    sled: 'main',
    r: radius,
    z0: plan.z0 + 2.5,
    z1: plan.z1 - 2.5,
    out: slim > 0 ? slim + margin : 0,
  })
  const sled = sledOf(plan, radius, load.end)
  const features: Features = []
  const windows: NonNullable<Sled['windows']> = []
  for (let i = 0; i < rng.pick([0, 0, 1, 1, 2, 3]); i++) {
    const f = intrusion(plan, `x${i}`, radius, load.end)
    features.push(f.feature)
    if (f.window) windows.push({ id: `w${i}`, for: `features/x${i}`, ...f.window })
  }
  const job: ProjectInput = {
    format: 'sledwright',
    version: 1,
    sections: hilt.sections,
    joints: hilt.joints,
    features,
    parts: load.parts,
    sleds: [{ ...sled, ...(windows.length > 0 ? { windows } : {}) }],
    insertions: insertionsOf(plan),
    ...printerOf(rng),
    ...(rng.chance(0.1) ? { thresholds: [{ id: 'clearance', value: rng.pick([0.05, 0.25, 0.4]) }] } : {}),
  }
  if (rng.chance(0.12)) fittedAfter(plan, job, radius)
  if (rng.chance(0.1)) plug(plan, job)
  if (rng.chance(0.08)) secondSled(plan, job)
  if (rng.chance(0.1)) riderInSlot(plan, job, radius)
  return { job, plan, radius }
}

function planOf(rng: Rng, hilt: RandomHilt): Plan {
  const end = Math.max(...hilt.stretches.map((s) => s.z1))
  const heading = rng.chance(0.75) ? 'blade' : 'rear'
  const inner = heading === 'blade' && hilt.sections.length > 1 && rng.chance(0.25)
  const second = hilt.stretches.find((s) => s.section === 's1') as Stretch
  const mouth = heading === 'rear' ? end : inner ? second.z0 : hilt.stretches[0] ? hilt.stretches[0].z0 : 0
  const [from, to] = heading === 'blade' ? [mouth, end] : [hilt.stretches[0]?.z0 ?? 0, end]
  const length = Math.min(rng.between(22, 90, 1), to - from - 3)
  let z0 = two(from + rng.between(1, Math.max(1.5, to - from - length - 1), 1))
  if (rng.chance(0.35)) z0 = besideShoulder(rng, hilt, heading, z0, length, from, to) ?? z0
  return { rng, hilt, heading, mouth, z0, z1: two(z0 + length) }
}

/** Put so that the leading end stops short of a narrower step by about what is needed. */
function besideShoulder(
  rng: Rng,
  hilt: RandomHilt,
  heading: 'blade' | 'rear',
  z0: number,
  length: number,
  from: number,
  to: number,
): number | undefined {
  const gap = clearance + rng.between(-0.3, 0.6)
  const shoulders = hilt.stretches.flatMap((s, i) => {
    const next = hilt.stretches[heading === 'blade' ? i + 1 : i - 1]
    if (!next || next.r > s.r - 0.4) return []
    return [heading === 'blade' ? s.z1 - gap - length : s.z0 + gap]
  })
  const fitting = shoulders.filter((z) => z > from + 1 && z + length < to - 0.5)
  return fitting.length > 0 ? two(rng.pick(fitting)) : z0
}

/** Narrowest free radius that a stretch of the sled meets on its way and where it sits. */
function throatOf(p: Pick<Plan, 'hilt' | 'heading' | 'mouth'>, z0: number, z1: number): number {
  const [from, to] = p.heading === 'blade' ? [p.mouth, z1] : [z0, p.mouth]
  return Math.min(...p.hilt.stretches.filter((s) => s.z1 > from + 0.01 && s.z0 < to - 0.01).map((s) => s.r))
}

function sledOf(p: Plan, radius: number, end: number): Sled {
  const { rng } = p
  const z1 = two(Math.max(p.z1, end + 1.5))
  const base = { id: 'main', name: 'sled' }
  const typed = { from: p.z0, to: z1 }
  const kind = rng.whole(0, 9)
  const rings = rng.chance(0.2) ? { rings: randomRings(p, radius, z1) } : {}
  const seats = seatsOf(p, z1, rings.rings?.[0]?.id)
  if (kind < 2) return { ...base, ...typed, ...seats }
  if (kind < 4) {
    const middle = two((p.z0 + z1) / 2 + rng.between(-6, 6))
    const other = two(radius - rng.between(-0.2, 1))
    const [a, b] = rng.chance(0.5) ? [radius, other] : [other, radius]
    return {
      ...base,
      bodies: [
        { from: p.z0, to: middle, diameter: two(2 * a) },
        { from: middle, to: z1, diameter: two(2 * b) },
      ],
      ...typed,
      ...rings,
      ...seats,
    }
  }
  const diameter = two(2 * radius)
  if (kind < 6) return { ...base, diameter, ...rings }
  if (kind < 7) {
    const step = rng.pick(p.hilt.stretches)
    return { ...base, diameter, from: { of: step.step, end: 'rear', by: two(p.z0 - step.z0) }, to: z1 }
  }
  return { ...base, diameter, ...typed, ...rings, ...seats }
}

function randomRings(p: Plan, radius: number, z1: number): NonNullable<Sled['rings']> {
  const length = p.rng.between(2, 5, 1)
  const z = p.rng.chance(0.5) ? p.z0 : two(z1 - length)
  return [{ id: 'ring', z, length, diameter: two(2 * (radius + p.rng.between(-0.1, 0.4))) }]
}

function seatsOf(p: Plan, z1: number, ring: string | undefined): Partial<Sled> {
  const { rng, hilt, heading } = p
  if (!rng.chance(0.15)) return {}
  const edge = heading === 'blade' ? z1 : p.z0
  const shoulder = hilt.stretches.find((s) => Math.abs((heading === 'blade' ? s.z0 : s.z1) - edge) < 0.8)
  if (shoulder) return { seats: [{ id: 'face', against: shoulder.step, face: heading }] }
  const around = hilt.stretches.find((s) => s.z0 < p.z0 + 1 && s.z1 > p.z0 + 1)
  return around && ring
    ? {
        seats: [
          {
            id: 'around',
            against: around.step,
            face: 'around',
            ring,
            fit: rng.pick(['slide', 'snug', 'press'] as const),
          },
        ],
      }
    : {}
}

function insertionsOf(p: Plan): Insertions {
  const { rng, hilt, heading, mouth } = p
  const lateral = rng.chance(0.82)
    ? { lateral: 'axis' as const }
    : rng.chance(0.5)
      ? { lateral: 'floats' as const }
      : {}
  const first = hilt.stretches.find((s) => s.z0 === mouth && (heading === 'blade' ? true : false))
  const section = heading === 'rear' ? (hilt.sections.at(-1)?.id as string) : (first?.section ?? 's0')
  const own: Insertions = [
    {
      id: 'in',
      moves: 'sleds/main',
      through: { of: `sections/${section}`, end: heading === 'blade' ? 'rear' : 'blade' },
      ...lateral,
    },
  ]
  if (section === 's1' && heading === 'blade')
    own.push({
      id: 'tube',
      moves: 'sections/s0',
      through: rng.chance(0.7) ? { of: 'sections/s1', end: 'rear' } : { of: 'sections/s0', end: 'blade' },
    })
  return own
}

function intrusion(
  p: Plan,
  id: string,
  radius: number,
  end: number,
): { feature: Features[number]; window?: NonNullable<Sled['windows']>[number] extends infer W ? Partial<W> : never } {
  const { rng, hilt } = p
  const step = rng.pick(hilt.stretches)
  const fitted = rng.chance(0.3) ? ('after' as const) : ('before' as const)
  const margin = rng.between(-0.2, 0.5)
  const form = rng.whole(0, 3)
  const size = rng.between(1.5, 5, 1)
  const deep = rng.chance(0.4)
  let z = two(rng.between(step.z0 + size / 2 + 0.3, Math.max(step.z0 + size / 2 + 0.4, step.z1 - size / 2 - 0.3)))
  // Just ahead of the sled, where it must not be reached.
  const ahead = two(Math.max(p.z1, end + 1.5) + size / 2 + clearance + margin)
  const inAhead = hilt.stretches.find((s) => ahead - size / 2 > s.z0 && ahead + size / 2 < s.z1)
  const stops = p.heading === 'blade' && inAhead !== undefined && rng.chance(0.25)
  const on = stops ? inAhead : step
  if (stops) z = ahead
  const tip = two(
    deep || stops
      ? Math.max(0.5, radius - rng.between(0.5, 4))
      : radius + (fitted === 'after' ? 0.3 : clearance) + margin,
  )
  const byReach = rng.chance(0.35) && on.r - tip > 0.05
  const sticks = byReach ? { reach: randomSize(rng, on.r - tip, 'length') } : { tip: randomSize(rng, tip, 'offset') }
  const shape: Features[number]['shape'] =
    form < 2
      ? { form: 'pin', diameter: randomSize(rng, size, 'outside'), ...sticks }
      : form === 2
        ? {
            form: 'block',
            length: randomSize(rng, size, 'length'),
            width: randomSize(rng, rng.between(1, 5), 'outside'),
            ...sticks,
          }
        : {
            form: 'ring-sector',
            length: size,
            half: rng.chance(0.3) ? 180 : { value: rng.whole(8, 50), plus: 2, minus: 2 },
            tip: randomSize(rng, tip, 'offset'),
          }
  const theta = rng.whole(0, 359)
  const whole = shape.form === 'ring-sector' && shape.half === 180
  return {
    feature: {
      id,
      kind: 'intrusion',
      on: `sections/${on.section}`,
      at: {
        z: rng.chance(0.6)
          ? { value: z, plus: rng.between(0, 0.3), minus: rng.between(0, 0.3) }
          : rng.chance(0.5)
            ? z
            : { of: on.step, end: 'rear', by: two(z - on.z0) },
        theta: rng.chance(0.5) ? theta : { value: theta, plus: 1, minus: 1 },
      },
      shape,
      ...(rng.chance(0.3) || fitted === 'after' ? { fitted } : {}),
      ...(rng.chance(0.08) ? { states: ['closed'] } : {}),
    },
    ...(deep && !stops && !whole
      ? { window: rng.chance(0.5) ? {} : { gap: two(clearance + rng.between(0, 0.6)) } }
      : {}),
  }
}

/** A switch body through the wall once the sled is in, with a window for it. */
function fittedAfter(p: Plan, job: ProjectInput, radius: number): void {
  const { rng, hilt } = p
  const z = two((p.z0 + p.z1) / 2 + rng.between(-5, 5))
  const step = hilt.stretches.find((s) => z > s.z0 + 4 && z < s.z1 - 4)
  if (!step) return
  const depth = rng.between(3, 7)
  const outer = two(radius + rng.between(1, 3))
  job.parts?.push({
    id: 'button',
    kind: 'switch',
    body: {
      shape: 'cylinder',
      axis: 'radial',
      diameter: randomSize(rng, rng.between(3, 8), 'outside'),
      length: randomSize(rng, depth, 'length'),
    },
    on: `sections/${step.section}`,
    goesIn: 'after',
    at: { z: { value: z, plus: 0.2, minus: 0.2 }, theta: { value: rng.whole(0, 359), plus: 1, minus: 1 }, outer },
    ...(rng.chance(0.4) ? { tags: rng.between(0.5, 2) } : {}),
    ...(rng.chance(0.3) ? { wireBend: 1 } : {}),
  })
  const sled = job.sleds?.[0] as Sled
  if (rng.chance(0.85))
    sled.windows = [
      ...(sled.windows ?? []),
      { id: 'wb', for: 'parts/button', ...(rng.chance(0.4) ? { gap: rng.between(0.2, 0.9) } : {}) },
    ]
}

/** A plug that goes in last from the other end, close to the sled. */
function plug(p: Plan, job: ProjectInput): void {
  const { rng, hilt, heading } = p
  if (heading !== 'blade') return
  const last = hilt.stretches.at(-1) as Stretch
  const z = two(Math.max(p.z1 + 2, last.z1 - 14) + rng.between(0, 0.8))
  if (z + 12 > last.z1 || z < last.z0) return
  job.parts?.push({
    id: 'plug',
    kind: 'connector',
    body: {
      shape: 'cylinder',
      diameter: randomSize(rng, 2 * (last.r - clearance - rng.between(-0.1, 0.3)), 'outside'),
      length: randomSize(rng, 10, 'length'),
    },
    on: `sections/${last.section}`,
    goesIn: 'after',
    at: { z: { value: z, plus: 0.1, minus: 0.1 } },
  })
  job.insertions?.push({
    id: 'plug-in',
    moves: 'parts/plug',
    through: { of: `sections/${last.section}`, end: 'blade' },
    lateral: 'axis',
  })
}

/** Another sled behind the first, through the same mouth. */
function secondSled(p: Plan, job: ProjectInput): void {
  const { rng, heading, mouth } = p
  if (heading !== 'blade' || p.z0 - mouth < 16) return
  const z1 = two(p.z0 - clearance - rng.between(-0.2, 0.8))
  const z0 = two(z1 - Math.min(14, z1 - mouth - 1))
  const r = two(throatOf(p, z0, z1) - clearance - rng.between(0.1, 0.5))
  job.sleds?.push({ id: 'two', name: 'second sled', from: z0, to: z1, diameter: two(2 * r) })
  job.parts?.push({
    id: 'lens',
    kind: 'other',
    body: { shape: 'cylinder', diameter: two(r), length: 5 },
    on: 'sleds/two',
    at: { z: two(z0 + 4) },
  })
  job.insertions?.splice(1, 0, {
    id: 'in-two',
    moves: 'sleds/two',
    through: (job.insertions[0] as Insertions[number]).through as NonNullable<Insertions[number]['through']>,
    lateral: 'axis',
  })
}

/** A block that stands out of the sled and rides in a slot of the wall. */
function riderInSlot(p: Plan, job: ProjectInput, radius: number): void {
  const { rng, hilt, heading, mouth } = p
  if (heading !== 'blade' || hilt.sections.length !== 1) return
  const theta = rng.pick([0, 90, 200])
  const width = rng.between(3, 7)
  const depth = rng.chance(0.4) ? { depth: rng.between(1, 1.5) } : {}
  const end = two(p.z1 + rng.between(1, 5))
  job.features?.push({
    id: 'slot',
    kind: 'slot',
    on: 'sections/s0',
    at: { z: two(mouth - 1), face: 'rear', theta: { value: theta, plus: 0.5, minus: 0.5 } },
    shape: { form: 'slot', length: two(end - mouth), width: randomSize(rng, width, 'bore'), ...depth },
  })
  const height = rng.between(2, 4)
  const stands = rng.between(0.4, 1)
  job.parts?.push({
    id: 'rider',
    kind: 'other',
    on: 'sleds/main',
    body: {
      shape: 'box',
      width: two(width - 2 * (clearance + rng.between(-0.1, 0.4))),
      height,
      length: 6,
    },
    at: { z: two(p.z0 + 3), across: { r: two(radius + stands - height / 2), theta } },
  })
}
