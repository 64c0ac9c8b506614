import { describe, expect, it } from 'vitest'
import { insertionWays } from '../../../src/papers/insertion-way.ts'
import { type LengthwiseView, lengthwiseView } from '../../../src/papers/lengthwise.ts'
import { pushedSection, wayRoom } from '../../../src/papers/pushed-section.ts'
import { carriedBy } from '../../../src/papers/rides.ts'
import { answerTo, demo } from '../job/demo-answer.ts'

const weir = answerTo(demo('weir-lantern')).assembly
const view = lengthwiseView(weir, 0)
const way = insertionWays(weir).find((w) => w.moves === 'sleds/main')
if (!way) throw new Error('no way')

const rear = (v: LengthwiseView, id: string) =>
  Math.min(...(v.contents.find((c) => c.id === id)?.seen ?? []).flat().map(([z]) => z))

describe('the section while something is pushed in', () => {
  it('is the section in its place at the end of the way, less what is not there yet', () => {
    const end = pushedSection(view, way, way.to)
    expect(end.sleds).toEqual(view.sleds)
    expect(way.absent).toContain('parts/switch')
    expect(end.contents.map((c) => c.id)).toEqual(
      view.contents.map((c) => c.id).filter((id) => !way.absent.includes(id)),
    )
  })

  it('moves the sled and all it carries by what it still has to go, and nothing else', () => {
    const out = pushedSection(view, way, way.to - 60)
    const [sled, placed] = [out.sleds[0], view.sleds[0]]
    expect(sled?.z1).toBeCloseTo((placed?.z1 ?? 0) - 60, 9)
    expect(sled?.fills[0]?.[0]?.[0]).toBeCloseTo((placed?.fills[0]?.[0]?.[0] ?? 0) - 60, 9)
    expect(rear(out, 'parts/cell')).toBeCloseTo(rear(view, 'parts/cell') - 60, 9)
    const metal = view.metal.filter((m) => !way.absent.includes(`sections/${m.section}`))
    expect(out.metal).toEqual(metal)
    expect(out.bores.every((b) => view.bores.some((o) => o.id === b.id && o.z0 === b.z0))).toBe(true)
  })

  it('has room for the unit where its way begins, outside the mouth', () => {
    const { z0, z1 } = wayRoom(view, way)
    const long = (view.sleds[0]?.z1 ?? 0) - (view.sleds[0]?.z0 ?? 0)
    expect(z0).toBeLessThan(way.from - long + 0.1)
    expect(z1).toBe(view.z1)
  })

  it('draws a tube over a unit that stands still', () => {
    const through = { of: 'sections/pommel', end: 'blade' } as const
    const { assembly } = answerTo({
      ...demo('weir-lantern'),
      insertions: [
        { id: 'in', moves: 'sleds/main', through },
        { id: 'over', moves: 'sections/body', through },
      ],
    })
    const tube = insertionWays(assembly).find((w) => w.moves === 'sections/body')
    if (!tube) throw new Error('no way')
    const still = lengthwiseView(assembly, 0)
    const out = pushedSection(still, tube, tube.to - 50)
    expect(out.sleds).toEqual(still.sleds)
    const of = (v: LengthwiseView) => v.sections.find((s) => s.id === 'sections/body')
    expect((of(out)?.z0 ?? 0) - (of(still)?.z0 ?? 0)).toBeCloseTo(50, 9)
    expect(out.bores.find((b) => b.id === 'sections/body/main')?.z0).toBeCloseTo(45.9 + 50, 6)
  })

  it('carries with a sled its parts, not the switch that comes through the wall', () => {
    const carried = carriedBy(weir, 'sleds/main')
    expect(carried[0]).toBe('sleds/main')
    expect(carried).toContain('parts/cell')
    expect(carried).not.toContain('parts/switch')
  })
})
