import { describe, expect, it } from 'vitest'
import { crossSectionView } from '../../../src/papers/cross-section.ts'
import { insertionWays } from '../../../src/papers/insertion-way.ts'
import { pushedCut } from '../../../src/papers/pushed-cross.ts'
import { answerTo, demo } from '../job/demo-answer.ts'

const weir = answerTo(demo('weir-lantern')).assembly
const way = insertionWays(weir).find((w) => w.moves === 'sleds/main')
if (!way) throw new Error('no way')

const at = (z: number, depth: number) => {
  const cut = pushedCut(weir, z, way, depth)
  return { ...cut, view: crossSectionView(weir, z, cut.state, cut.way) }
}

describe('the cross-section while something is pushed in', () => {
  it('cuts the sled where it passes the height, and the bore where it stands', () => {
    // 60 mm before its place the sled has at z 40 what lies at z 100 in the end.
    const [out, placed] = [at(40, way.to - 60).view, at(100, way.to).view]
    expect(out.sleds).toEqual(placed.sleds)
    expect(out.contents.map((c) => c.outlines)).toEqual(placed.contents.map((c) => c.outlines))
    expect([out.bore, placed.bore]).toEqual(['mouth thread', 'main bore'])
  })

  it('tells the overlap at the thread that stops it, as its touch does', () => {
    const [touch] = way.touches
    const gap = at(touch?.at.z ?? 0, (touch?.depth ?? 0) + 4).view.gaps.find((g) => g.tightest)
    expect(gap).toMatchObject({ ids: ['sleds/main', 'sections/body/mouth'], passing: false })
    expect(gap?.gap).toBeCloseTo(-(touch?.overlap ?? 0), 2)
  })

  it('leaves out what is not there yet, metal too, and shows nothing that passes', () => {
    expect(way.absent).toEqual(expect.arrayContaining(['sections/pommel', 'parts/switch']))
    expect(at(20, way.to).view).toMatchObject({ metal: false, outside: undefined, passing: [] })
    expect(at(177, way.to).view.contents.map((c) => c.id)).not.toContain('parts/switch')
    expect(crossSectionView(weir, 177).contents.map((c) => c.id)).toContain('parts/switch')
  })

  it('cuts a tube that is drawn over a sled where the tube has got to, and the sled where it stands', () => {
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
    // 50 mm before its place: the mouth thread, in the end at z 36 to 46, is passed at 86 to 96.
    const cut = pushedCut(assembly, 90, tube, tube.to - 50)
    const view = crossSectionView(assembly, 90, cut.state, cut.way)
    expect(view.bore).toBe('mouth thread')
    expect(view.sleds).toEqual(crossSectionView(assembly, 90).sleds)
    const bare = pushedCut(assembly, 60, tube, tube.to - 50)
    expect(crossSectionView(assembly, 60, bare.state, bare.way).metal).toBe(false)
  })

  it('says which way and how far, and how far outside it begins', () => {
    const { pushed } = at(40, 90)
    expect(pushed).toMatchObject({ way: way.id, depth: 90, name: 'sled into the body' })
    expect(pushed.begins).toBeCloseTo(way.from - way.to, 9)
  })
})
