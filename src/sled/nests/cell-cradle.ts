import { sectionOf } from '../../../geometry/plan/cross-section.ts'
import { type Dimension, type PlanItem, planSpan, type RingSector } from '../../../geometry/plan/plan.ts'
import { clock, polar, turnBetween } from '../../../geometry/region/point.ts'
import { remember } from '../../../geometry/remember.ts'
import { gapAt } from '../../body/gap-at.ts'
import { onePair } from '../../body/one-pair.ts'
import { exact } from '../../quantity/quantity.ts'
import { dimension } from '../dimensions.ts'
import { beyond, cannot, innerRadius, type NestJob, outerRadius } from '../job.ts'
import { blockFacing, rodItem, seenFacing } from '../round.ts'
import { ejectionNotch } from './ejection-notch.ts'
import { isNotched, type RoundNest, roundNest } from './round-nest.ts'

/** Common practice, no source, but where another is named. */
const usual = { arm: 1.8, wrap: 20, root: 60, length: 10, pairs: 2 }
/** Past this wrap the mouth is narrower than half the cell: no arm of this length opens that far, degrees. */
const mostWrap = 60
/** Arms reach so far into the body at their root, degrees. */
const rooted = 8

/**
 * An open cradle: the cell lies in the body up to the arms' root; above it pairs of arms go on round it, past the
 * equator, and snap over. Angles are counted from the cradle's back.
 */
export function cellCradle(job: NestJob): PlanItem[] {
  const { part, typed, sled } = job
  const nest = roundNest(job)
  const source = 'common practice, no source'
  const arm = dimension('arm thickness', typed?.arm, usual.arm, job.path('arm'), '1.4 to 2.2: from memory')
  const wrap = dimension('wrap', typed?.wrap, usual.wrap, job.path('wrap'), source, '°')
  const root = dimension('arm root', typed?.armRoot, usual.root, job.path('armRoot'), source, '°')
  const length = dimension('arm length', typed?.armLength, usual.length, job.path('armLength'), source)
  const pairs = Math.max(1, Math.round(typed?.arms ?? usual.pairs))
  const dimensions = [nest.gap, nest.radius, nest.opening, arm, wrap, root, length]
  complain(job, nest, arm, wrap, root, length, pairs)
  const rest = { by: part.id, nest: 'cell cradle', dimensions }
  const { v, aside } = seenFacing(nest.c, nest.opening.value)
  const top = outerRadius(sled, nest.z0, nest.z1) + beyond
  // Above the plane through the middle of the arms' roots the body is gone.
  const plane = v - (nest.radius.value + arm.value / 2) * Math.cos((root.value * Math.PI) / 180)
  const bay: PlanItem = {
    ...rest,
    id: `${part.id}/bay`,
    op: 'cut',
    solid: blockFacing(nest.opening.value, aside, plane, Math.max(top, plane + 1), 4 * top, nest.z0, nest.z1),
  }
  const pocket = rodItem({ ...rest, op: 'cut' }, `${part.id}/pocket`, nest.c, nest.radius.value, nest.z0, nest.z1)
  const notch = isNotched(job) ? ejectionNotch(job, nest) : []
  return [pocket, bay, ...arms(job, nest, { arm, wrap, root, length, pairs }), ...notch]
}

interface Arms {
  readonly arm: Dimension
  readonly wrap: Dimension
  readonly root: Dimension
  readonly length: Dimension
  readonly pairs: number
}

/** The arms stand where the bay was cut, so they come in the second stage; what of them leaves the sled is trimmed. */
function arms(job: NestJob, nest: RoundNest, a: Arms): PlanItem[] {
  const { part, sled } = job
  const rest = {
    by: part.id,
    nest: 'cradle arm',
    stage: 2 as const,
    dimensions: [nest.radius, a.arm, a.wrap, a.root, a.length],
  }
  const [from, to] = [a.root.value - rooted, 90 + a.wrap.value]
  const back = nest.opening.value + 180
  const items: PlanItem[] = places(nest, a.length.value, a.pairs).flatMap((z, i) =>
    [-1, 1].map(
      (side): PlanItem => ({
        ...rest,
        id: `${part.id}/arm-${i + 1}${side < 0 ? 'a' : 'b'}`,
        op: 'add',
        solid: {
          shape: 'ring-sector',
          x: nest.c.x,
          y: nest.c.y,
          z0: z,
          z1: z + a.length.value,
          rIn: nest.radius.value,
          rOut: nest.radius.value + a.arm.value,
          theta: back + (side * (from + to)) / 2,
          half: (to - from) / 2,
        },
      }),
    ),
  )
  for (const x of items) clearOfOthers(job, x, a.wrap)
  const R = innerRadius(sled, nest.z0, nest.z1)
  return [...items, ...items.flatMap((x) => trim(x, R))]
}

