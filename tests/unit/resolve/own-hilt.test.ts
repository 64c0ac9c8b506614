import { describe, expect, it } from 'vitest'
import { loadPresets } from '../../../src/presets/presets.ts'
import { checkProject } from '../../../src/project/read.ts'
import { resolve } from '../../../src/resolve/resolve.ts'
import { tube } from './project-of.ts'

describe('several hilts in one project', () => {
  const read = checkProject(
    tube({
      hilts: [{ id: 'one' }, { id: 'two' }],
      sections: [
        { id: 'a', hilt: 'one', length: 100, bore: [{ id: 'm', diameter: 30 }] },
        { id: 'b', hilt: 'two', length: 120, bore: [{ id: 'm', diameter: 25 }] },
      ],
      sleds: [
        { id: 'sa', hilt: 'one', from: 10, to: 80 },
        { id: 'sb', hilt: 'two', from: 10, to: 110 },
      ],
      parts: [{ id: 'cell', kind: 'cell', preset: 'cell-14500-flat', on: 'sleds/sb', at: { z: 30 } }],
    }),
  )

  it.each([
    ['one', ['sa'], []],
    ['two', ['sb'], ['parts/cell']],
  ])('%s sees its own sleds and parts, and none of the other’s', (hilt, sleds, parts) => {
    if (!read.ok) throw new Error(JSON.stringify(read.problems))
    const found = resolve(read.value.project, loadPresets(), hilt)
    if (!found.ok) throw new Error(JSON.stringify(found.problems))
    expect(found.value.sleds.map((s) => s.id)).toEqual(sleds)
    expect(found.value.parts.map((p) => p.id)).toEqual(parts)
    expect(found.value.sections).toHaveLength(1)
  })
})
