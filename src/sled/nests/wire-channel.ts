import type { Dimension, PlanItem } from '../../../geometry/plan/plan.ts'
import { type Point, polar } from '../../../geometry/region/point.ts'
import { most } from '../../quantity/quantity.ts'
import type { Sled } from '../../resolve/assembly.ts'
import { along, type Way, wayFor } from '../channel-way.ts'
import { contentRegions } from '../contents.ts'
import { derived } from '../dimensions.ts'
import { type Around, beyond, nestJob, type SledJob } from '../job.ts'
import { rare } from '../rare.ts'
import { ownEnd } from './end-cup.ts'

/**
 * Straight ways for the wires: as typed, or one where the nests leave room for all bundles together, clear of what
 * stands in them.
 */
export function wireChannels(job: SledJob, cuts: readonly PlanItem[], standing: readonly PlanItem[]): PlanItem[] {
  const { assembly, sled } = job
  const typed = sled.input.channels ?? []
  if (typed.length > 0) return typed.flatMap((c) => rare().typedChannel(job, c))
  const width = widthNeeded(assembly, sled)
  if (width <= 0) return []
  const { z0, z1 } = stretch(job)
  const R = Math.min(...sled.pieces.map((p) => p.radius))
  const near = along(cuts, z0, z1)
  const looksOut = (c: PlanItem) => job.parts.some((p) => p.id === c.by && ownEnd(nestJob(job, p)) !== undefined)
  const way = wayFor({
    R,
    width,
    wall: sled.print.leastWall,
    cuts: near.filter((c) => !looksOut(c)),
    // What looks out of an end may open into the channel: its own wires come through there.
    mayOpen: near.filter(looksOut),
    standing: along(standing, z0, z1),
    contents: contentRegions(job),
  })
  const path = (field: string) => `sleds/${sled.id}/channels/wires/${field}`
  const dimensions = [
    derived('channel width', width, path('width'), 'all bundles, their play and the print error'),
    derived('channel angle', way.theta, path('theta'), 'where the nests leave most room', '°'),
  ]
  return channelItems(sled, 'wires', way, width, { z0, z1 }, dimensions)
}

/** Diameter for all bundles of this sled in one channel, as drawn. */
export function widthNeeded(assembly: Around, sled: Sled): number {
  const own = assembly.wires.filter((w) => w.sled === sled.id).map((w) => most(w.diameter))
  if (own.length === 0) return 0
  const sorted = own.sort((a, b) => b - a)
  const packed = Math.sqrt(own.reduce((sum, d) => sum + d ** 2, 0) / 0.6)
  const bundle =
    own.length === 1 ? (sorted[0] as number) : Math.max(packed, (sorted[0] as number) + (sorted[1] as number))
  return Math.ceil((bundle + assembly.thresholds['wire-gap'].value + 2 * most(sled.print.error)) * 20 - 1e-6) / 20
}

/** The whole sled, but not past what looks out of an end: its own wires come from behind it. */
function stretch(job: SledJob): { z0: number; z1: number } {
  let [z0, z1] = [job.sled.ends.rear.nominal - beyond, job.sled.ends.blade.nominal + beyond]
  for (const p of job.parts) {
    const end = ownEnd(nestJob(job, p))
    if (end === 'rear') z0 = Math.max(z0, p.ends.blade.nominal)
    if (end === 'blade') z1 = Math.min(z1, p.ends.rear.nominal)
  }
  return { z0, z1 }
}

export function channelItems(
  sled: Sled,
  id: string,
  way: Omit<Way, 'style'>,
  width: number,
  span: { z0: number; z1: number },
  dimensions: readonly Dimension[],
): PlanItem[] {
  const own = `sleds/${sled.id}/channels/${id}`
  const base = { op: 'cut' as const, by: `sleds/${sled.id}`, nest: 'wire channel', dimensions }
  const c = polar(way.r, way.theta)
  const bore: PlanItem = {
    ...base,
    id: own,
    solid: { shape: 'cylinder', x: c.x, y: c.y, ...span, r0: width / 2, r1: width / 2 },
  }
  // Past the widest piece, so that no skin is left where the body is stepped.
  const outside = Math.max(...sled.pieces.map((p) => p.radius), way.r) + width / 2 + beyond
  const mouth: PlanItem[] = way.open
    ? [{ ...base, id: `${own}/mouth`, solid: slot(c, polar(outside, way.theta), width, span) }]
    : []
  const opened = (way.into ?? []).flatMap(({ at, z0, z1 }, i): PlanItem[] => {
    const [dx, dy] = [at.x - c.x, at.y - c.y]
    const d = Math.hypot(dx, dy)
    const stretch = { z0: Math.max(z0, span.z0), z1: Math.min(z1, span.z1) }
    if (d < 0.01 || stretch.z1 - stretch.z0 < 0.1) return []
    const end = { x: at.x + (reachInto * dx) / d, y: at.y + (reachInto * dy) / d }
    return [{ ...base, id: `${own}/join-${i + 1}`, solid: slot(c, end, width * 0.8, stretch) }]
  })
  return [bore, ...mouth, ...opened]
}

/** How far a channel is drawn into a nest it opens to, so that no skin is left, mm. */
const reachInto = 0.6

/** A box from one point of the cross-section to another. */
function slot(from: Point, to: Point, width: number, span: { z0: number; z1: number }): PlanItem['solid'] {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  return {
    shape: 'box',
    x: (from.x + to.x) / 2,
    y: (from.y + to.y) / 2,
    ...span,
    width,
    height: Math.hypot(dx, dy),
    facing: (Math.atan2(dy, dx) * 180) / Math.PI,
  }
}
