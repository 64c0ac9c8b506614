import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { findReader } from '../../run/readers.mjs'
import { readWithAdmesh } from './admesh.ts'
import { readWithSlicer } from './prusa-slicer.ts'

/** Controls for the readers themselves: a reader that finds no fault in a broken cube proves nothing about a sled. */
const admesh = findReader('admesh')
const slicer = findReader('prusa-slicer')

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'readers-'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const SIDE = 10
const quads = [
  [0, 3, 2, 1],
  [4, 5, 6, 7],
  [0, 1, 5, 4],
  [1, 2, 6, 5],
  [2, 3, 7, 6],
  [3, 0, 4, 7],
]
/** A cube of 10 mm from its twelve triangles; the corners are numbered around the bottom, then around the top. */
const cube = quads.flatMap(([a = 0, b = 0, c = 0, d = 0]) => [
  [a, b, c],
  [a, c, d],
])

function stl(triangles: number[][], name: string): string {
  const corner = (i: number) => [[0, 3, 4, 7].includes(i) ? 0 : SIDE, i % 4 < 2 ? 0 : SIDE, i < 4 ? 0 : SIDE].join(' ')
  const facet = (t: number[]) =>
    `facet normal 0 0 0\nouter loop\n${t.map((i) => `vertex ${corner(i)}`).join('\n')}\nendloop\nendfacet`
  const path = join(folder, name)
  writeFileSync(path, `solid cube\n${triangles.map(facet).join('\n')}\nendsolid cube\n`)
  return path
}

describe.skipIf(admesh === undefined)('admesh', () => {
  const read = (triangles: number[][]) => readWithAdmesh(admesh ?? '', stl(triangles, 'admesh.stl'))

  it('reads a sound cube without repair, with its volume', () => {
    const { volume, ...counts } = read(cube)
    expect(counts).toEqual({ facets: 12, disconnected: 0, parts: 1, degenerate: 0, repairs: 0 })
    expect(volume).toBeCloseTo(SIDE ** 3, 3)
  })
  it('finds the hole where a triangle is missing', () => {
    expect(read(cube.slice(1))).toMatchObject({ facets: 11, disconnected: 3 })
    expect(read(cube.slice(1)).repairs).toBeGreaterThan(0)
  })
  it('finds a triangle that is turned inside out', () => {
    expect(read(cube.map((t, i) => (i === 0 ? t.toReversed() : t))).repairs).toBeGreaterThan(0)
  })
})

describe.skipIf(slicer === undefined)('prusa-slicer', () => {
  const read = (triangles: number[][]) => readWithSlicer(slicer ?? '', stl(triangles, 'slicer.stl'))

  it('reads a sound cube as one closed object, with its volume and size', () => {
    const [object, ...others] = read(cube)
    expect(others).toEqual([])
    expect(object).toMatchObject({ manifold: true, facets: 12, parts: 1, openEdges: 0, size: [SIDE, SIDE, SIDE] })
    expect(object?.volume).toBeCloseTo(SIDE ** 3, 3)
  })
  it('finds the hole where a triangle is missing', () => {
    expect(read(cube.slice(1))).toMatchObject([{ manifold: false, openEdges: 3 }])
  })
})
