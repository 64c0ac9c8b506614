import { type Dimension, type PlanBody, type PlanItem, planSpan } from '../../../geometry/plan/plan.ts'
import { dimension } from '../dimensions.ts'
import { beyond, cannot, drawnAt, outerRadius, type SledJob } from '../job.ts'
import { cutsOff, type Dovetail } from './dovetail.ts'
import { pinPlaces } from './pin-places.ts'

/** Pins 3 × 5 with 0.2 around (0.2 to 0.3: from memory); a dovetail 4 high; common practice, no source. */
const usual = { pin: 3, length: 5, gap: 0.2, dovetail: 4 }

interface Cut {
  readonly id: string
  readonly z: number
  readonly joint: 'pins' | 'dovetail' | 'plain'
  readonly gap: Dimension
  readonly diameter: Dimension
  readonly length: Dimension
  readonly theta: Dimension
  /** Widths of a dovetail at the plane and at its end. */
  readonly foot: Dimension
  readonly head: Dimension
}

/**
 * A body cut across at each split plane into bodies printed one by one. The rear piece carries the pins or the
 * dovetail's tongue, the blade piece takes them with a gap.
 */
export function splitBodies(job: SledJob, whole: PlanBody): PlanBody[] {
  const cuts = cutsOf(job)
  if (cuts.length === 0) return [whole]
  for (const [i, c] of cuts.entries()) {
    const next = cuts[i + 1]?.z ?? job.sled.ends.blade.nominal
    if (!tooLong(job, c, next)) cutOff(job, whole, c, cuts[i - 1]?.z ?? job.sled.ends.rear.nominal, next)
  }
  const [rear, blade] = [job.sled.ends.rear.nominal - 2 * beyond, job.sled.ends.blade.nominal + 2 * beyond]
  const edges = [rear, ...cuts.map((c) => c.z), blade]
  return edges.slice(1).map((z1, i): PlanBody => {
    const z0 = edges[i] as number
    const [below, above] = [cuts[i - 1], cuts[i]]
    const away = [
      ...halfSpace(job, `below-${i}`, rear - beyond, z0),
      ...halfSpace(job, `above-${i}`, z1, blade + beyond),
    ]
    const joints = [
      ...(above ? jointItems(job, whole, above, 'tongue') : []),
      ...(below ? jointItems(job, whole, below, 'socket') : []),
    ]
    const own = whole.items.flatMap((x) => ofPiece(x, z0, z1))
    return { id: `${whole.id}-${i + 1}`, name: `${whole.name}, piece ${i + 1}`, items: [...own, ...away, ...joints] }
  })
}

/** What is added in the second stage comes after the other piece was taken away, so it is cut to its own piece here. */
function ofPiece(x: PlanItem, z0: number, z1: number): PlanItem[] {
  if (x.stage !== 2 || x.op !== 'add') return [x]
  const span = planSpan(x.solid)
  if (span.z1 <= z0 + 0.01 || span.z0 >= z1 - 0.01) return []
  if (x.solid.shape === 'spoke' || x.solid.shape === 'plate') return [x]
  return [{ ...x, solid: { ...x.solid, z0: Math.max(x.solid.z0, z0), z1: Math.min(x.solid.z1, z1) } }]
}

function cutsOf(job: SledJob): Cut[] {
  const { sled, parts } = job
  return (sled.input.splits ?? [])
    .flatMap((s): Cut[] => {
      const path = (field: string) => `sleds/${sled.id}/splits/${s.id}/${field}`
      const z = drawnAt(sled, 'splits', s.id, 'z')
      if (z === undefined) return []
      const source = 'common practice, no source'
      const through = parts.find((p) => p.contact && z > p.ends.rear.nominal - 1 && z < p.ends.blade.nominal + 1)
      if (through)
        cannot(
          job,
          path('z'),
          `z ${z.toFixed(2)}, through ${through.name}`,
          'a height that leaves every contact whole',
          `The nearest is z ${nearestOutside(z, through.ends.rear.nominal - 1, through.ends.blade.nominal + 1).toFixed(1)}.`,
          Math.abs(nearestOutside(z, through.ends.rear.nominal - 1, through.ends.blade.nominal + 1) - z),
        )
      if (z <= sled.ends.rear.nominal + 2 || z >= sled.ends.blade.nominal - 2)
        cannot(
          job,
          path('z'),
          `z ${z.toFixed(2)}`,
          `z ${(sled.ends.rear.nominal + 2).toFixed(1)} to ${(sled.ends.blade.nominal - 2).toFixed(1)}, inside the sled`,
          'Each piece needs some length.',
          2,
        )
      const gap = dimension('joint gap', s.gap, usual.gap, path('gap'), '0.2 to 0.3: from memory')
      const diameter = dimension('pin diameter', s.pinDiameter, usual.pin, path('pinDiameter'), source)
      const length = dimension(
        'pin length',
        s.pinLength,
        s.joint === 'dovetail' ? usual.dovetail : usual.length,
        path('pinLength'),
        source,
      )
      const R = outerRadius(sled, z, z)
      const wide = 'a share of the body: common practice, no source'
      const foot = dimension('dovetail foot', s.foot, R * 0.7, path('foot'), wide)
      const head = dimension('dovetail head', s.head, R * 1.1, path('head'), wide)
      const theta = dimension('dovetail angle', s.theta, 90, path('theta'), 'across the main switch line', '°')
      const cut: Cut = { id: s.id, z, joint: s.joint ?? 'pins', gap, diameter, length, theta, foot, head }
      badJoint(job, cut, R)
      return [cut]
    })
    .sort((a, b) => a.z - b.z)
}

