import type { PlanBody, PlanItem } from '../../../geometry/plan/plan.ts'
import { planSpan } from '../../../geometry/plan/plan.ts'
import { dimension } from '../dimensions.ts'
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
  const shared = job.parts.flatMap((p) => nestOf(job, p))
  return discsOf(job).map((d): PlanBody => {
    const R = innerRadius(job.sled, d.z0, d.z1)
    const by = `sleds/${job.sled.id}`
    const thickness = dimension(
      'disc thickness',
      typedThickness(job, d.id),
      usualThickness,
      `${by}/discs/${d.id}/thickness`,
      'common practice, no source',
    )
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
    return typed.flatMap((d): Disc[] => {
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
  }
  return own(job)
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
