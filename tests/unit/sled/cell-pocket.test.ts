import { describe, expect, it } from 'vitest'
import type { SledInput } from '../../../src/project/schema/sled.ts'
import { findingOf } from '../checks/judged.ts'
import {
  board,
  builder,
  cell,
  dimensionOf,
  faultsOf,
  heightsOf,
  itemOf,
  itemsOf,
  job,
  leaf,
  nest,
  onlyFault,
  planned,
  roundArea,
  solidOf,
  spring,
} from './planned.ts'

const build = builder()
/** A plain cut across the middle of the pocket, so that the cell goes in. */
const halved = { id: 'half', z: 50, joint: 'plain' as const }
const pocketed = (typed: object, sled: Partial<SledInput> = {}, parts = [cell()]) =>
  job({ nests: [nest('cell', { gap: 0.2, ...typed })], ...sled }, { parts })

describe('a cell pocket', () => {
  it('is the largest cell with the gap around it, and half the axial gap of 0.4 at each end', () => {
    expect(solidOf(pocketed({}), 'parts/cell/pocket', 'cylinder')).toMatchObject({
      x: 0,
      y: 0,
      r0: 9.2,
      z0: 19.8,
      z1: 85.2,
    })
  })

  it('closed, takes exactly its own volume out of the body', () => {
    const { volume, problems } = build(pocketed({ openingWidth: 0 }, { chamfer: 0, splits: [halved] }))
    expect(problems).toEqual([])
    expect(volume).toBeCloseTo(roundArea(14) * 90 - roundArea(9.2, 'cut') * 65.4, 1)
  })

  it('reaches from the spring’s seat to the face the leaf stands on', () => {
    // Spring stands at 15 in a seat of half its solid length, 1.
    expect(solidOf(pocketed({}, {}, [cell(), spring(), leaf()]), 'parts/cell/pocket', 'cylinder')).toMatchObject({
      z0: 16,
      z1: 87,
    })
  })

  it.each([
    ['on the axis: to the back', {}, [cell()], 180],
    ['under a board: away from it', {}, [cell(), board({ at: { z: 40, facing: 30 } })], 210],
    ['off the axis: to its side', {}, [cell({ at: { z: 20, across: { r: 2, theta: 70 } } })], 70],
    ['typed', { opening: 45 }, [cell()], 45],
  ])('opens %s', (_what, typed, parts, facing) => {
    const mouth = solidOf(pocketed(typed, {}, parts), 'parts/cell/opening', 'box')
    expect(mouth.facing).toBeCloseTo(facing, 6)
    expect(mouth.width).toBeCloseTo(18.4, 9)
    // From the middle of the cell to beyond the outside, where it leaves no skin.
    expect(heightsOf(mouth)[1]).toBeCloseTo(15, 9)
  })

  it('opens as wide as typed', () => {
    expect(solidOf(pocketed({ openingWidth: 6 }), 'parts/cell/opening', 'box').width).toBe(6)
  })

  it('says of each dimension whether it is typed, default or derived, and where to type it', () => {
    const typed = itemOf(pocketed({ pocketRadius: 9.3, openingWidth: 6, opening: 90 }), 'parts/cell/pocket')
    expect(typed.dimensions.map((d) => [d.name, d.value, d.how, d.path])).toEqual([
      ['gap', 0.2, 'typed', 'sleds/main/nests/parts/cell/gap'],
      ['pocket radius', 9.3, 'typed', 'sleds/main/nests/parts/cell/pocketRadius'],
      ['opening width', 6, 'typed', 'sleds/main/nests/parts/cell/openingWidth'],
      ['opening', 90, 'typed', 'sleds/main/nests/parts/cell/opening'],
    ])
    const plain = itemOf(job({}, { parts: [cell()] }), 'parts/cell/pocket')
    expect(plain.dimensions.map((d) => d.how)).toEqual(['default', 'derived', 'default', 'default'])
    expect(dimensionOf(plain, 'gap').source).toContain('slide fit')
  })

  it('closed, still has the notch that was asked for', () => {
    const ids = itemsOf(planned(pocketed({ openingWidth: 0, notchWidth: 8 })).plan).map((x) => x.id)
    expect(ids).toContain('parts/cell/notch')
    expect(ids).not.toContain('parts/cell/opening')
  })
})

