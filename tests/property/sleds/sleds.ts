import { beforeAll, expect, it } from 'vitest'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import type { Kernel } from '../../../geometry/kernel/manifold.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import { judgeSled } from './judge-sled.ts'

/** Each title names fifty seeds; what fails is told with its own. */
const together = 50

/** `SLEDS=5000 npx vitest run tests/property/sleds` looks at more of them, `FIRST_SEED=5001` at others. */
const asked = Number(process.env.SLEDS ?? 500)
const start = Number(process.env.FIRST_SEED ?? 1)

/** One half of the sleds asked for: two files, so that two cores share them. */
export function provesHalf(half: 0 | 1): void {
  const count = Math.ceil(asked / 2)
  provesSleds(start + half * count, count)
}

/** As many valid sleds as asked, from a seed on. The seed's remainder by three chooses the construction. */
function provesSleds(first: number, count: number): void {
  let kernel: Kernel
  beforeAll(async () => {
    kernel = await loadKernel()
  })
  const blocks = Array.from({ length: Math.ceil(count / together) }, (_, i) => first + i * together)
  it.each(blocks)(`${together} valid sleds are sound, seeds %i and on`, (from) => {
    const presets = loadPresets()
    const faults = Array.from({ length: together }, (_, i) => from + i).flatMap((seed) =>
      judgeSled(kernel, presets, seed).map((what) => `seed ${seed}: ${what}`),
    )
    expect(faults).toEqual([])
  })
}
