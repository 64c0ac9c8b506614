import { describe, expect, it } from 'vitest'
import { crossSectionView } from '../../../src/papers/cross-section.ts'
import type { Outline } from '../../../src/papers/outline.ts'
import { answerTo, demo, projectOf } from '../job/demo-answer.ts'
import { assemblyOf, lantern } from './lantern.ts'

const assembly = assemblyOf(lantern)
const radius = assembly.sleds[0]?.pieces[0]?.radius ?? 0
const gapOf = (view: ReturnType<typeof crossSectionView>, a: string, b: string) =>
  view.gaps.find((g) => g.ids.includes(a) && g.ids.includes(b))?.gap

describe('the cross-section', () => {
  const view = crossSectionView(assembly, 40)

  it('tells the gaps that a pocket calculator gives', () => {
    // The sled lies on the axis. The cell is pushed to 0.6 from its outside.
    expect(gapOf(view, 'sleds/sled', 'sections/tube/bore')).toBeCloseTo(33.2 / 2 - radius, 6)
    expect(gapOf(view, 'parts/cell', 'sections/tube/bore')).toBeCloseTo(33.2 / 2 - radius + 0.6, 6)
    expect(gapOf(view, 'parts/cell', 'parts/board')).toBeCloseTo(2.15, 6)
  })

  it('marks one gap as the tightest: the one with least over its limit', () => {
    expect(view.gaps.filter((g) => g.tightest)).toHaveLength(1)
    const over = view.gaps.map((g) => g.gap - g.limit)
    expect(over[view.gaps.findIndex((g) => g.tightest)]).toBe(Math.min(...over))
  })

  it('ends every gap on the two things it lies between', () => {
    for (const g of view.gaps) expect(Math.hypot(g.p.x - g.q.x, g.p.y - g.q.y)).toBeCloseTo(Math.abs(g.gap), 6)
  })

  it('has closed outlines for all there is', () => {
    const all: Outline[] = [
      ...view.free,
      ...view.contents.flatMap((c) => c.outlines),
      ...view.sleds.flatMap((s) => s.bodies.flat().flatMap((l) => [...l.adds, ...l.cuts])),
    ]
    expect(all.length).toBeGreaterThan(5)
    expect(all.filter((o) => !o.closed)).toEqual([])
  })

  it('shows at the mouth what passes there, and by how much it is too wide', () => {
    const narrow = assemblyOf({
      ...lantern,
      thread: 'M30x1.5',
      speaker: { diameter: '20', length: '4' },
      bore: '36',
      sledDiameter: '34',
    })
    const mouth = crossSectionView(narrow, 0.5)
    expect(mouth.sleds.flatMap((s) => s.bodies)).toEqual([])
    expect(mouth.passing.length).toBeGreaterThan(0)
    const tightest = mouth.gaps.find((g) => g.tightest)
    expect(tightest).toMatchObject({ passing: true, ids: expect.arrayContaining(['sections/tube/mouth']) })
    expect(tightest?.gap).toBeLessThan(0)
  })

  it('asks of what passes only what is there by then: not the pommel that is screwed on last', () => {
    const weir = answerTo(projectOf(demo('weir-lantern'))).assembly
    // At the end of the pommel's spigot, which stands inside the mouth thread once it is screwed on.
    const view = crossSectionView(weir, 40)
    expect(view.bore).toBe('hollow of the pommel')
    expect(view.passing.length).toBeGreaterThan(0)
    const walls = view.gaps.filter((g) => g.passing).flatMap((g) => g.ids.filter((id) => id.startsWith('sections/')))
    expect(walls.length).toBeGreaterThan(0)
    expect([...new Set(walls)]).toEqual(['sections/body/mouth'])
  })

  it('shows the ring of a sled that does not pass the mouth, and by how much, though it stands far beyond at the end', () => {
    const { assembly: weir, findings } = answerTo(projectOf(demo('weir-lantern')))
    const clash = findings.find((f) => f.status === 'clash')
    const tightest = crossSectionView(weir, clash?.at?.z ?? 0).gaps.find((g) => g.tightest)
    expect(tightest).toMatchObject({ passing: true, ids: ['sleds/main', 'sections/body/mouth'] })
    expect(tightest?.gap).toBeCloseTo((clash?.margin.nominal ?? 0) + 0.15, 2)
  })

  it('shows solid metal as solid, and nothing where the hilt is not', () => {
    expect(crossSectionView(assembly, 150)).toMatchObject({ metal: true, free: [], gaps: [] })
    expect(crossSectionView(assembly, 400)).toMatchObject({ metal: false, free: [], contents: [] })
  })

  it.each([0, 1, 3, 9, 12.5, 20, 61.7, 86.7, 148])('can be drawn at the faces where things meet: z %d', (z) => {
    const at = crossSectionView(assembly, z)
    for (const g of at.gaps) expect(Number.isFinite(g.gap)).toBe(true)
    expect(at.free.every((o) => o.closed)).toBe(true)
  })
})
