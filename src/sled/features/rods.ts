import { sectionOf } from '../../../geometry/plan/cross-section.ts'
import type { PlanItem } from '../../../geometry/plan/plan.ts'
import { clock, distance, polar } from '../../../geometry/region/point.ts'
import type { Region } from '../../../geometry/region/region.ts'
import { signedDistance } from '../../../geometry/region/signed-distance.ts'
import type { Body } from '../../body/body.ts'
import { exact } from '../../quantity/quantity.ts'
import { contentRegions } from '../contents.ts'
import { derived, dimension } from '../dimensions.ts'
import { beyond, cannot, type SledJob } from '../job.ts'

/** Rods of a sled of discs, where none are typed: three of 3 mm; common practice, no source. */
const usual = { diameter: 3, gap: 0.1, count: 3 }
/** Rods stand at least this far from each other around the axis, degrees. */
const apart = 60

export interface Rod {
  readonly id: string
  readonly x: number
  readonly y: number
  readonly diameter: number
  readonly gap: number
}

/** The rods of a sled, typed or found where the contents leave room. Only discs need them where none are typed. */
export function rodsOf(job: SledJob, cuts: readonly PlanItem[]): Rod[] {
  const { sled } = job
  const R = Math.min(...sled.pieces.map((p) => p.radius))
  // Nests are a little wider than the parts in them, and a wall must stay to both.
  const contents = [
    ...contentRegions(job),
    ...cuts.flatMap((c) => (c.nest === 'window' ? [] : (sectionOf(c.solid) ?? []))),
  ]
  const typed = sled.input.rods ?? []
  if (typed.length === 0) return sled.input.construction === 'discs-on-rods' ? found(job, R, contents) : []
  const rods = typed.map((r): Rod => {
    const diameter = r.diameter ?? usual.diameter
    const gap = r.gap ?? usual.gap
    const own = polar(r.r ?? R - sled.print.leastWall - gap - diameter / 2, r.theta)
    const path = `sleds/${sled.id}/rods/${r.id}`
    const free = roomAt(own.x, own.y, contents) - diameter / 2
    if (free < 0) {
      const better = best(R, contents, diameter / 2 + gap + sled.print.leastWall, [])
      cannot(
        job,
        `${path}/theta`,
        `θ ${r.theta}°, ${(-free).toFixed(2)} mm into a part`,
        'a place beside every part',
        better
          ? `The nearest place found is θ ${clock(better).toFixed(0)}°, r ${distance(better, { x: 0, y: 0 }).toFixed(1)}.`
          : 'No place for a rod of this width beside the parts.',
        free,
      )
    }
    if (Math.hypot(own.x, own.y) + diameter / 2 + gap > R - sled.print.leastWall + 1e-9)
      cannot(
        job,
        `${path}/r`,
        `${Math.hypot(own.x, own.y).toFixed(2)} mm`,
        `at most ${(R - sled.print.leastWall - gap - diameter / 2).toFixed(2)} mm`,
        'A wall must stay outside the rod.',
        Math.hypot(own.x, own.y) + diameter / 2 + gap - R + sled.print.leastWall,
      )
    return { id: r.id, x: own.x, y: own.y, diameter, gap }
  })
  inEachOther(job, rods)
  return rods
}

/** Two typed rods whose holes leave no wall between them. */
function inEachOther(job: SledJob, rods: readonly Rod[]): void {
  for (const [i, b] of rods.entries())
    for (const a of rods.slice(0, i)) {
      const apart = Math.hypot(a.x - b.x, a.y - b.y)
      const need = (a.diameter + b.diameter) / 2 + a.gap + b.gap + job.sled.print.leastWall
      if (apart >= need - 1e-9) continue
      const r = Math.hypot(b.x, b.y)
      const turn = r > 0 ? (2 * Math.asin(Math.min(1, need / (2 * r))) * 180) / Math.PI : 180
      cannot(
        job,
        `sleds/${job.sled.id}/rods/${b.id}/theta`,
        `${apart.toFixed(2)} mm from rod ${a.id}`,
        `at least ${need.toFixed(2)} mm between their middles`,
        `At this radius ${Math.ceil(turn)}° from it works.`,
        need - apart,
      )
    }
}