/** Arms are put in after every nest was cut: what lies beside the cell must leave them room. */
function clearOfOthers(job: NestJob, x: PlanItem, wrap: Dimension): void {
  const { part, parts, sled } = job
  const region = sectionOf(x.solid)
  if (!region) return
  const { z0, z1 } = planSpan(x.solid)
  const shape = { kind: 'outline', region, z0: exact(z0), z1: exact(z1) } as const
  const arm = { id: x.id, of: `sleds/${sled.id}`, name: 'arm', shape, swell: sled.print.error }
  for (const other of parts.filter((p) => p !== part && p.contact?.presses !== part.id))
    for (const body of other.bodies) {
      const gap = gapAt(onePair(arm, body), 'worst').lo
      if (gap < 0)
        cannot(
          job,
          wrap.path,
          `an arm ${(-gap).toFixed(2)} mm into ${other.name}`,
          'arms beside nothing else',
          `Let the cradle open to another side, give fewer or shorter arms, or move ${other.name}.`,
          gap,
        )
    }
}

/** Cut away beyond what an arm reaches out, each way, degrees and mm. */
const trimBeyond = { turn: 2, along: 0.05 }

/** What of an arm stands out of the body is taken away, and only there: a key or a tower may stand beside it. */
function trim(x: PlanItem, R: number): PlanItem[] {
  const s = x.solid
  if (s.shape !== 'ring-sector') return []
  const { z0, z1, ...arm } = s
  const out = standsOut({ arm, R })
  if (!out) return []
  const solid = { shape: 'ring-sector', z0: z0 - trimBeyond.along, z1: z1 + trimBeyond.along, ...out } as const
  return [{ ...x, id: `${x.id}/trim`, op: 'cut', solid }]
}

interface Arm {
  readonly arm: Omit<RingSector, 'z0' | 'z1'>
  readonly R: number
}

/** The ring sector outside R that holds all of an arm's cross-section there; null where none of it is. */
const standsOut = remember(64, (a: Arm) => JSON.stringify(a), outsideOf)

function outsideOf({ arm: s, R }: Arm): Omit<RingSector, 'shape' | 'z0' | 'z1'> | null {
  const c = { x: s.x ?? 0, y: s.y ?? 0 }
  const steps = 90
  const out = Array.from({ length: steps + 1 }, (_, i) => s.theta - s.half + (2 * s.half * i) / steps).flatMap((w) =>
    [s.rIn, s.rOut].flatMap((r) => {
      const at = polar(r, w)
      const p = { x: c.x + at.x, y: c.y + at.y }
      return Math.hypot(p.x, p.y) > R ? [p] : []
    }),
  )
  const [first] = out
  if (!first) return null
  const turns = out.map((p) => turnBetween(clock(first), clock(p)))
  const [from, to] = [Math.min(...turns) - trimBeyond.turn, Math.max(...turns) + trimBeyond.turn]
  return {
    rIn: R,
    rOut: R + s.rOut + Math.hypot(c.x, c.y) + 5,
    theta: clock(first) + (from + to) / 2,
    half: (to - from) / 2,
  }
}

/** Rear edges of the arm pairs, spread evenly over the pocket. */
function places(nest: RoundNest, length: number, pairs: number): number[] {
  const room = nest.z1 - nest.z0
  const step = room / pairs
  return Array.from({ length: pairs }, (_, i) => nest.z0 + step * (i + 0.5) - length / 2)
}

function complain(
  job: NestJob,
  nest: RoundNest,
  arm: Dimension,
  wrap: Dimension,
  root: Dimension,
  length: Dimension,
  pairs: number,
): void {
  const bead = job.sled.print.bead ?? job.sled.print.leastWall
  if (arm.value < bead)
    cannot(
      job,
      arm.path,
      `${arm.value} mm`,
      `at least one bead, ${bead} mm`,
      `The nearest that prints is ${bead}; ${usual.arm} holds a cell.`,
      bead - arm.value,
    )
  if (wrap.value > mostWrap)
    cannot(
      job,
      wrap.path,
      `${wrap.value}°`,
      `at most ${mostWrap}°, or the mouth closes`,
      `The nearest that opens is ${mostWrap}; 15 to 25 is usual.`,
      wrap.value - mostWrap,
    )
  if (wrap.value < 0)
    cannot(
      job,
      wrap.path,
      `${wrap.value}°`,
      '0° or more',
      'Past the equator: 0 does not hold the cell by itself.',
      wrap.value,
    )
  if (root.value < 20 || root.value > 85)
    cannot(
      job,
      root.path,
      `${root.value}°`,
      '20° to 85° from the back',
      `${usual.root} is usual.`,
      Math.max(20 - root.value, root.value - 85),
    )
  const room = (nest.z1 - nest.z0) / pairs
  if (length.value > room || length.value < bead)
    cannot(
      job,
      length.path,
      `${length.value} mm`,
      `${bead} to ${room.toFixed(1)} mm for ${pairs} pairs`,
      `The nearest that works is ${Math.min(room, Math.max(bead, length.value)).toFixed(1)}.`,
      Math.max(length.value - room, bead - length.value),
    )
}
