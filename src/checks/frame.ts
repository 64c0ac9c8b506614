import type { Body } from '../body/body.ts'
import { add, type Quantity, scale } from '../quantity/quantity.ts'
import type { Sled } from '../resolve/assembly.ts'

type Place = (b: Body) => Body

/**
 * A sled and all in it are judged where they are drawn; what is around it lies as much farther back as the sled truly
 * lies ahead. What moves both is then in neither.
 */
export const seenIn = (sled: Sled): Place => placing(sled.shift, -1)

/** A body of a sled where it truly lies in the hilt. */
export const outOf = (sled: Sled): Place => placing(sled.shift, 1)

const made = new WeakMap<Quantity, Map<1 | -1, Place>>()

function placing(shift: Quantity, way: 1 | -1): Place {
  if (shift.nominal === 0 && shift.terms.length === 0) return (b) => b
  const ways = made.get(shift) ?? new Map<1 | -1, Place>()
  made.set(shift, ways)
  const known = ways.get(way)
  if (known) return known
  const by = scale(shift, way)
  const seen = new WeakMap<Body, Body>()
  const place: Place = (b) => {
    const found = seen.get(b) ?? moved(b, by)
    seen.set(b, found)
    return found
  }
  ways.set(way, place)
  return place
}

function moved(b: Body, by: Quantity): Body {
  const s = b.shape
  return s.kind === 'pin'
    ? { ...b, shape: { ...s, z: add(s.z, by) } }
    : { ...b, shape: { ...s, z0: add(s.z0, by), z1: add(s.z1, by) } }
}
