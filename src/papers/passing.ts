import { reachFromAxis } from '../../geometry/region/farthest.ts'
import type { Region } from '../../geometry/region/region.ts'
import type { Body } from '../body/body.ts'
import { worldOf } from '../checks/world.ts'
import type { Assembly, Insertion } from '../resolve/assembly.ts'
import type { Obstacle } from './cross-gaps.ts'
import { bodyAt, nominalSpan } from './nominal.ts'

/** Something that goes through a height on its way in and stands elsewhere at the end. */
interface Passer extends Obstacle {
  readonly way: string
}

/**
 * What of the sleds and their parts passes a height, and reaches farther than what is there anyway (`carried`, mm): what
 * passes inside that tells nothing.
 */
export function passing(assembly: Assembly, z: number, carried: number): Passer[] {
  return assembly.insertions.flatMap((way) => {
    const sled = assembly.sleds.find((s) => way.moves === `sleds/${s.id}`)
    if (!sled) return []
    const of = `sleds/${sled.id}`
    const bodies = worldOf(assembly).outsides.get(sled.id) ?? []
    const parts = assembly.parts.filter((p) => p.sled === sled.id && p.goesIn === 'with-sled')
    return [
      ...farOut(beyond(bodies, way, z), carried).map((p) => passer(way, of, p, [])),
      ...parts.flatMap((part) =>
        beyond(part.bodies, way, z)
          .filter(({ region }) => reachFromAxis(region) > carried)
          .map((p) => passer(way, part.id, p, [of, ...(part.contact ? [part.contact.presses] : [])])),
      ),
    ]
  })
}

interface Slice {
  readonly body: Body
  readonly region: Region
}

const passer = (way: Insertion, of: string, { body, region }: Slice, meant: readonly string[]): Passer => ({
  of,
  name: body.name,
  region,
  role: 'passing',
  way: way.id,
  meant,
})

/** The slices of bodies that lie past a height at the end of a move through it. */
function beyond(bodies: readonly Body[], way: Insertion, z: number): Slice[] {
  return bodies.flatMap((body) => {
    const { z0, z1 } = nominalSpan(body)
    const past = way.heading === 'blade' ? z0 > z && z >= way.opening : z1 < z && z <= way.opening
    const region = past ? bodyAt(body, (z0 + z1) / 2) : undefined
    return region ? [{ body, region }] : []
  })
}

/** Of a sled's many slices the one that reaches farthest: the others pass inside it, or nearly. */
function farOut(slices: readonly Slice[], carried: number): Slice[] {
  const most = slices.reduce((n, { region }) => Math.max(n, reachFromAxis(region)), carried)
  return slices.filter(({ region }) => reachFromAxis(region) === most && most > carried).slice(0, 1)
}
