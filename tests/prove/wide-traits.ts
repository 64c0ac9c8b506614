import type { ProjectInput } from '../../src/project/schema/project.ts'
import type { QuantityInput } from '../../src/project/schema/quantity.ts'
import type { Rng } from './rng.ts'
import { atClock } from './vec.ts'
import type { Widened } from './wide-job.ts'

type Trait = (w: Widened) => void
type Sled = NonNullable<ProjectInput['sleds']>[number]
type Part = NonNullable<ProjectInput['parts']>[number]
type Feature = NonNullable<ProjectInput['features']>[number]

const two = (n: number): number => Number(n.toFixed(2))
const clearance = 0.15

/** A value with a doubt of up to `most` either way, uneven as often as not. */
function doubtful(rng: Rng, value: number, most: number): QuantityInput {
  const plus = rng.between(0, most)
  const kind = rng.chance(0.2) ? { kind: rng.pick(['unknown', 'varies'] as const) } : {}
  return { value: two(value), plus, minus: rng.chance(0.5) ? plus : rng.between(0, most), ...kind }
}

const sledOf = (w: Widened): Sled => w.job.sleds?.[0] as Sled
const featuresOf = (w: Widened): Feature[] => w.job.features ?? []
const valueOf = (q: unknown): number | undefined =>
  typeof q === 'number'
    ? q
    : typeof (q as { value?: unknown })?.value === 'number'
      ? (q as { value: number }).value
      : undefined

/** The sled may be turned from its place. */
const clocked: Trait = (w) => {
  sledOf(w).clocking = w.rng.between(0.5, 8)
}

/** What sticks in may stand whole millimetres off along the hilt. */
const strayHeights: Trait = (w) => {
  for (const f of featuresOf(w)) {
    const z = valueOf(f.at.z)
    // A slot that may end short is told of as not checked.
    if (z !== undefined && f.kind === 'intrusion') f.at.z = doubtful(w.rng, z, 4)
  }
}

/** … or many degrees off. */
const strayAngles: Trait = (w) => {
  for (const f of featuresOf(w)) {
    const theta = valueOf(f.at.theta)
    if (theta !== undefined) f.at.theta = doubtful(w.rng, theta, 10)
  }
}

/** A bore far beside the axis, and a sled that is as much slimmer. */
const farAside: Trait = (w) => {
  const section = w.rng.pick(w.job.sections ?? [])
  const offset = w.rng.between(0.3, 1.5)
  section.eccentricity = {
    offset: doubtful(w.rng, offset, 0.3),
    ...(w.rng.chance(0.8) ? { theta: doubtful(w.rng, w.rng.whole(0, 359), 6) } : {}),
  }
  const sled = sledOf(w)
  const d = valueOf(sled.diameter)
  if (d !== undefined && w.rng.chance(0.8)) sled.diameter = two(d - 2 * offset - w.rng.between(-0.2, 0.4))
}

/** A short taper of doubtful length before the last step of a bore, and something that sticks in there by its reach. */
const shortTaper: Trait = (w) => {
  const fit = (w.job.sections ?? []).filter((s) => s.bore.length > 1 && s.clamp === undefined)
  if (fit.length === 0) return
  const section = w.rng.pick(fit)
  const steps = w.plan.hilt.stretches.filter((s) => s.section === section.id)
  const [before, last] = [steps.at(-2), steps.at(-1)]
  if (!before || !last) return
  const length = w.rng.between(1.5, 6)
  section.bore.splice(-1, 0, {
    id: 'short',
    length: doubtful(w.rng, length, Math.min(0.8, length / 3)),
    diameter: doubtful(w.rng, 2 * before.r, 0.1),
    diameterEnd: doubtful(w.rng, 2 * last.r, 0.1),
  })
  if (w.rng.chance(0.4)) return
  featuresOf(w).push({
    id: 'in-taper',
    kind: 'intrusion',
    on: `sections/${section.id}`,
    at: { z: doubtful(w.rng, last.z0 + length / 2, 0.5), theta: w.rng.whole(0, 359) },
    shape: {
      form: 'pin',
      diameter: doubtful(w.rng, w.rng.between(1, 2.5), 0.1),
      reach: doubtful(
        w.rng,
        Math.max(0.2, (before.r + last.r) / 2 - w.radius - clearance - w.rng.between(-0.3, 0.5)),
        0.1,
      ),
    },
  })
}

/** A part nearly as wide as the sled, pushed to a wall. */
const widePushed: Trait = (w) => {
  const fit = (w.job.parts ?? []).filter(
    (p) => p.body?.shape === 'box' && p.at?.across !== undefined && 'pushed' in p.at.across && p.on === 'sleds/main',
  )
  if (fit.length === 0) return
  const part = w.rng.pick(fit)
  const gap = w.rng.between(0.1, 1)
  const body = part.body as { width: QuantityInput; height: QuantityInput }
  body.width = doubtful(w.rng, 2 * (w.radius - gap) * w.rng.between(0.75, 0.95), 0.4)
  body.height = doubtful(w.rng, w.rng.between(1, 2.5), 0.2)
  ;(part.at as { across: { gap: QuantityInput } }).across.gap = gap
}