describe('a pocket that cannot be', () => {
  it('larger than the body: says the largest that leaves a wall at the back', () => {
    // Radius 14, wall 1.2.
    const fault = onlyFault(pocketed({ pocketRadius: 13 }))
    expect(fault).toMatchObject({ code: 'does-not-fit', path: 'sleds/main/nests/parts/cell/pocketRadius' })
    expect(fault.got).toContain('13.00')
    expect(fault.limit).toContain('12.80')
    expect(fault.hint).toContain('12.80')
    expect(faultsOf(pocketed({ pocketRadius: 12.8 }))).toEqual([])
  })

  it('around a cell larger than the body: the gap is where it follows from', () => {
    const wide = cell({ body: { shape: 'cylinder', diameter: 26, length: 65 } })
    expect(onlyFault(pocketed({}, {}, [wide])).path).toBe('sleds/main/nests/parts/cell/gap')
  })

  it('closed all round: nothing could be laid in', () => {
    const fault = onlyFault(pocketed({ openingWidth: 0 }))
    expect([fault.path, fault.got]).toEqual(['sleds/main/nests/parts/cell/openingWidth', '"0 mm, closed all round"'])
    expect(fault.hint).toContain('18.40')
    expect(faultsOf(pocketed({ openingWidth: 0 }, { splits: [halved] }))).toEqual([])
    expect(faultsOf(pocketed({ openingWidth: 0 }, { to: 85 }))).toEqual([])
  })

  it('closed, with a window: only one the whole part goes in by lets it in', () => {
    // The cell is 18 thick and lies from 20 to 85, on the axis.
    const behind = (typed: object) =>
      faultsOf(pocketed({ openingWidth: 0 }, { windows: [{ id: 'w', theta: 40, floor: 0, ...typed }] })).length
    const way = { width: 18, from: 20, to: 85 }
    expect(behind(way)).toBe(0)
    expect(behind({ ...way, width: 17.9 })).toBe(1)
    expect(behind({ ...way, from: 21 })).toBe(1)
    expect(behind({ ...way, floor: 1 })).toBe(1)
  })

  it('closed, off the axis: a slit in its side is no way in, half of it outside is', () => {
    // Radius of the sled 14, of the pocket 9.2, of the cell 9.
    const beside = (r: number) =>
      faultsOf(pocketed({ openingWidth: 0 }, {}, [cell({ at: { z: 20, across: { r, theta: 70 } } })])).filter((f) =>
        f.path.endsWith('openingWidth'),
      ).length
    expect(beside(4)).toBe(1)
    expect(beside(6)).toBe(1)
    // The circles cross 9 or more to both sides where the cell's middle is √(14² − 9²) − √(9.2² − 9²) = 8.82 out.
    expect(beside(8.7)).toBe(1)
    expect(beside(8.9)).toBe(0)
  })

  it('with a mouth wider than itself', () => {
    const fault = onlyFault(pocketed({ openingWidth: 25 }))
    expect([fault.path, fault.got]).toEqual(['sleds/main/nests/parts/cell/openingWidth', '"25 mm"'])
    expect(fault.hint).toContain('18.40')
    expect(faultsOf(pocketed({ openingWidth: 18.4 }))).toEqual([])
  })

  it('typed narrower than the cell: a clash, and the offered radius works', () => {
    const f = findingOf(pocketed({ pocketRadius: 8.9 }), 'nest-fit:parts/cell')
    expect(f.status).toBe('clash')
    expect(f.margin.worst).toBeCloseTo(-0.2, 9)
    const fix = f.fix.find((x) => x.path === 'sleds/main/nests/parts/cell/pocketRadius')
    expect(fix?.value).toBe(9)
    expect(findingOf(pocketed({ pocketRadius: 9 }), 'nest-fit:parts/cell').status).toBe('clear')
  })
})
