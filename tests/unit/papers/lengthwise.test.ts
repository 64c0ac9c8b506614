import { describe, expect, it } from 'vitest'
import { lengthwiseView, type SectionedPart } from '../../../src/papers/lengthwise.ts'
import type { Point2 } from '../../../src/papers/thread-profile.ts'
import { assemblyOf, lantern } from './lantern.ts'

const assembly = assemblyOf(lantern)
const view = lengthwiseView(assembly, 0)

const part = (id: string, of = view): SectionedPart => of.contents.find((c) => c.id === id) as SectionedPart
const heights = (points: readonly Point2[]) => points.map(([, v]) => v)
const box = (shapes: readonly (readonly Point2[])[]) => {
  const points = shapes.flat()
  const [zs, vs] = [points.map(([z]) => z), heights(points)]
  return { z0: Math.min(...zs), z1: Math.max(...zs), v0: Math.min(...vs), v1: Math.max(...vs) }
}

describe('the lengthwise section', () => {
  it('shows the bores with their widths: the thread by its crests', () => {
    expect(view.bores.map(({ id, z0, z1, d0 }) => [id, z0, z1, Number(d0.toFixed(2))])).toEqual([
      ['sections/tube/mouth', 0, 9, 33.38],
      ['sections/tube/bore', 9, 148, 33.2],
    ])
  })

  it('keeps all metal outside the free bore, and breaks solid ends off', () => {
    for (const { ring, section } of view.metal) {
      const least = section === 'tube' ? 33.2 / 2 : 0
      expect(Math.min(...heights(ring).map(Math.abs))).toBeCloseTo(least, 6)
    }
    expect(view.z1).toBe(148 + 5)
    expect(view.metal.filter((m) => m.section === 'end').every((m) => m.broken.length === 2)).toBe(true)
  })

  it('shows what does not fit to its end, and the metal it would lie in', () => {
    const short = lengthwiseView(assemblyOf({ ...lantern, depth: '60' }), 0)
    const sled = short.sleds[0]
    expect(sled?.z1).toBeGreaterThan(60)
    expect(short.z1).toBeCloseTo((sled?.z1 ?? 0) + 5, 6)
    const end = short.metal.find((m) => m.section === 'end')
    expect(Math.max(...(end?.ring ?? []).map(([z]) => z))).toBe(short.z1)
  })

  it('draws an outside that nobody measured as broken off, a measured one as an edge', () => {
    const tube = view.metal.find((m) => m.section === 'tube')
    expect(tube?.broken).toHaveLength(1)
    const sections = assembly.sections.map((s) =>
      s.id === 'tube' ? { ...s, outside: [{ z0: s.ends.rear, z1: s.ends.blade, d0: known(38), d1: known(38) }] } : s,
    )
    const measured = lengthwiseView({ ...assembly, sections }, 0).metal.find((m) => m.section === 'tube')
    expect(measured?.broken).toEqual([])
    expect(Math.max(...heights(measured?.ring ?? []))).toBe(19)
  })

  it('has the board above the cell at θ 0°, and below it seen from the other side', () => {
    expect(box(part('parts/board').cut).v0).toBeGreaterThan(box(part('parts/cell').cut).v1)
    const other = lengthwiseView(assembly, 180)
    expect(box(part('parts/board', other).cut).v1).toBeLessThan(box(part('parts/cell', other).cut).v0)
  })

  it('cuts the cell at its full diameter and length', () => {
    const { z0, z1, v0, v1 } = box(part('parts/cell').cut)
    expect([z1 - z0, v1 - v0]).toEqual([expect.closeTo(65, 6), expect.closeTo(18.4, 6)])
  })

  it('shows beside the plane what the plane misses', () => {
    const side = lengthwiseView(assembly, 90)
    expect(part('parts/board', side).cut).toEqual([])
    const { v0, v1 } = box(part('parts/board', side).seen)
    expect(v1 - v0).toBeCloseTo(18, 6)
  })

  it.each([0, 35, 90, 145, 300])('leaves no sled material where a part lies, cut at %i°', (theta) => {
    const cut = lengthwiseView(assembly, theta)
    const fills = cut.sleds.flatMap((s) => s.fills.map((f) => box([f])))
    expect(fills.length).toBeGreaterThan(0)
    for (const p of cut.contents)
      for (const quad of p.cut) {
        const b = box([quad])
        const over = fills.filter(
          (f) =>
            Math.min(f.z1, b.z1) - Math.max(f.z0, b.z0) > 1e-3 && Math.min(f.v1, b.v1) - Math.max(f.v0, b.v0) > 1e-3,
        )
        expect([p.id, over]).toEqual([p.id, []])
      }
  })

  it('keeps the sled inside its own radius and length', () => {
    for (const s of view.sleds) {
      const { z0, z1, v0, v1 } = box(s.fills)
      expect([z0, z1]).toEqual([s.z0, s.z1])
      expect(Math.max(-v0, v1)).toBeCloseTo(s.radius, 6)
    }
  })

  it('is the same for the same assembly', () => {
    expect(lengthwiseView(assembly, 0)).toEqual(view)
  })
})

const known = (nominal: number) => ({ nominal, terms: [] })