/** A pin thinner than a wall, or a dovetail that does not widen or leaves no wall beside it. */
function badJoint(job: SledJob, { joint, diameter, foot, head, gap, length }: Cut, R: number): void {
  const least = job.sled.print.leastWall
  const below = (d: Dimension, limit: number, what: string) => {
    if (d.value < limit - 0.001)
      cannot(job, d.path, `${d.value} mm`, what, `The nearest that works is ${limit.toFixed(2)}.`, limit - d.value)
  }
  const above = (d: Dimension, limit: number, what: string) => {
    if (d.value > limit + 0.001)
      cannot(job, d.path, `${d.value} mm`, what, `The nearest that works is ${limit.toFixed(2)}.`, d.value - limit)
  }
  if (joint === 'plain') return
  below(length, 1, 'at least 1 mm, or it holds nothing')
  if (joint === 'pins') {
    below(diameter, least, `at least the least wall, ${least} mm`)
    return
  }
  below(foot, 2 * least, `at least two walls, ${2 * least} mm`)
  below(head, foot.value, `at least its foot, ${foot.value.toFixed(2)} mm, or it pulls out`)
  const widest = 2 * (R - gap.value - least)
  above(head, widest, `at most ${widest.toFixed(2)} mm, with a wall on both sides`)
}

/** Whether a tongue or pin is longer than the piece it goes into. */
function tooLong(job: SledJob, c: Cut, next: number): boolean {
  if (c.joint === 'plain') return false
  const most = next - c.z - c.gap.value - job.sled.print.leastWall
  if (c.length.value <= most + 0.001) return false
  cannot(
    job,
    c.length.path,
    `${c.length.value} mm`,
    `at most ${most.toFixed(2)} mm in a piece of ${(next - c.z).toFixed(2)}`,
    most >= 1 ? `The nearest that works is ${most.toFixed(2)}.` : 'Move the split: the piece is too short for a joint.',
    c.length.value - most,
  )
  return true
}

/** A dovetail that goes through a wall and leaves a piece of it that hangs on nothing: a shorter one, or another height. */
function cutOff(job: SledJob, whole: PlanBody, c: Cut, last: number, next: number): void {
  const own = `sleds/${job.sled.id}/splits/${c.id}/`
  if (c.joint !== 'dovetail' || job.faults.some((f) => f.problem.path.startsWith(own))) return
  const d = dovetailOf(job, c)
  const { leastWall } = job.sled.print
  const sound = (other: Partial<Dovetail>) => !cutsOff({ d: { ...d, ...other }, items: whole.items })
  if (sound({})) return
  // What is offered leaves a wall beyond the dovetail.
  const walled = (o: Dovetail) => sound(o) && sound({ ...o, length: o.length + leastWall })
  const shorter = range(Math.ceil(10 * (d.length - 1))).map((i) => Number((d.length - (i + 1) / 10).toFixed(2)))
  const length = shorter.find((n) => n >= 1 && walled({ ...d, length: n }))
  if (length !== undefined) {
    const limit = `at most ${length.toFixed(2)} mm at z ${d.z.toFixed(2)}, or it cuts off part of the wall before a nest`
    const hint = `The nearest that works is ${length.toFixed(2)}.`
    cannot(job, c.length.path, `${d.length} mm`, limit, hint, d.length - length)
    return
  }
  const room = d.length + d.gap + leastWall
  const heights = range(20).flatMap((i) => [d.z + (i + 1) / 2, d.z - (i + 1) / 2])
  const z = heights.find(
    (h) => h > last + 2 && h + room < next && walled({ ...d, z: h, R: outerRadius(job.sled, h, h) }),
  )
  cannot(
    job,
    `${own}z`,
    `z ${d.z.toFixed(2)}, with a dovetail of ${d.length} mm`,
    'a height where the dovetail cuts off no part of the wall before a nest',
    z === undefined ? 'Use pins or a plain split.' : `The nearest is z ${z.toFixed(2)}; or use pins or a plain split.`,
    z === undefined ? d.length : z - d.z,
  )
}

