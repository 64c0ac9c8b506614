import { describe, expect, it } from 'vitest'
import { sure } from '../checks/judged.ts'
import {
  board,
  builder,
  dimensionOf,
  faultsOf,
  heightsOf,
  itemOf,
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
const shelf = (typed: object = {}, part: object = {}) =>
  job({ nests: [nest('board', { gap: 0.2, ...typed })] }, { parts: [board(part)] })
const path = (field: string) => `sleds/main/nests/parts/board/${field}`
const ids = (project: ReturnType<typeof job>) => itemsOf(planned(project).plan).map((x) => x.id)

/** A board 16 × 1.6 × 30 facing θ 0, with one thing of 4 × 5 × 2 under it. */
const outlined = {
  body: {
    shape: 'outline',
    outline: [
      [0, -8],
      [30, -8],
      [30, 8],
      [0, 8],
    ],
    thickness: sure(1.6),
    components: [{ z: sure(10), x: sure(2), length: sure(5), width: sure(4), height: sure(2), side: 'bottom' }],
  },
}

describe('a board shelf', () => {
  it('is as wide as the board with both gaps, from its underside to beyond the outside', () => {
    const cut = solidOf(shelf(), 'parts/board/shelf', 'box')
    expect([cut.width, cut.z0, cut.z1, cut.facing]).toEqual([expect.closeTo(16.4, 9), 39.8, 70.2, 0])
    expect(heightsOf(cut)).toEqual([expect.closeTo(-2.2, 9), expect.closeTo(15, 9)])
  })

  it('turns and moves with its board', () => {
    const cut = solidOf(shelf({}, { at: { z: 40, across: { r: 3, theta: 90 } } }), 'parts/board/shelf', 'box')
    expect(cut.facing).toBe(90)
    expect(heightsOf(cut)[0]).toBeCloseTo(3 - 2.2, 9)
  })

  it('gives what stands on the underside room of its own, with the gap around it', () => {
    const at = probe(shelf({}, outlined))
    const room = solidOf(shelf({}, outlined), 'parts/board/keep-out-1', 'box')
    expect([room.width, room.z0, room.z1]).toEqual([expect.closeTo(4.4, 9), 49.8, 55.2])
    const plate = heightsOf(solidOf(shelf({}, outlined), 'parts/board/shelf', 'box'))[0]
    expect(heightsOf(room)[0]).toBeCloseTo(plate - 2, 9)
    // Under the component there is air, beside it the floor carries the board.
    const [x, y] = [plate - 1, room.y]
    expect([at(x, y, 52), at(x, y + 5, 52), at(x, y, 60)]).toEqual([false, true, true])
    expect(at(x, -y, 52)).toBe(true)
  })

  it('lies on the whole floor, or on typed rails with room between them', () => {
    const plain = dimensionOf(itemOf(shelf(), 'parts/board/shelf'), 'rail')
    expect(plain).toMatchObject({ how: 'default', value: expect.closeTo(8.2, 9) })
    const railed = shelf({ rail: 2, relief: 1.5 })
    const room = solidOf(railed, 'parts/board/relief', 'box')
    expect(room.width).toBeCloseTo(16.4 - 4, 9)
    expect(heightsOf(room)[0]).toBeCloseTo(-2.2 - 1.5, 9)
    const at = probe(railed)
    expect([at(-2.9, 0, 55), at(-2.9, 7.2, 55), at(-2.9, -7.2, 55), at(-4.2, 0, 55)]).toEqual([false, true, true, true])
    const { dimensions } = itemOf(railed, 'parts/board/relief')
    expect(dimensions.filter((d) => /rail|relief/.test(d.name)).map((d) => d.how)).toEqual(['typed', 'typed'])
    expect(ids(shelf())).not.toContain('parts/board/relief')
  })

  it('is snapped under four lips where one is typed, as thick as the least wall', () => {
    const lipped = shelf({ lip: 0.5, lipLength: 5 }, { at: { z: 40, across: { r: 0.5, theta: 0 } } })
    const own = itemsOf(planned(lipped).plan).filter((x) => x.nest === 'board lip')
    expect(own.map((x) => [x.op, x.stage])).toEqual(Array.from({ length: 4 }, () => ['add', 2]))
    const lip = solidOf(lipped, 'parts/board/lip-2b', 'box')
    expect([lip.z0, lip.z1]).toEqual([expect.closeTo(65.2, 9), expect.closeTo(70.2, 9)])
    // Over the board's top of 0.5 + 2 and the gap.
    expect(heightsOf(lip)).toEqual([expect.closeTo(2.7, 9), expect.closeTo(3.9, 9)])
    // Reaches 0.5 in from the shelf's side at 8.2.
    expect(lip.y - lip.width / 2).toBeCloseTo(7.7, 9)
    expect(build(lipped).problems).toEqual([])
  })

  it('has a notch at the blade end to lift the board by, where one is typed', () => {
    const notched = shelf({ liftNotch: 8, liftLength: 4 })
    const notch = solidOf(notched, 'parts/board/lift-notch', 'box')
    expect([notch.width, notch.z0, notch.z1]).toEqual([8, expect.closeTo(70.15, 9), expect.closeTo(74.2, 9)])
    expect(heightsOf(notch)[0]).toBeCloseTo(-3.2, 9)
    expect(ids(shelf())).not.toContain('parts/board/lift-notch')
    expect(solidOf(shelf({ liftNotch: 8 }), 'parts/board/lift-notch', 'box').z1).toBeCloseTo(73.2, 9)
  })
})

describe('a shelf that cannot be', () => {
  it.each([
    ['a lip no board snaps past', { lip: 2 }, 'lip', '2 mm', 'at most 1.50', '0.4 to 0.6'],
    ['lips longer than half the board', { lip: 0.5, lipLength: 20 }, 'lipLength', '20 mm', '1 to 15.20', '15.20'],
    [
      'a lip thinner than a wall',
      { lip: 0.5, lipHeight: 0.4 },
      'lipHeight',
      '0.4 mm',
      'at least the least wall, 1.2',
      '1.2',
    ],
    ['a notch wider than the shelf', { liftNotch: 30 }, 'liftNotch', '30 mm', '16.40', '16.40'],
    ['rails that meet', { rail: 9 }, 'rail', '9 mm', '0.45 to 7.70', '7.70'],
    ['rails of nothing', { rail: 0 }, 'rail', '0 mm', '0.45 to 7.70', '0.45'],
  ])('%s', (_what, typed, field, got, limit, nearest) => {
    const fault = onlyFault(shelf(typed))
    expect(fault.path).toBe(path(field))
    expect(fault.got).toContain(got)
    expect(fault.limit).toContain(limit)
    expect(fault.hint).toContain(nearest)
  })

  it('the limits themselves work', () => {
    expect(faultsOf(shelf({ lip: 1.5, lipLength: 15.2, lipHeight: 1.2, liftNotch: 16.4, rail: 7.7 }))).toEqual([])
    expect(faultsOf(shelf({ rail: 0.45 }))).toEqual([])
  })
})