const roomAt = (x: number, y: number, contents: readonly Region[]): number =>
  contents.reduce((least, c) => Math.min(least, signedDistance(c)(x, y)), Number.POSITIVE_INFINITY)

/** As many as there is room for, each as free as can be and well apart. */
function found(job: SledJob, R: number, contents: readonly Region[]): Rod[] {
  const need = usual.diameter / 2 + usual.gap + job.sled.print.leastWall
  const rods: Rod[] = []
  for (let i = 0; i < usual.count; i++) {
    const at = best(R, contents, need, rods)
    if (at) rods.push({ id: `rod-${i + 1}`, x: at.x, y: at.y, diameter: usual.diameter, gap: usual.gap })
  }
  if (rods.length < 2)
    cannot(
      job,
      `sleds/${job.sled.id}/rods`,
      `${rods.length} places for rods of ${usual.diameter} mm`,
      'at least 2',
      'Move a part, type rods, or choose another construction.',
      2 - rods.length,
      true,
    )
  return rods
}

function best(
  R: number,
  contents: readonly Region[],
  need: number,
  taken: readonly Rod[],
): { x: number; y: number } | undefined {
  const distances = contents.map(signedDistance)
  let found: { x: number; y: number; free: number } | undefined
  for (let theta = 0; theta < 360; theta += 5) {
    const { x, y } = polar(R - need, theta)
    const free = distances.reduce((least, d) => Math.min(least, d(x, y)), R)
    const clear = taken.every((t) => Math.hypot(t.x - x, t.y - y) > 2 * (R - need) * Math.sin((apart * Math.PI) / 360))
    if (clear && free >= need && (!found || free > found.free + 1e-9)) found = { x, y, free }
  }
  return found
}

/** Holes for the rods, through everything. */
export function rodItems(job: SledJob, rods: readonly Rod[]): PlanItem[] {
  const { sled } = job
  return rods.map((r) => {
    const path = `sleds/${sled.id}/rods/${r.id}`
    const typed = sled.input.rods?.find((o) => o.id === r.id)
    const diameter = dimension(
      'rod diameter',
      typed?.diameter,
      usual.diameter,
      `${path}/diameter`,
      'common practice, no source',
    )
    const gap = dimension('rod gap', typed?.gap, usual.gap, `${path}/gap`, 'common practice, no source')
    const hole = derived('rod hole', r.diameter + 2 * r.gap, `${path}/gap`, 'rod plus gap')
    const radius = r.diameter / 2 + r.gap
    return {
      id: path,
      op: 'cut',
      by: `sleds/${sled.id}`,
      nest: 'rod',
      dimensions: [diameter, gap, hole],
      solid: {
        shape: 'cylinder',
        x: r.x,
        y: r.y,
        z0: sled.ends.rear.nominal - beyond,
        z1: sled.ends.blade.nominal + beyond,
        r0: radius,
        r1: radius,
      },
    }
  })
}

/** The rods themselves: bought, not printed, but part of what moves. */
export function rodBodies(job: SledJob, rods: readonly Rod[]): Body[] {
  const { sled } = job
  return rods.map((r) => ({
    id: `sleds/${sled.id}/rods/${r.id}`,
    of: `sleds/${sled.id}`,
    name: `rod ${r.id}`,
    shape: {
      kind: 'round',
      x: exact(r.x),
      y: exact(r.y),
      r0: exact(r.diameter / 2),
      r1: exact(r.diameter / 2),
      z0: sled.ends.rear,
      z1: sled.ends.blade,
    },
  }))
}
