import type { Dimension, PlanItem } from '../../geometry/plan/plan.ts'
import type { SledPiece } from '../resolve/assembly.ts'
import { dimension } from './dimensions.ts'
import { cannot, overlap, type SledJob } from './job.ts'

/** First-layer chamfer on the ends, 45°: a squashed first layer must not meet the bore. */
const usualChamfer = 0.4

/** What the sled is before anything is cut: its pieces with chamfered ends, and its rings. */
export function outsideItems(job: SledJob): PlanItem[] {
  const { sled } = job
  const by = `sleds/${sled.id}`
  const chamfer = dimension('chamfer', sled.input.chamfer, usualChamfer, `${by}/chamfer`, 'common practice, no source')
  const last = sled.pieces.length - 1
  const most = mostChamfer(job)
  if (chamfer.value > most)
    cannot(
      job,
      chamfer.path,
      `${chamfer.value} mm`,
      `at most ${most.toFixed(2)} mm at these ends`,
      `The nearest that works is ${most.toFixed(2)}; ${usualChamfer} is usual.`,
      chamfer.value - most,
    )
  const asked = sled.input.ringLength
  const ring = sled.rings.find((r) => !sled.input.rings?.some((o) => o.id === r.id))
  if (asked !== undefined && ring && asked > ring.z1 - ring.z0 + 0.001)
    cannot(
      job,
      `${by}/ringLength`,
      `${asked} mm`,
      `at most a third of the sled, ${(ring.z1 - ring.z0).toFixed(2)} mm`,
      `The nearest that works is ${(ring.z1 - ring.z0).toFixed(2)}.`,
      asked - (ring.z1 - ring.z0),
    )
  const pieces = sled.pieces.flatMap((p, i) =>
    pieceItems(job, p, i, i === 0 ? chamfer.value : 0, i === last ? chamfer.value : 0, chamfer),
  )
  return [...pieces, ...rings(job, chamfer)]
}

/** Half of an end piece's radius, and a third of its length: more would leave no end to stand on. */
function mostChamfer({ sled }: SledJob): number {
  const ends = [sled.pieces[0], sled.pieces.at(-1)].filter((p) => p !== undefined)
  return Math.min(...ends.map((p) => Math.min(p.radius / 2, (p.z1 - p.z0) / 3)))
}

/** A ring at an end has that end's chamfer. */
function rings({ sled }: SledJob, chamfer: Dimension): PlanItem[] {
  const by = `sleds/${sled.id}`
  return sled.rings.flatMap((r): PlanItem[] => {
    const typed = sled.input.rings?.some((o) => o.id === r.id)
    const path = typed ? `${by}/rings/${r.id}/diameter` : `${by}/slimBy`
    const diameter: Dimension = {
      name: 'ring diameter',
      value: 2 * r.radius,
      unit: 'mm',
      how: typed ? 'typed' : 'derived',
      path,
      source: typed ? 'typed' : 'as wide as the way in leaves',
    }
    const fromSlim = dimension(
      'ring length',
      sled.input.ringLength,
      r.z1 - r.z0,
      `${by}/ringLength`,
      'common practice, no source',
    )
    const length: Dimension = typed
      ? { ...fromSlim, value: r.z1 - r.z0, how: 'typed', path: `${by}/rings/${r.id}/length`, source: 'typed' }
      : fromSlim
    const c = Math.min(chamfer.value, (r.z1 - r.z0) / 3)
    const atRear = Math.abs(r.z0 - sled.ends.rear.nominal) < 0.01 ? c : 0
    const atBlade = Math.abs(r.z1 - sled.ends.blade.nominal) < 0.01 ? c : 0
    return rounded(
      { by, nest: 'ring', dimensions: [diameter, length, chamfer] },
      `${by}/rings/${r.id}`,
      r.z0,
      r.z1,
      r.radius,
      atRear,
      atBlade,
    )
  })
}

function pieceItems(
  job: SledJob,
  p: SledPiece,
  i: number,
  rear: number,
  blade: number,
  chamfer: Dimension,
): PlanItem[] {
  const { sled } = job
  const by = `sleds/${sled.id}`
  const { how, path, source } = p
  const diameter: Dimension = { name: 'body diameter', value: 2 * p.radius, unit: 'mm', how, path, source }
  const [before, after] = [sled.pieces[i - 1], sled.pieces[i + 1]]
  const z0 = before && before.radius > p.radius ? p.z0 - overlap : p.z0
  const z1 = after && after.radius >= p.radius ? p.z1 + overlap : p.z1
  return rounded(
    { by, nest: 'body', dimensions: [diameter, chamfer] },
    `${by}/body-${i + 1}`,
    z0,
    z1,
    p.radius,
    rear,
    blade,
  )
}

type Rest = Pick<PlanItem, 'by' | 'nest' | 'dimensions'>

function rounded(rest: Rest, id: string, z0: number, z1: number, r: number, rear: number, blade: number): PlanItem[] {
  const round = (own: string, a: number, b: number, r0: number, r1: number): PlanItem => ({
    ...rest,
    id: own,
    op: 'add',
    solid: { shape: 'cylinder', x: 0, y: 0, z0: a, z1: b, r0, r1 },
  })
  const items = [round(id, z0 + rear, z1 - blade, r, r)]
  if (rear > 0) items.unshift(round(`${id}-rear-chamfer`, z0, z0 + rear, r - rear, r))
  if (blade > 0) items.push(round(`${id}-blade-chamfer`, z1 - blade, z1, r, r - blade))
  return items
}
