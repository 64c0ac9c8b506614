import { describe, expect, it } from 'vitest'
import type { SledInput } from '../../../src/project/schema/sled.ts'
import {
  builder,
  cell,
  dimensionOf,
  faultsOf,
  heightsOf,
  itemsOf,
  job,
  nest,
  onlyFault,
  planned,
  prober,
  solidOf,
} from './planned.ts'

const build = builder()
const probe = prober()

const cradled = (typed: object = {}, sled: Partial<SledInput> = {}, parts = [cell()]) =>
  job(
    {
      construction: 'open-cradle',
      nests: [nest('cell', { style: 'cradle', gap: 0.2, opening: 0, ...typed })],
      ...sled,
    },
    { parts },
  )
const path = (field: string) => `sleds/main/nests/parts/cell/${field}`

describe('a cell cradle', () => {
  it('has pairs of arms spread over the pocket, from their root to past the equator', () => {
    // Pocket 19.8 to 85.2: quarters at 36.15 and 68.85; arms 10 long.
    const arm = solidOf(cradled(), 'parts/cell/arm-1b', 'ring-sector')
    expect([arm.z0, arm.z1]).toEqual([expect.closeTo(31.15, 9), expect.closeTo(41.15, 9)])
    expect([arm.rIn, arm.rOut]).toEqual([9.2, expect.closeTo(11, 9)])
    // From the back (θ 180): root 60 less 8 in the body, to 90 + 20.
    expect([arm.theta, arm.half]).toEqual([180 + 81, 29])
    expect(solidOf(cradled(), 'parts/cell/arm-2a', 'ring-sector')).toMatchObject({ theta: 180 - 81, half: 29 })
  })

  it('takes the body away above the plane of the roots', () => {
    // −(9.2 + 0.9) · cos 60°
    expect(heightsOf(solidOf(cradled(), 'parts/cell/bay', 'box'))[0]).toBeCloseTo(-5.05, 9)
  })

  it('is material in its arms, and air in the mouth and between the pairs', () => {
    const at = probe(cradled())
    const polar = (r: number, theta: number, z: number) =>
      at(r * Math.cos((theta * Math.PI) / 180), r * Math.sin((theta * Math.PI) / 180), z)
    expect(polar(10.1, 75, 36)).toBe(true)
    expect(polar(10.1, -75, 36)).toBe(true)
    // Past 90 + 20 from the back is the mouth: θ below 70.
    expect(polar(10.1, 60, 36)).toBe(false)
    expect(polar(10.1, 75, 52)).toBe(false)
    expect(polar(11.5, 180, 52)).toBe(true)
    expect(polar(0, 0, 52)).toBe(false)
  })

  it('passes its gate in one piece', () => {
    expect(build(cradled()).problems).toEqual([])
  })

  it('every dimension of it can be typed, and says so', () => {
    const typed = { pocketRadius: 9.4, arm: 2, wrap: 15, armRoot: 50, armLength: 8, arms: 3 }
    const items = itemsOf(planned(cradled(typed)).plan).filter((x) => x.nest === 'cradle arm' && x.op === 'add')
    expect(items).toHaveLength(6)
    for (const x of items) expect(x.dimensions.every((d) => d.how === 'typed')).toBe(true)
    const arm = solidOf(cradled(typed), 'parts/cell/arm-3b', 'ring-sector')
    expect([arm.rIn, arm.rOut - arm.rIn, arm.z1 - arm.z0]).toEqual([9.4, expect.closeTo(2, 9), expect.closeTo(8, 9)])
    expect([arm.theta - arm.half, arm.theta + arm.half]).toEqual([180 + 50 - 8, 180 + 90 + 15])
    const [plain] = itemsOf(planned(cradled()).plan).filter((x) => x.nest === 'cradle arm')
    expect(plain && dimensionOf(plain, 'arm thickness').how).toBe('default')
  })

  describe('whose arms stand out of the body', () => {
    const off = cell({ at: { z: 20, across: { r: 4, theta: 0 } } })

    it('has them trimmed to it', () => {
      const { bounds, problems } = build(cradled({}, {}, [off]))
      expect(problems).toEqual([])
      expect(Math.max(...[0, 1].map((i) => bounds[0]?.max[i] as number))).toBeLessThanOrEqual(14.001)
    })

    it('keeps a key that stands beside them', () => {
      const key = { id: 'k', theta: 180, width: 4, height: 1 }
      const at = probe(cradled({}, { keys: [key] }, [off]))
      expect([at(-14.6, 0, 36), at(-14.6, 0, 52)]).toEqual([true, true])
    })
  })
})

describe('a cradle that cannot be', () => {
  it.each([
    ['an arm thinner than the bead', { arm: 0.3 }, 'arm', '0.3 mm', 'one bead, 0.45', '0.45'],
    ['a wrap that closes', { wrap: 75 }, 'wrap', '75°', 'at most 60°', '60'],
    ['arms rooted at the back', { armRoot: 10 }, 'armRoot', '10°', '20° to 85°', '60'],
    ['arms rooted past the equator', { armRoot: 89 }, 'armRoot', '89°', '20° to 85°', '60'],
    ['arms longer than there is room', { armLength: 40 }, 'armLength', '40 mm', '32.7 mm for 2 pairs', '32.7'],
    ['more arms than there is room', { arms: 12 }, 'armLength', '10 mm', '5.5 mm for 12 pairs', '5.5'],
    ['arms of no length', { armLength: 0 }, 'armLength', '0 mm', '0.45 to', '0.5'],
  ])('%s', (_what, typed, field, got, limit, nearest) => {
    const fault = onlyFault(cradled(typed))
    expect(fault.path).toBe(path(field))
    expect(fault.got).toContain(got)
    expect(fault.limit).toContain(limit)
    expect(fault.hint).toContain(nearest)
    expect(build(cradled(typed)).problems.map((p) => p.path)).toContain(path(field))
  })

  it('the limits themselves work', () => {
    expect(faultsOf(cradled({ arm: 0.45, wrap: 60, armRoot: 85, armLength: 32.7 }))).toEqual([])
    expect(faultsOf(cradled({ wrap: 0, armRoot: 20, armLength: 0.45 }))).toEqual([])
  })
})
