import type { PlanItem } from '../../geometry/plan/plan.ts'
import type { Assembly, Part, Sled, SledPiece } from '../resolve/assembly.ts'
import { dimension } from './dimensions.ts'
import { nestJob } from './job.ts'
import { boardShelf } from './nests/board-shelf.ts'
import { roundPocket } from './nests/cell-pocket.ts'
import { sectorRecess } from './nests/sector-recess.ts'
import { speakerRing } from './nests/speaker-ring.ts'
import { windowItems } from './nests/window.ts'
import { wireChannels } from './nests/wire-channel.ts'

/** Pieces of different width reach into each other by this much, mm, so that no two faces merely touch. */
const overlap = 0.05
/** First-layer chamfer on the ends, 45°: a squashed first layer must not meet the bore. */
const usualChamfer = 0.4

/**
 * The full cage: a solid body that follows the sled's pieces, out of which each part's nest is cut. What is left
 * between two nests is the bulkhead.
 */
export function fullCage(assembly: Assembly, sled: Sled): PlanItem[] {
  const parts = assembly.parts.filter((p) => p.sled === sled.id && p.goesIn === 'with-sled')
  const nests = [...parts.flatMap((p) => nestOf(assembly, sled, p)), ...windowItems(assembly, sled)]
  return [...bodyItems(sled), ...nests, ...wireChannels(assembly, sled, nests)]
}

/** Each part brings its own nest; a contact lives in the pocket of what it presses on. */
function nestOf(assembly: Assembly, sled: Sled, part: Part): PlanItem[] {
  const job = nestJob(assembly, sled, part)
  if (part.contact) return []
  const [main] = part.bodies
  if (main?.shape.kind === 'sector') return sectorRecess(job, main.shape)
  if (part.kind === 'speaker' && part.extent.round) return speakerRing(job)
  if (part.extent.round) return roundPocket(job, part.kind === 'cell' ? 'cell pocket' : `${part.kind} pocket`)
  return boardShelf(job, part.kind === 'board' ? 'board shelf' : `${part.kind} pocket`)
}

function bodyItems(sled: Sled): PlanItem[] {
  const by = `sleds/${sled.id}`
  const chamfer = dimension('chamfer', sled.input.chamfer, usualChamfer, `${by}/chamfer`, 'common practice, no source')
  const last = sled.pieces.length - 1
  const pieces = sled.pieces.flatMap((p, i) =>
    pieceItems(sled, p, i, i === 0 ? chamfer.value : 0, i === last ? chamfer.value : 0, chamfer),
  )
  const rings = sled.rings.map(
    (r): PlanItem => ({
      id: `${by}/rings/${r.id}`,
      op: 'add',
      by,
      nest: 'ring',
      dimensions: [
        {
          name: 'ring diameter',
          value: 2 * r.radius,
          unit: 'mm',
          how: 'typed',
          path: `${by}/rings/${r.id}/diameter`,
          source: 'typed',
        },
      ],
      solid: { shape: 'cylinder', x: 0, y: 0, z0: r.z0, z1: r.z1, r0: r.radius, r1: r.radius },
    }),
  )
  return [...pieces, ...rings]
}

function pieceItems(
  sled: Sled,
  p: SledPiece,
  i: number,
  rear: number,
  blade: number,
  chamfer: ReturnType<typeof dimension>,
): PlanItem[] {
  const by = `sleds/${sled.id}`
  const diameter = {
    name: 'body diameter',
    value: 2 * p.radius,
    unit: 'mm',
    how: p.how,
    path: p.path,
    source: p.source,
  } as const
  const [before, after] = [sled.pieces[i - 1], sled.pieces[i + 1]]
  const z0 = before && before.radius > p.radius ? p.z0 - overlap : p.z0
  const z1 = after && after.radius >= p.radius ? p.z1 + overlap : p.z1
  const round = (id: string, a: number, b: number, r0: number, r1: number): PlanItem => ({
    id,
    op: 'add',
    by,
    nest: 'body',
    dimensions: [diameter, chamfer],
    solid: { shape: 'cylinder', x: 0, y: 0, z0: a, z1: b, r0, r1 },
  })
  const items = [round(`${by}/body-${i + 1}`, z0 + rear, z1 - blade, p.radius, p.radius)]
  if (rear > 0) items.unshift(round(`${by}/body-${i + 1}-rear-chamfer`, z0, z0 + rear, p.radius - rear, p.radius))
  if (blade > 0) items.push(round(`${by}/body-${i + 1}-blade-chamfer`, z1 - blade, z1, p.radius, p.radius - blade))
  return items
}
