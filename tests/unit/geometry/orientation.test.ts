import { beforeAll, describe, expect, it } from 'vitest'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import type { Kernel } from '../../../geometry/kernel/manifold.ts'
import { boundsOf } from '../../../geometry/mesh/mesh.ts'
import { moved } from '../../../geometry/mesh/motion.ts'
import { footLimits, orientationOf, turnOf } from '../../../geometry/mesh/orientation.ts'
import { stanceOf } from '../../../geometry/mesh/stance.ts'
import { block, meshOf, rod } from './solids.ts'

let kernel: Kernel
beforeAll(async () => {
  kernel = await loadKernel()
})

const rearDown = [0, 0, -1] as const
const bladeDown = [0, 0, 1] as const

describe('how a body would stand', () => {
  it('a block: its whole face is its foot, nothing hangs over, and it falls where its centre passes the edge (computed)', () => {
    const s = stanceOf(meshOf(kernel, [block(5, 45, 12, 20)]), rearDown)
    expect(s.foot).toBeCloseTo(12 * 20, 3)
    expect(s.overhang).toBe(0)
    expect(s.tip).toBeCloseTo((Math.atan2(6, 20) * 180) / Math.PI, 3)
  })

  it('a head on a stem: the ring under the head hangs over, the other way up nothing does (computed)', () => {
    const m = meshOf(kernel, [rod(0, 20, 8), rod(20, 30, 14)])
    const facets = (r: number, n: number) => (n / 2) * r * r * Math.sin((2 * Math.PI) / n)
    expect(stanceOf(m, rearDown).overhang).toBeCloseTo(facets(14, 96) - facets(8, 96), 0)
    expect(stanceOf(m, rearDown).foot).toBeCloseTo(facets(8, 96), 0)
    expect(stanceOf(m, bladeDown)).toMatchObject({ overhang: 0, foot: expect.closeTo(facets(14, 96), 0) })
  })

  it('a slope of 45° does not hang over, a flatter one does', () => {
    const under = (run: number) =>
      stanceOf(meshOf(kernel, [rod(0, 10, 8, 8 + run), rod(10, 20, 18)]), rearDown).overhang
    expect(under(10)).toBe(0)
    expect(under(10.5)).toBeGreaterThan(500)
  })

  it('what has its centre of mass beside its foot does not stand', () => {
    const leaning = meshOf(kernel, [block(0, 5, 8, 8), block(5, 15, 40, 8, 20)])
    expect(stanceOf(leaning, rearDown).tip).toBeLessThan(0)
  })

  it('what touches the bed at an edge has no foot', () => {
    const s = stanceOf(meshOf(kernel, [rod(0, 40, 8)]), [Math.cos(0.01), Math.sin(0.01), 0])
    expect([s.foot, s.tip]).toEqual([0, -90])
  })
})

describe('which way up a body is printed', () => {
  it('a cup stands on its bottom, whichever end that is', () => {
    expect(orientationOf(meshOf(kernel, [rod(0, 30, 14)], [rod(4, 31, 12)]))).toMatchObject({
      down: 'rear',
      reason: 'less-overhang',
    })
    expect(orientationOf(meshOf(kernel, [rod(0, 30, 14)], [rod(-1, 26, 12)]))).toMatchObject({
      down: 'blade',
      reason: 'less-overhang',
    })
  })

  it('a plain disc stays as drawn', () => {
    expect(orientationOf(meshOf(kernel, [rod(0, 6, 14)]))).toMatchObject({ down: 'rear', reason: 'as-drawn' })
  })

  it('a piece of a split stands on the face of the split, where nothing speaks against it', () => {
    const piece = meshOf(kernel, [rod(0, 60, 14)])
    expect(orientationOf(piece, new Set(['blade']))).toMatchObject({ down: 'blade', reason: 'split-face' })
    expect(orientationOf(piece, new Set(['rear', 'blade']))).toMatchObject({ down: 'rear', reason: 'as-drawn' })
    const cup = meshOf(kernel, [rod(0, 60, 14)], [rod(4, 61, 12)])
    expect(orientationOf(cup, new Set(['blade']))).toMatchObject({ down: 'rear', reason: 'less-overhang' })
  })

  it('pins at the split face leave only the other end to stand on', () => {
    const pinned = meshOf(kernel, [rod(0, 60, 14), rod(59, 65, 1.5, 1.5, 8), rod(59, 65, 1.5, 1.5, -8)])
    const o = orientationOf(pinned, new Set(['blade']))
    expect(o).toMatchObject({ down: 'rear', reason: 'only-foot' })
    expect(o.ends.blade.foot).toBeLessThan(footLimits.area)
  })

  it('the wider foot wins where both ends are else alike', () => {
    const chamfered = meshOf(kernel, [rod(0, 4, 10, 14), rod(4, 60, 14)])
    expect(orientationOf(chamfered)).toMatchObject({ down: 'blade', reason: 'wider-foot' })
  })

  it('what tapers to a point at both ends is laid on its flat side', () => {
    const spindle = [rod(0, 30, 1, 14), rod(30, 60, 14, 1)]
    const flat = meshOf(kernel, spindle, [block(-1, 61, 40, 20, 0, -20)])
    const o = orientationOf(flat)
    expect(o).toMatchObject({ down: 270, reason: 'no-foot' })
    const down = boundsOf(moved(flat, turnOf(o)))
    expect(down.min[2]).toBeCloseTo(-10, 5)
    expect([down.min[0], down.max[0]]).toEqual([0, 60])
  })

  it('what is too slender to stand is laid down, on the side that lies flat', () => {
    const slender = meshOf(kernel, [block(0, 200, 8, 10)])
    const o = orientationOf(slender)
    expect(o.ends.rear.foot).toBeGreaterThan(footLimits.area)
    expect(o.reason).toBe('no-foot')
    // Its wider sides face θ = 0 and 180 (10 across y), or 90 and 270 (8 across x): one of the former.
    expect([0, 180]).toContain(o.down)
    expect(o.chosen.foot).toBeCloseTo(2000, 2)
  })

  it('a turn is a turn: volume and sizes are kept, and the chosen face is at the bottom', () => {
    const cup = meshOf(kernel, [rod(3, 30, 14)], [rod(2, 26, 12)])
    const o = orientationOf(cup)
    const turned = moved(cup, turnOf(o))
    expect(stanceOf(turned, rearDown)).toMatchObject({
      foot: expect.closeTo(o.chosen.foot, 3),
      overhang: expect.closeTo(o.chosen.overhang, 3),
    })
  })
})
