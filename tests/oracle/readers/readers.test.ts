import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { strToU8, zipSync } from 'fflate'
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

const x = (i: number) => ([0, 3, 4, 7].includes(i) ? 0 : SIDE)
const y = (i: number) => (i % 4 < 2 ? 0 : SIDE)
const z = (i: number) => (i < 4 ? 0 : SIDE)

function stl(triangles: number[][], name: string): string {
  const corner = (i: number) => [x(i), y(i), z(i)].join(' ')
  const facet = (t: number[]) =>
    `facet normal 0 0 0\nouter loop\n${t.map((i) => `vertex ${corner(i)}`).join('\n')}\nendloop\nendfacet`
  const path = join(folder, name)
  writeFileSync(path, `solid cube\n${triangles.map(facet).join('\n')}\nendsolid cube\n`)
  return path
}

/** The same triangles as 3MF, corners shared or each triangle with its own. */
function threeMf(triangles: number[][], shared: boolean, name: string): string {
  const corners = shared ? Array.from({ length: 8 }, (_, i) => i) : triangles.flat()
  const model = `<?xml version="1.0" encoding="UTF-8"?>
<model unit="millimeter" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02"><resources>
<object id="1" type="model"><mesh><vertices>
${corners.map((i) => `<vertex x="${x(i)}" y="${y(i)}" z="${z(i)}"/>`).join('\n')}
</vertices><triangles>
${triangles.map((t, i) => `<triangle ${[0, 1, 2].map((k) => `v${k + 1}="${shared ? t[k] : 3 * i + k}"`).join(' ')}/>`).join('\n')}
</triangles></mesh></object></resources><build><item objectid="1"/></build></model>`
  const types = `<?xml version="1.0" encoding="UTF-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
<Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>`
  const rels = `<?xml version="1.0" encoding="UTF-8"?>
<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship
Target="/3D/3dmodel.model" Id="r" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>`
  const path = join(folder, name)
  const parts = { '[Content_Types].xml': types, '_rels/.rels': rels, '3D/3dmodel.model': model }
  writeFileSync(path, zipSync(Object.fromEntries(Object.entries(parts).map(([part, text]) => [part, strToU8(text)]))))
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

  const read3mf = (triangles: number[][], shared: boolean) =>
    readWithSlicer(slicer ?? '', threeMf(triangles, shared, 'slicer.3mf'))

  it('reads the cube as 3MF, too', () => {
    expect(read3mf(cube, true)).toMatchObject([{ manifold: true, facets: 12, parts: 1, openEdges: 0 }])
    expect(read3mf(cube, true)[0]?.volume).toBeCloseTo(SIDE ** 3, 3)
  })
  it('finds the hole in a 3MF', () => {
    expect(read3mf(cube.slice(1), true)).toMatchObject([{ manifold: false, openEdges: 3 }])
  })
  it('finds triangles of a 3MF that share no corners', () => {
    expect(read3mf(cube, false)).toMatchObject([{ manifold: false, parts: 12 }])
  })
})