const range = (n: number): number[] => Array.from({ length: Math.max(0, n) }, (_, i) => i)

const dovetailOf = (job: SledJob, { z, length, foot, head, theta, gap }: Cut): Dovetail => ({
  z,
  length: length.value,
  foot: foot.value / 2,
  head: head.value / 2,
  theta: theta.value,
  gap: gap.value,
  R: outerRadius(job.sled, z, z),
})

const nearestOutside = (z: number, lo: number, hi: number): number => (z - lo < hi - z ? lo : hi)

/** Everything between two heights, taken away after all else. */
function halfSpace(job: SledJob, id: string, z0: number, z1: number): PlanItem[] {
  const [rear, blade] = [job.sled.ends.rear.nominal, job.sled.ends.blade.nominal]
  if (z1 <= rear || z0 >= blade) return []
  const r = outerRadius(job.sled, rear, blade) + 20
  return [
    {
      id: `sleds/${job.sled.id}/splits/${id}`,
      op: 'cut',
      by: `sleds/${job.sled.id}`,
      nest: 'split',
      dimensions: [],
      solid: { shape: 'box', x: 0, y: 0, z0, z1, width: 2 * r, height: 2 * r, facing: 0 },
    },
  ]
}

/** Pins or dovetail come in the second stage, after the other piece was taken away. */
function jointItems(job: SledJob, whole: PlanBody, c: Cut, side: 'tongue' | 'socket'): PlanItem[] {
  if (c.joint === 'plain') return []
  const rest = {
    by: `sleds/${job.sled.id}`,
    nest: 'split joint',
    stage: 2 as const,
    op: side === 'tongue' ? ('add' as const) : ('cut' as const),
    dimensions: c.joint === 'pins' ? [c.diameter, c.length, c.gap] : [c.foot, c.head, c.length, c.theta, c.gap],
  }
  const gap = side === 'socket' ? c.gap.value : 0
  const id = (n: string) => `sleds/${job.sled.id}/splits/${c.id}/${side}-${n}`
  if (c.joint === 'dovetail') {
    const R = outerRadius(job.sled, c.z, c.z)
    const [foot, head] = [c.foot.value / 2 + gap, c.head.value / 2 + gap]
    const top = c.z + c.length.value + gap
    const root = side === 'tongue' ? c.z - 0.05 : c.z - 1
    const points = [
      [-foot, root],
      [foot, root],
      [foot, c.z],
      [head, top],
      [-head, top],
      [-foot, c.z],
    ] as const
    const nests = side === 'tongue' ? again(whole, c.z, top) : []
    return [
      {
        ...rest,
        id: id('dovetail'),
        solid: {
          shape: 'plate',
          theta: c.theta.value,
          points,
          rIn: side === 'tongue' ? -R : -R - beyond,
          rOut: side === 'tongue' ? R : R + beyond,
        },
      },
      ...(side === 'tongue' ? [trim(job, c, R)] : []),
      ...nests,
    ]
  }
  const places = pinPlaces(job, whole, c)
  return places.map(({ x, y }, i): PlanItem => {
    const r = c.diameter.value / 2 + gap
    const z0 = side === 'tongue' ? c.z - 0.5 : c.z - beyond
    return {
      ...rest,
      id: id(`pin-${i + 1}`),
      solid: { shape: 'cylinder', x, y, z0, z1: c.z + c.length.value + gap, r0: r, r1: r },
    }
  })
}

/** A tongue goes through nests of the other piece: what they cut is cut out of it too. */
function again(whole: PlanBody, z0: number, z1: number): PlanItem[] {
  return whole.items
    .filter((x) => x.op === 'cut' && planSpan(x.solid).z1 > z0 && planSpan(x.solid).z0 < z1)
    .map((x): PlanItem => ({ ...x, id: `${x.id}/tongue`, stage: 2 }))
}

/** A tongue must not stand out of the round of the sled. */
function trim(job: SledJob, c: Cut, R: number): PlanItem {
  return {
    id: `sleds/${job.sled.id}/splits/${c.id}/trim`,
    op: 'cut',
    stage: 2,
    by: `sleds/${job.sled.id}`,
    nest: 'split joint',
    dimensions: [],
    solid: {
      shape: 'ring-sector',
      z0: c.z - 0.2,
      z1: c.z + c.length.value + 1,
      rIn: R,
      rOut: 2 * R + 5,
      theta: 0,
      half: 180,
    },
  }
}
