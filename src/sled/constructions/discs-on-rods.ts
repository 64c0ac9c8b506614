import type { PlanBody, PlanItem } from '../../../geometry/plan/plan.ts'
import { planSpan } from '../../../geometry/plan/plan.ts'
import type { Part } from '../../resolve/assembly.ts'
import { derived, dimension } from '../dimensions.ts'
import { cannot, drawnAt, innerRadius, nestJob, type SledJob } from '../job.ts'
import { nestOf } from '../nests/nest-of.ts'
import { pocketSpan } from '../nests/round-nest.ts'

/** Thickness of a disc, and how far it reaches over the end of a part it carries, mm: common practice, no source. */
const usualThickness = 6
const over = 3
/** Discs closer than this are one, mm. */
const together = 2

interface Disc {
  readonly id: string
  readonly z0: number
  readonly z1: number
}

/**
 * Discs on rods: each disc is printed on its own and carries what passes it; the rods are bought. Without typed discs
 * there is one at each end of the sled and one over each end of every cell, board and other part.
 */
export function discsOnRods(job: SledJob): PlanBody[] {
  carriesNone(job)
  const shared = job.parts.flatMap((p) => nestOf(job, p))
  const discs = discsOf(job)
  holdsAll(job, discs, shared)
  return discs.map((d): PlanBody => {
    const R = innerRadius(job.sled, d.z0, d.z1)
    const by = `sleds/${job.sled.id}`
    const path = `${by}/discs/${d.id}/thickness`
    const drawn = d.z1 - d.z0
    // Two discs that would stand closer than a finger's width are drawn as one.
    const thickness =
      drawn > usualThickness + 0.001 && typedThickness(job, d.id) === undefined
        ? derived('disc thickness', drawn, path, 'over the ends of two parts that lie close')
        : dimension('disc thickness', typedThickness(job, d.id), usualThickness, path, 'common practice, no source')
    const disc: PlanItem = {
      id: `${by}/discs/${d.id}`,
      op: 'add',
      by,
      nest: 'disc',
      dimensions: [thickness],
      solid: { shape: 'cylinder', x: 0, y: 0, z0: d.z0, z1: d.z1, r0: R, r1: R },
    }
    return {
      id: `${job.sled.id}-${d.id}`,
      name: `${job.sled.name}, ${d.id}`,
      items: [disc, ...shared.filter((x) => beside(x, d))],
    }
  })
}

/** A part is held where its nest meets a disc, a contact where a disc is behind the face it stands on. */
function holdsAll(job: SledJob, discs: readonly Disc[], nests: readonly PlanItem[]): void {
  for (const { id, name, ends, contact, input } of job.parts) {
    const own = nests.filter((x) => x.by === id && x.op === 'cut')
    const [from, to] = contact ? behind(contact) : [ends.rear.nominal, ends.blade.nominal]
    const isHeld = (d: Disc) => (contact ? d.z1 > from && d.z0 < to : own.some((x) => beside(x, d)))
    if (discs.some(isHeld) || input.held === 'glued') continue
    const away = Math.min(...discs.map((d) => Math.max(d.z0 - to, from - d.z1)))
    const got = contact ? `stands at z ${contact.base.nominal.toFixed(1)}` : `z ${from.toFixed(1)} to ${to.toFixed(1)}`
    const hint = 'Add a disc there, or move it to one.'
    cannot(job, `${id}/at/z`, got, `at a disc, for nothing else holds ${name}`, hint, Math.max(away, 0.01))
  }
}

/** A little of what must be there for a contact to stand on. */
function behind({ base, end }: NonNullable<Part['contact']>): [number, number] {
  const z = base.nominal
  return end === 'rear' ? [z - 0.1, z] : [z, z + 0.1]
}

