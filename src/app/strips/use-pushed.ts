import { useMemo } from 'react'
import type { LengthwiseView } from '../../papers/lengthwise.ts'
import { pushedSection, wayRoom } from '../../papers/pushed-section.ts'
import { shiftAt } from '../../papers/way-shift.ts'
import type { Mark } from '../drawing/lengthwise-section.tsx'
import { placeTold, sampleAt, stopsOf } from '../push/pushing.ts'
import { fixed } from '../sheet/numbers.ts'
import { useWays } from '../work/use-ways.ts'
import { useView } from '../work/work-context.ts'
import type { Range } from './strip-frame.ts'

/** What the strips show while something is pushed in. */
export interface PushedStrips {
  readonly view: LengthwiseView
  /** From, to along the hilt with room for what stands outside it. */
  readonly room: Range
  /** Where the unit's blade-side face now lies, and what is said of it. */
  readonly face: number
  readonly label: string
  /** Where it first comes against something. */
  readonly marks: readonly Mark[]
  readonly words: string
}

/** The section with what is pushed at its depth; undefined where all is in its place. */
export function usePushed(lengthwise: LengthwiseView): PushedStrips | undefined {
  const push = useView((v) => v.push)
  const { value } = useWays(push !== undefined, 'strip-ways')
  const way = push && value?.find((w) => w.id === push.insertion)
  const depth = push?.depth ?? 0
  const room = useMemo(() => way && wayRoom(lengthwise, way), [lengthwise, way])
  return useMemo(() => {
    if (!way || !room) return undefined
    const by = shiftAt(way, depth)
    // A tube brings its places with it; what goes in finds them where they are.
    const brought = way.moves.startsWith('sections/') ? by : 0
    const [first] = stopsOf(way)
    const now = sampleAt(way, depth)
    const least = now && Number.isFinite(now.gap) ? `least gap ${fixed(now.gap)} mm` : 'nothing near it'
    const stop = first ? `first against ${first.obstacle} at ${fixed(first.depth, 1)}` : 'nothing stops it on its way'
    // The panel below says it in full; here it has one line with all the rest.
    const label = placeTold(way, depth).replace('blade-side ', '')
    return {
      view: pushedSection(lengthwise, way, depth),
      room,
      face: depth + brought,
      label,
      marks: first ? [{ at: { ...first.at, z: first.at.z + brought }, tone: 'clash' }] : [],
      words: `${label} of ${fixed(way.to, 1)} mm, ${least}; ${stop}`,
    }
  }, [lengthwise, way, room, depth])
}
