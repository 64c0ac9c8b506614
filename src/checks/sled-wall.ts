import { marginsOf } from '../quantity/margins.ts'
import { exact } from '../quantity/quantity.ts'
import type { Part, Sled } from '../resolve/assembly.ts'
import { type Finding, finding } from './finding.ts'
import { roomier } from './fix-outside.ts'
import { thinnestWall } from './walls.ts'
import { mm } from './words.ts'
import type { Check, World } from './world.ts'

/** Walls left between two nests, and between a nest and the outside, against what the process can print. */
export const sledWall: Check = {
  name: 'sled-wall',
  title: 'Walls of the sled',
  what: 'Thinnest wall between two nests and between a nest and the outside, against what the process prints.',
  run: (world) => world.assembly.sleds.flatMap((sled) => judged(world, sled)),
}

function judged(world: World, sled: Sled): Finding[] {
  const thinnest = (world.plans.get(sled.id)?.bodies ?? [])
    .map((b) => thinnestWall(sled, b))
    .reduce((a, b) => (a && !(b && b.thickness < a.thickness) ? a : b), undefined)
  if (!thinnest) return []
  const limit = sled.print.leastWall
  // Judged as drawn: the process's least wall is itself a drawn thickness, its print error included.
  // Beside the nest of one part, that part or the sled around it may make room.
  const [of, other] = thinnest.parts
  const nested = other === undefined ? world.assembly.parts.find((p) => p.id === of) : undefined
  // Where its nest is refused for that wall, it is told there, with what would go in.
  const refused = nested && world.faults.get(sled.id)?.some((f) => f.problem.path === nestPath(sled, nested))
  if (refused) return []
  const margin = exact(thinnest.thickness - limit)
  return [
    finding({
      id: `sled-wall:${sled.id}`,
      check: 'sled-wall',
      title: `Thinnest wall of ${sled.name}: ${thinnest.between}`,
      value: thinnest.thickness,
      limit,
      unit: 'mm',
      margins: marginsOf(margin),
      contributions: [],
      at: {
        z: thinnest.z,
        theta: ((Math.atan2(thinnest.y, thinnest.x) * 180) / Math.PI + 360) % 360,
        r: Math.hypot(thinnest.x, thinnest.y),
      },
      parts: [...new Set([`sleds/${sled.id}`, ...thinnest.parts])],
      state: 'every state',
      why: `${mm(thinnest.thickness)} mm are left as drawn between ${thinnest.between}; the process prints ${mm(limit)} or more.`,
      source: `least wall: ${sled.print.leastWallSource}`,
      fix:
        thinnest.thickness >= limit
          ? []
          : [
              ...(nested ? roomier(sled, nested, limit - thinnest.thickness) : []),
              {
                text: `Leave ${mm(limit - thinnest.thickness)} mm more there: ${nested ? 'by another part, or a smaller nest' : 'move them apart, or let a nest be smaller'}${isTyped(sled) ? ', or a wider sled' : ''}.`,
                path: thinnest.path,
              },
            ],
    }),
  ]
}

const nestPath = (sled: Sled, part: Part): string => `sleds/${sled.id}/nests/${part.id}/gap`

/** A sled whose width is not typed is as wide already as its way in allows. */
const isTyped = (sled: Sled): boolean => sled.pieces.some((p) => p.how !== 'default')
