import { describe, expect, it } from 'vitest'
import { sizesOf } from '../../../src/papers/sizes.ts'
import { solidContents } from '../../../src/papers/solid-contents.ts'
import { assemblyOf, lantern } from './lantern.ts'

const assembly = assemblyOf({ ...lantern, bore: '33.1..33.4', cell: 'cell-18650-flat' })
const size = (path: string) => sizesOf(assembly).find((s) => s.path === path)

describe('what entries came to', () => {
  it('a typed range is taken as it stands', () => {
    expect(size('sections/tube/bore/bore/diameter')).toMatchObject({
      low: expect.closeTo(33.1, 9),
      high: expect.closeTo(33.4, 9),
      source: 'measured',
    })
  })

  it('a single reading has the spread of its tool, and says which', () => {
    const depth = size('sections/tube/length')
    expect(depth?.low).toBeLessThan(148)
    expect(depth?.high).toBeGreaterThan(148)
    expect(depth?.from).toContain('1 reading')
  })

  it('a preset brings its own interval and source', () => {
    expect(size('parts/cell/diameter')).toMatchObject({
      low: expect.closeTo(18.2, 9),
      high: expect.closeTo(18.6, 9),
      source: 'preset',
    })
  })

  it('where a part lies does not count as doubt about its length', () => {
    expect(size('parts/cell/length')).toMatchObject({ low: expect.closeTo(64.5, 9), high: expect.closeTo(65.5, 9) })
  })
})

describe('the contents for the solid view', () => {
  it('are the parts in the sled, as measured', () => {
    const contents = solidContents(assemblyOf(lantern), 'sled')
    expect(contents.find((c) => c.id === 'parts/cell')).toMatchObject({ shape: 'cylinder', r0: expect.closeTo(9.2, 9) })
    expect(contents.find((c) => c.id === 'parts/board')).toMatchObject({
      shape: 'box',
      width: expect.closeTo(18, 9),
      height: expect.closeTo(5.8, 9),
    })
    expect(solidContents(assemblyOf(lantern), 'another')).toEqual([])
  })
})
