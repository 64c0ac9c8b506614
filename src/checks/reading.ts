import { placeWords } from '../project/place-words.ts'
import type { Contribution } from '../quantity/margins.ts'
import type { Fix } from './finding.ts'
import type { Tightest } from './group.ts'
import type { World } from './world.ts'

/** The measurement that takes most doubt away, where measuring can decide it. */
export function reading(world: World, t: Pick<Tightest, 'contributions' | 'margins'>): Fix[] {
  const spread = (c: Contribution) => c.up - c.down
  const [next] = t.contributions.filter((c) => c.kind === 'unknown').sort((a, b) => spread(b) - spread(a))
  // Where some print fails whatever the readings turn out to be, no reading decides.
  if (!next || t.margins.settled < 0) return []
  // Nobody measures the room a sled may find: how far it shifts is said instead.
  const float = /^sleds\/[^/]+\/float(?=\/room$)/.exec(next.path)?.[0]
  if (float !== undefined) return [{ text: `Say how far the sled may shift sideways: ${most}.`, path: float }]
  const path = next.path.replace(/\/bend$/, '')
  const what = named(world, path)
  const text =
    next.source === 'measured'
      ? `Measure the ${what} once more, or with a finer tool: ${most}.`
      : `Measure the ${what}: ${most}.`
  return [{ text, path }]
}

/** A path in the project's own words. */
export const named = (world: World, path: string): string => placeWords(world.assembly.project, path)

const most = 'of what a reading can settle, it moves this most'
