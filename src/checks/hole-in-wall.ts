import { type Quantity, scale, sub, type Term } from '../quantity/quantity.ts'
import type { Assembly } from '../resolve/assembly.ts'
import type { Ends } from '../resolve/heights.ts'
import type { Section } from '../resolve/metal.ts'

/** A hole or slot in the wall as what goes through it meets it. */
export interface HoleInWall {
  readonly id: string
  readonly name: string
  readonly section: Section | undefined
  readonly round: boolean
  readonly ends: Ends
  /** How wide it is around the hilt. */
  readonly width: Quantity
  readonly theta: Quantity
}

export function holeInWall({ roundHoles, openings, sections }: Assembly, id: string): HoleInWall | undefined {
  const hole = roundHoles.find((h) => h.id === id)
  const slot = openings.find((o) => o.id === id)
  const found = hole ?? slot
  if (!found) return undefined
  const base = { id, name: found.name, section: sections.find((s) => s.id === found.section) }
  if (hole) return { ...base, round: true, ends: hole.ends, width: scale(hole.radius, 2), theta: hole.theta }
  if (!slot) return undefined
  const { halfWidth, theta } = slot.opening
  // A slot that may be turned is no narrower for it: what that takes from what rides in it is left out here.
  const [turned, own] = [true, false].map((t) => halfWidth.terms.filter((o) => isAngle(id, o) === t)) as [
    Term[],
    Term[],
  ]
  return {
    ...base,
    round: false,
    ends: { rear: slot.z0, blade: slot.z1 },
    width: scale({ nominal: halfWidth.nominal, terms: own }, 2),
    theta: { nominal: theta, terms: turned.map((t) => ({ ...t, gain: 1 })) },
  }
}

const isAngle = (id: string, t: Term): boolean => t.spread.path === `${id}/at/theta`

/** How long it is along the hilt. */
export const lengthOf = ({ rear, blade }: Ends): Quantity => sub(blade, rear)
