import { describe, expect, it } from 'vitest'
import {
  acrossAs,
  acrossForm,
  endHeight,
  heightAlone,
  heightFrom,
  heightSaid,
  placedFace,
} from '../../../src/job/place-forms.ts'
import type { Place } from '../../../src/papers/places.ts'

const cell: Place = { ref: 'parts/cell', rear: 64, blade: 129, across: { x: 0, y: 0, facing: 0 } }

describe('a height said another way', () => {
  it('keeps the place: 134 is 5 beyond the cell that ends at 129, and 70 beyond its rear', () => {
    expect(heightFrom(134, cell, 'blade')).toEqual({ of: 'parts/cell', end: 'blade', by: 5 })
    expect(heightFrom(134, cell, 'rear')).toEqual({ of: 'parts/cell', end: 'rear', by: 70 })
    expect(heightFrom(90, cell, 'middle')).toEqual({ of: 'parts/cell', end: 'middle', by: -6.5 })
  })

  it('comes back as the number it was', () => {
    const { end, by } = heightFrom(133.27, cell, 'blade')
    expect(heightAlone(endHeight(cell, end as 'blade') + Number(by))).toBe(133.27)
  })

  it('is of the rear face, but of the middle where a part comes through the wall', () => {
    const part = { id: 'a', kind: 'switch' } as const
    expect(placedFace(part, { shape: 'cylinder', diameter: 8, length: 8 })).toBe('rear')
    expect(placedFace(part, { shape: 'cylinder', axis: 'radial', diameter: 8, length: 8 })).toBe('middle')
    expect(placedFace({ ...part, at: { face: 'blade' } }, undefined)).toBe('blade')
  })
})

describe('a height before anything was judged', () => {
  const placeOf = (ref: string) => (ref === cell.ref ? cell : undefined)

  it('is what was said: from the datum, or from an end of something that was', () => {
    expect(heightSaid(177, placeOf)).toBe(177)
    expect(heightSaid({ of: 'parts/cell', end: 'rear', by: 3 }, placeOf)).toBe(67)
    // The blade end where none is named, as the judged height has it.
    expect(heightSaid({ of: 'parts/cell', by: 3 }, placeOf)).toBe(132)
    expect(heightSaid({ of: 'parts/cell' }, placeOf)).toBe(129)
  })

  it('is not known where it takes more than adding up', () => {
    expect(heightSaid({ of: 'parts/board' }, placeOf)).toBeUndefined()
    expect(heightSaid({ of: 'parts/cell', by: { value: 3 } }, placeOf)).toBeUndefined()
    expect(heightSaid(undefined, placeOf)).toBeUndefined()
  })
})

describe('a place in the cross-section said another way', () => {
  const at = { x: 3, y: 4, facing: 0 }

  it('keeps the point: 3 and 4 are 5 away at 53°', () => {
    expect(acrossAs('xy', at)).toEqual({ x: 3, y: 4 })
    expect(acrossAs('polar', at)).toEqual({ r: 5, theta: 53 })
  })

  it('keeps the direction where the point follows from the wall or a neighbour', () => {
    expect(acrossAs('pushed', { x: -2, y: 0, facing: 0 })).toEqual({ pushed: 180, gap: 0.6 })
    expect(acrossAs('beside', at, { ref: 'parts/cell', across: { x: 3, y: 10, facing: 0 } })).toEqual({
      beside: 'parts/cell',
      theta: 270,
      gap: 2.15,
    })
  })

  it('is nothing on the axis, and nothing beside nobody', () => {
    expect(acrossAs('axis', at)).toBeUndefined()
    expect(acrossAs('beside', at)).toBeUndefined()
  })

  it('is known again by its form', () => {
    for (const form of ['xy', 'polar', 'pushed', 'beside'] as const)
      expect(acrossForm(acrossAs(form, at, { ref: 'parts/cell', across: cell.across }))).toBe(form)
    expect(acrossForm(undefined)).toBe('axis')
  })
})
