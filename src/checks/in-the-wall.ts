import { rareChecks } from './rare.ts'
import type { Check, World } from './world.ts'

/** What is in, through and over the wall, against everything but the sleds. */
export const inTheWall: Check = {
  name: 'in-the-wall',
  title: 'In the wall',
  what: 'What sits in the wall: against each other, the other sections, its hole and the sleeve over it.',
  run: (world) => {
    if (!hasAny(world)) return []
    const { besideEachOther, inOtherMetal, throughHoles, sleeveFits } = rareChecks()
    return [besideEachOther, inOtherMetal, throughHoles, sleeveFits].flatMap((look) => look(world))
  },
}

const hasAny = ({ assembly: { covers, intrusions, parts } }: World): boolean =>
  covers.length + intrusions.length > 0 || parts.some((p) => p.goesIn !== 'with-sled' || p.input.through)
