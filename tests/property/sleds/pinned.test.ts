import { beforeAll, describe, expect, it } from 'vitest'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import type { Kernel } from '../../../geometry/kernel/manifold.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import { judgeSled } from './judge-sled.ts'

let kernel: Kernel
beforeAll(async () => {
  kernel = await loadKernel()
})

describe('sleds that were found unsound stay mended', () => {
  it.each([
    [55, 'the wires cut a cradle’s arms off, and rounding left needles'],
    [79, 'letters over a step of the body were closed by the wider piece'],
    [91, 'one corner near 0 came out as three, a billionth apart'],
    [106, 'the way for wires was shut off at both ends'],
    [114, 'two strokes of a letter left a sheet without thickness'],
    [174, 'a crumb between two cutters counted as a piece'],
    [345, 'a way for wires opened into a cell’s pocket through its arms'],
  ])('seed %i: %s', (seed) => {
    expect(judgeSled(kernel, loadPresets(), seed)).toEqual([])
  })
})
