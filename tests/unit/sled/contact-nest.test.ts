import { describe, expect, it } from 'vitest'
import { sure } from '../checks/judged.ts'
import { assemblyOf, problemsOf } from '../resolve/project-of.ts'
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
  solidOf,
  spring,
} from './planned.ts'

const build = builder()
const pair = (springNest: object = {}, leafNest: object = {}, parts = [cell(), spring(), leaf()]) =>
  job({ nests: [nest('spring', { gap: 0.2, ...springNest }), nest('leaf', { gap: 0.2, ...leafNest })] }, { parts })

describe('a spring’s seat', () => {
  it('holds the largest spring with the gap, half of its solid length deep', () => {
    const seat = solidOf(pair(), 'parts/spring/seat', 'cylinder')
    expect([seat.r0, seat.z0, seat.z1]).toEqual([4.2, 15, expect.closeTo(16.05, 9)])
    expect(dimensionOf(itemOf(pair(), 'parts/spring/seat'), 'seat depth')).toMatchObject({ value: 1, how: 'default' })
  })

  it('is 1.2 deep at most by default', () => {
    const seat = solidOf(pair({}, {}, [cell(), spring({ solid: 4 }), leaf()]), 'parts/spring/seat', 'cylinder')
    expect(seat.z1).toBeCloseTo(16.25, 9)
  })

  it('typed, moves the end of the cell’s pocket with it', () => {
    const typed = pair({ seat: 0.6 })
    expect(dimensionOf(itemOf(typed, 'parts/spring/seat'), 'seat depth')).toMatchObject({ value: 0.6, how: 'typed' })
    expect(solidOf(typed, 'parts/cell/pocket', 'cylinder').z0).toBeCloseTo(15.6, 9)
  })

  it('of no depth is no seat: the spring stands on the pocket’s end', () => {
    const flat = pair({ seat: 0 })
    expect(itemsOf(planned(flat).plan).map((x) => x.id)).not.toContain('parts/spring/seat')
    expect(solidOf(flat, 'parts/cell/pocket', 'cylinder').z0).toBe(15)
  })

  it('deeper than the spring pressed solid cannot be: the cell would never reach it', () => {
    const fault = onlyFault(pair({ seat: 2.5 }))
    expect(fault).toMatchObject({ path: 'sleds/main/nests/parts/spring/seat', got: '"2.5 mm"' })
    expect(fault.limit).toContain('2 mm')
    expect(fault.hint).toContain('1.80')
    expect(faultsOf(pair({ seat: 1.8 }))).toEqual([])
  })
})

describe('a leaf’s slot', () => {
  it.each([
    ['where the nest of its cell opens', [cell(), leaf()], { opening: 70 }, 70],
    ['away from a board', [cell(), leaf(), board({ at: { z: sure(40), facing: 60 } })], {}, 240],
    [
      'where its cell lies nearest to the outside',
      [cell({ at: { z: 20, across: { r: 3, theta: 90 } } }), leaf()],
      {},
      90,
    ],
  ])('opens %s, and the leaf lies as it does', (_where, parts, typed, angle) => {
    const project = job({ nests: [nest('cell', typed)] }, { parts })
    const body = assemblyOf(project).parts.find((p) => p.kind === 'contact')?.bodies[0]
    expect(body?.shape).toMatchObject({ kind: 'box', facing: angle })
    expect(solidOf(project, 'parts/leaf/slot', 'box').facing).toBe(angle)
  })

  it('decides how the leaf faces, which is not to be typed', () => {
    const at = (facing: object) => problemsOf(job({}, { parts: [cell(), leaf({ at: { z: sure(87), ...facing } })] }))
    expect(at({ facing: 90 }).map((p) => p.path)).toEqual(['parts/leaf/at/facing'])
    expect(at({})).toEqual([])
  })

  it('lies in the wall behind the leaf, as thick as leaf and play, open to the side the cell goes in by', () => {
    const slot = solidOf(pair(), 'parts/leaf/slot', 'box')
    expect([slot.z0, slot.z1]).toEqual([expect.closeTo(86.95, 9), expect.closeTo(87.7, 9)])
    expect(slot.width).toBeCloseTo(8.4, 9)
    expect(slot.facing).toBe(180)
    // From under the leaf (half of 10 and the gap) to beyond the outside.
    expect(heightsOf(slot)).toEqual([expect.closeTo(-5.2, 9), expect.closeTo(15, 9)])
  })

  it('follows the opening typed for the cell', () => {
    const turned = job({ nests: [nest('cell', { opening: 90 })] }, { parts: [cell(), leaf()] })
    expect(solidOf(turned, 'parts/leaf/slot', 'box').facing).toBe(90)
  })

  it('is as thick as typed, towards the wall', () => {
    const typed = pair({}, { slot: 1.1 })
    expect(solidOf(typed, 'parts/leaf/slot', 'box').z1).toBeCloseTo(88.1, 9)
    expect(dimensionOf(itemOf(typed, 'parts/leaf/slot'), 'slot')).toMatchObject({ value: 1.1, how: 'typed' })
  })

  it('at the rear lies on the other side of its leaf', () => {
    const rear = leaf({ presses: { part: 'parts/cell', end: 'rear' }, at: { z: 18, face: 'rear' } })
    const slot = solidOf(job({}, { parts: [cell(), rear] }), 'parts/leaf/slot', 'box')
    expect([slot.z0, slot.z1]).toEqual([expect.closeTo(17.3, 9), expect.closeTo(18.05, 9)])
  })
})

it('spring and leaf with their cell pass the gate', () => {
  expect(build(pair()).problems).toEqual([])
})
