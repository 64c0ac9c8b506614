import { add, least, most, type Quantity, reachOf, scale, sub } from '../quantity/quantity.ts'
import type { Part } from '../resolve/assembly.ts'
import { wallAt } from '../resolve/wall.ts'
import { type HoleInWall, lengthOf } from './hole-in-wall.ts'

/** How far a part surely lies off the hole it is said to be in, mm, and in words which way. */
export interface Miss {
  readonly by: number
  readonly way: string
}

/** undefined where it may well lie there. */
export function missesBy(part: Part, hole: HoleInWall): Miss | undefined {
  const along = sub(middleOf(part.ends), middleOf(hole.ends))
  const aside = asideOf(part, hole)
  const room = roomIn(part, hole)
  const [z, t] = [surely(along), aside.surely]
  const misses = hole.round && room.snug ? Math.hypot(z, t) - room.along : Math.max(z - room.along, t - room.around)
  if (misses <= 1e-9) return undefined
  const turned = t > 1e-9 && t - room.around >= z - room.along
  return {
    by: misses,
    way: turned
      ? aside.words
      : `${Math.abs(along.nominal).toFixed(1)} mm farther towards the ${along.nominal < 0 ? 'blade' : 'rear'}`,
  }
}

const middleOf = ({ rear, blade }: Part['ends']): Quantity => scale(add(rear, blade), 0.5)

/** The least of what it may be either way. */
const surely = (q: Quantity): number => Math.max(0, least(q), -most(q))

/**
 * How far a part may lie off the middle of its hole: what is put through a hole can only be as far off as that leaves
 * room; of anything else some must lie before it.
 */
function roomIn(part: Part, hole: HoleInWall): { snug: boolean; along: number; around: number } {
  const [long, wide] = [most(lengthOf(hole.ends)), most(hole.width)]
  const s = part.bodies[0]?.shape
  if (part.goesIn === 'after' && s?.kind === 'pin') {
    const body = 2 * least(s.radius)
    return { snug: true, along: Math.max(0, long - body) / 2, around: Math.max(0, wide - body) / 2 }
  }
  const reach = s?.kind === 'pin' ? most(s.radius) : Math.hypot(most(part.extent.halfU), most(part.extent.halfV))
  return { snug: false, along: (long + most(lengthOf(part.ends))) / 2, around: wide / 2 + reach }
}

/** Around the hilt: how far from the line of the hole its middle surely lies, mm. */
function asideOf(part: Part, hole: HoleInWall): { surely: number; words: string } {
  const s = part.bodies[0]?.shape
  if (s?.kind === 'pin') {
    const turn = reachOf(part.bodies[0]?.turn)
    const apart = Math.abs(((((s.theta - hole.theta.nominal) % 360) + 540) % 360) - 180)
    const sure = Math.max(0, apart - turn - reachOf(hole.theta))
    const wall = hole.section && wallAt(hole.section, s.z, hole.theta)
    const radius = Math.max(0, wall ? least(wall) : least(s.rOut))
    return {
      surely: 2 * radius * Math.sin((sure * Math.PI) / 360),
      words: `${apart.toFixed(0)}° away around the hilt`,
    }
  }
  if (s?.kind !== 'round' && s?.kind !== 'box') return { surely: 0, words: '' }
  const { x, y } = part.across
  const angle = (hole.theta.nominal * Math.PI) / 180
  const [c, n] = [Math.cos(angle), Math.sin(angle)]
  const off = Math.hypot(x.nominal, y.nominal)
  const doubt = reachOf(x) + reachOf(y) + reachOf(part.across.sway) + (off * reachOf(hole.theta) * Math.PI) / 180
  const reach = Math.hypot(most(part.extent.halfU), most(part.extent.halfV))
  // Behind the axis it is on the other side of the hilt, however straight it lies before the hole.
  const behind = x.nominal * c + y.nominal * n + doubt + reach < 0
  const beside = Math.max(0, Math.abs(y.nominal * c - x.nominal * n) - doubt)
  return { surely: behind ? Math.max(beside, off) : beside, words: 'on another side of the hilt' }
}