/** Boards of which any component may be the tallest. */
const evenComponents: Trait = (w) => {
  for (const p of w.job.parts ?? []) {
    if (p.body?.shape !== 'outline') continue
    const height = w.rng.between(1, 2.5)
    for (const c of p.body.components ?? []) c.height = doubtful(w.rng, height + w.rng.between(-0.1, 0.1), 0.5)
  }
}

/** Moments of the builder's own, with the sled out of the hilt in one of them. */
const ownStates: Trait = (w) => {
  const names = w.rng.pick([['run', 'empty'], ['empty', 'run', 'closed'], ['closed'], ['run']])
  w.job.states = names.map((id) => ({ id, ...(id === 'empty' ? { without: ['sleds/main'] } : {}) }))
  const some = (): string[] => [w.rng.pick(names)]
  for (const f of featuresOf(w)) if (f.states) f.states = some()
  for (const s of w.job.sections ?? []) if (s.clamp?.openIn) s.clamp.openIn = some()
}

/** A slim sled that floats. */
const floating: Trait = (w) => {
  const move = w.job.insertions?.find((i) => i.moves === 'sleds/main')
  if (!move) return
  move.lateral = 'floats'
  const sled = sledOf(w)
  const d = valueOf(sled.diameter)
  if (d !== undefined && w.rng.chance(0.7)) sled.diameter = two(d - w.rng.between(0, 2))
  if (w.rng.chance(0.2)) sled.float = doubtful(w.rng, w.rng.between(0.1, 0.5), 0.1)
}

/** A tower on the sled, which a seat of the sled's whole length does not excuse. */
const towered: Trait = (w) => {
  const { rng, plan } = w
  const sled = sledOf(w)
  const step = plan.hilt.stretches.find((s) => s.z0 < plan.z0 + 6 && s.z1 > plan.z0 + 12)
  if (!step) return
  const outer = two(w.radius + rng.between(0.1, 1))
  sled.towers = [
    {
      id: 't',
      theta: rng.whole(0, 359),
      half: rng.between(5, 25),
      outer,
      from: two(plan.z0 + 4),
      to: two(plan.z0 + 12),
    },
  ]
  if (rng.chance(0.5))
    sled.seats = [{ id: 'all', against: step.step, face: 'around', fit: rng.pick(['slide', 'snug'] as const) }]
}

/** A block or a rod on the wall beside the sled, there from the start or put in last. */
const onWall: Trait = (w) => {
  const { rng, plan } = w
  const z = two(rng.between(plan.z0, Math.max(plan.z0 + 1, plan.z1 - 4)))
  const step = plan.hilt.stretches.find((s) => z > s.z0 + 1 && z < s.z1 - 8)
  if (!step) return
  const theta = rng.whole(0, 359)
  const round = rng.chance(0.3)
  const deep = rng.between(0.6, 3)
  const middle = two(w.radius + clearance + rng.between(-0.1, 0.5) + deep / 2)
  const length = doubtful(rng, rng.between(4, 12), 0.2)
  const at = atClock(middle, theta)
  const last = rng.chance(0.25)
  const part: Part = {
    id: 'on-wall',
    kind: 'other',
    on: `sections/${step.section}`,
    body: round
      ? { shape: 'cylinder', diameter: doubtful(rng, deep, 0.1), length }
      : { shape: 'box', width: doubtful(rng, rng.between(1, 6), 0.2), height: doubtful(rng, deep, 0.1), length },
    at: {
      z: doubtful(rng, z, 0.8),
      across: rng.chance(0.5)
        ? { x: doubtful(rng, at.x, 0.1), y: doubtful(rng, at.y, 0.1) }
        : { r: doubtful(rng, middle, 0.1), theta: rng.chance(0.5) ? theta : doubtful(rng, theta, 5) },
      facing: rng.chance(0.2) ? (theta + rng.whole(0, 90)) % 360 : doubtful(rng, theta, 8),
    },
    ...(last ? { goesIn: 'after' as const } : {}),
  }
  w.job.parts?.push(part)
  const ends = w.job.sections ?? []
  const rear = rng.chance(0.5)
  const mouth = rear ? ends[0] : ends.at(-1)
  if (last && mouth)
    w.job.insertions?.push({
      id: 'on-wall-in',
      moves: 'parts/on-wall',
      through: { of: `sections/${mouth.id}`, end: rear ? 'rear' : 'blade' },
      lateral: 'axis',
    })
}

/** A tube that must come over the sled, of which nobody says how. */
const unsaidTube: Trait = (w) => {
  w.job.insertions = w.job.insertions?.filter((i) => !i.moves.startsWith('sections/'))
}

export const traits: readonly Trait[] = [
  clocked,
  strayHeights,
  strayAngles,
  farAside,
  shortTaper,
  widePushed,
  evenComponents,
  ownStates,
  floating,
  towered,
  onWall,
  unsaidTube,
]