/** Keys, towers and cross walls stand on a body; discs have none. */
function carriesNone(job: SledJob): void {
  const { id, keys = [], towers = [], bulkheads = [] } = job.sled.input
  const lists = { keys, towers, bulkheads }
  for (const [list, records] of Object.entries(lists))
    for (const r of records)
      cannot(
        job,
        `sleds/${id}/${list}/${r.id}`,
        `${list.slice(0, -1)} ${r.id} on a sled of discs`,
        'a full cage or an open cradle',
        'Take it out of the list, or choose a construction that has a body.',
        1,
        true,
      )
}

const typedThickness = (job: SledJob, id: string): number | undefined =>
  job.sled.input.discs?.find((d) => d.id === id)?.thickness

/** Only what meets the disc concerns it; what is added must lie in it. */
function beside(x: PlanItem, d: Disc): boolean {
  const { z0, z1 } = planSpan(x.solid)
  return x.op === 'cut' ? z1 > d.z0 && z0 < d.z1 : z0 >= d.z0 && z1 <= d.z1
}

function discsOf(job: SledJob): Disc[] {
  const typed = job.sled.input.discs ?? []
  if (typed.length > 0) {
    const discs = typed.flatMap((d): Disc[] => {
      const z0 = drawnAt(job.sled, 'discs', d.id, 'z')
      const thickness = d.thickness ?? usualThickness
      if (thickness < job.sled.print.leastWall)
        cannot(
          job,
          `sleds/${job.sled.id}/discs/${d.id}/thickness`,
          `${thickness} mm`,
          `at least ${job.sled.print.leastWall} mm`,
          `The nearest that prints is ${job.sled.print.leastWall}.`,
          job.sled.print.leastWall - thickness,
        )
      return z0 === undefined ? [] : [{ id: d.id, z0, z1: z0 + thickness }]
    })
    misplaced(job, discs)
    return discs
  }
  return own(job)
}

/** Typed discs beyond the sled's ends, or in each other. */
function misplaced(job: SledJob, discs: readonly Disc[]): void {
  const [rear, blade] = [job.sled.ends.rear.nominal, job.sled.ends.blade.nominal]
  const sorted = [...discs].sort((a, b) => a.z0 - b.z0)
  for (const [i, d] of sorted.entries()) {
    const path = `sleds/${job.sled.id}/discs/${d.id}/z`
    const got = `z ${d.z0} to ${d.z1}`
    const lowest = Math.max(rear, sorted[i - 1]?.z1 ?? rear)
    const highest = blade - (d.z1 - d.z0)
    const limit = `z ${lowest.toFixed(1)} to ${highest.toFixed(1)}, after the disc behind it and inside the sled`
    if (d.z0 < lowest - 0.001) cannot(job, path, got, limit, `The nearest is z ${lowest.toFixed(1)}.`, lowest - d.z0)
    else if (d.z0 > highest + 0.001)
      cannot(job, path, got, limit, `The nearest is z ${highest.toFixed(1)}.`, d.z0 - highest)
  }
}

/** Over both ends of everything, and at both ends of the sled. */
function own(job: SledJob): Disc[] {
  const [rear, blade] = [job.sled.ends.rear.nominal, job.sled.ends.blade.nominal]
  const ends = job.parts
    .filter((p) => !p.contact)
    .flatMap((p) => {
      const { z0, z1 } = pocketSpan(nestJob(job, p))
      return [z0 + over - usualThickness, z1 - over]
    })
  const starts = [rear, ...ends, blade - usualThickness]
    .map((z) => Math.min(Math.max(z, rear), blade - usualThickness))
    .sort((a, b) => a - b)
  const discs: { z0: number; z1: number }[] = []
  for (const z of starts) {
    const last = discs.at(-1)
    if (last && z - last.z1 < together) last.z1 = Math.max(last.z1, z + usualThickness)
    else discs.push({ z0: z, z1: z + usualThickness })
  }
  return discs.map((d, i) => ({ id: `disc-${i + 1}`, ...d }))
}
