import type { Body } from '../body/body.ts'
import { oneBody } from '../body/one-body.ts'
import { add, known, type Quantity, scale } from '../quantity/quantity.ts'
import type { Sled } from '../resolve/assembly.ts'

type Place = (b: Body) => Body

/**
 * A sled and all in it are judged where they are drawn; what is around it lies as much farther back as the sled truly
 * lies ahead. What moves both is then in neither.
 */
export const seenIn = (sled: Sled): Place => placing(sled.shift, -1)

/**
 * A bore as seen from a sled that may be off its clock angle: a slot in it is met turned, and a bore beside the axis
 * lies a little aside.
 */
export function boreSeenIn(sled: Sled): Place {
  const seen = seenIn(sled)
  const turn = turnOf(sled)
  if (!turn) return seen
  const turned = new WeakMap<Body, Body>()
  return (b) => {
    const found = turned.get(b) ?? oneBody(turnedBore(seen(b), turn))
    turned.set(b, found)
    return found
  }
}

function turnedBore(b: Body, turn: Quantity): Body {
  if (b.shape.kind !== 'bore') return b
  const off = Math.hypot(b.shape.x.nominal, b.shape.y.nominal)
  const aside = scale(turn, (off * Math.PI) / 180)
  return {
    ...b,
    ...(b.shape.openings ? { turn: b.turn ? add(b.turn, turn) : turn } : {}),
    ...(off > 0 ? { sway: b.sway ? add(b.sway, aside) : aside } : {}),
  }
}

/** How far the sled may be turned from its place; nominal 0. */
export function turnOf(sled: Sled): Quantity | undefined {
  const { clocking } = sled
  if (!clocking) return undefined
  return known(0, {
    path: `sleds/${sled.id}/clocking`,
    kind: 'varies',
    minus: clocking,
    plus: clocking,
    distribution: 'rectangular',
    source: 'measured',
    from: 'clocking of the sled',
  })
}

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
    const found = seen.get(b) ?? oneBody(moved(b, by))
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
