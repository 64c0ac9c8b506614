import { type Gap, gap } from '../solid/gap.ts'
import type { Solid } from '../solid/solid.ts'
import { swept } from '../solid/sweep.ts'
import type { ClearanceMap, MapOptions } from './clearance-map.ts'
import { nobody } from './layer.ts'

/** A pair that some cell could not prove clear, with its exact gap. */
export interface TightPlace {
  readonly body: number
  readonly obstacle: number
  readonly gap: Gap
  /** Cells of the map that pointed at it. */
  readonly cells: number
}

/**
 * The places a map could not prove clear, looked at exactly: each pair of body and obstacle once. What the map leaves
 * out is clear; what comes back with a gap below the clearance is not.
 */
export function tightPlaces(
  map: ClearanceMap,
  bodies: readonly Solid[],
  obstacles: readonly Solid[],
  options: MapOptions,
): TightPlace[] {
  const pairs = new Map<number, number>()
  for (let i = 0; i < map.free.length; i++) {
    const [b, o] = [map.filledBy[i] as number, map.freeBy[i] as number]
    if (b === nobody || o === nobody || (map.free[i] as number) >= (map.filled[i] as number)) continue
    pairs.set(b * 0x10000 + o, (pairs.get(b * 0x10000 + o) ?? 0) + 1)
  }
  const places = [...pairs].map(([key, cells]): TightPlace => {
    const [body, obstacle] = [Math.floor(key / 0x10000), key % 0x10000]
    return { body, obstacle, cells, gap: exactly(bodies[body] as Solid, obstacles[obstacle] as Solid, options) }
  })
  return places.sort((a, b) => a.gap.lo - b.gap.lo)
}

function exactly(body: Solid, obstacle: Solid, { way }: MapOptions): Gap {
  const all = way ? swept(body, way) : [body]
  return all.map((s) => gap(s, obstacle)).reduce((a, b) => (b.lo < a.lo ? b : a))
}
