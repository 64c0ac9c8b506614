import { describe, expect, it } from 'vitest'
import { type PartHandle, partHandles } from '../../../src/papers/part-handles.ts'
import { snapAcross, snapAlong } from '../../../src/papers/snap.ts'
import { answerTo, demo } from '../job/demo-answer.ts'

const cell: PartHandle = {
  id: 'parts/cell',
  name: 'cell',
  z0: 60,
  z1: 125,
  x: 0,
  y: 0,
  shape: { kind: 'round', radius: 9 },
  along: true,
  across: true,
  faces: [
    { z: 58, name: 'face of spring', end: 'rear' },
    { z: 58.3, name: 'least gap to spring', end: 'rear' },
    { z: 130, name: 'face of board', end: 'blade' },
  ],
  rims: [{ radius: 15, name: 'outside of the sled' }],
  beside: [{ id: 'parts/board', name: 'board', x: 11, y: 0, shape: { kind: 'box', halfU: 8, halfV: 1, facing: 0 } }],
  gap: 0.3,
  around: undefined,
}

describe('a part dragged along the axis', () => {
  it('is caught by the nearest face, by either of its ends', () => {
    expect(snapAlong(cell, 57.9, 1)).toEqual({ to: 58, at: 'face of spring' })
    expect(snapAlong(cell, 58.2, 1)).toEqual({ to: 58.3, at: 'least gap to spring' })
    expect(snapAlong(cell, 64.6, 1)).toEqual({ to: 65, at: 'face of board' })
  })

  it('goes free where nothing is near, and with no reach at all', () => {
    expect(snapAlong(cell, 61.2344, 1)).toEqual({ to: 61.234, at: undefined })
    expect(snapAlong(cell, 57.9, 0)).toEqual({ to: 57.9, at: undefined })
  })
})

describe('a part dragged in the cross-section', () => {
  it('is caught by the axis', () => {
    expect(snapAcross(cell, { x: 0.3, y: -0.2 }, 0.5)).toEqual({ to: { x: 0, y: 0 }, at: 'axis' })
  })

  it('comes out to the rim with its farthest point', () => {
    const { to, at } = snapAcross(cell, { x: 0, y: 5.9 }, 0.3)
    expect([at, Math.hypot(to.x, to.y) + 9]).toEqual(['outside of the sled', expect.closeTo(15, 3)])
  })

  it('touches a flat neighbour, or keeps the least gap to it', () => {
    // The board's lower face lies at x = 10: the cell's middle 9 mm behind it, or 9.3.
    expect(snapAcross(cell, { x: 1.04, y: 2.2 }, 0.12)).toEqual({ to: { x: 1, y: 2.2 }, at: 'face of board' })
    expect(snapAcross(cell, { x: 0.75, y: 2.2 }, 0.12)).toEqual({ to: { x: 0.7, y: 2.2 }, at: 'least gap to board' })
  })

  it('touches a round neighbour along the line of their middles', () => {
    const round = {
      ...cell,
      rims: [],
      beside: [{ ...cell, id: 'parts/rod', name: 'rod', x: -10, y: 0, shape: { kind: 'round', radius: 2 } as const }],
    }
    const { to, at } = snapAcross(round, { x: 0.8, y: 2.1 }, 0.4)
    expect([at, Math.hypot(to.x + 10, to.y)]).toEqual([
      expect.stringContaining('rod'),
      expect.closeTo(at === 'face of rod' ? 11 : 11.3, 2),
    ])
  })

  it('brings a box out until its corners come to the rim', () => {
    const board = { ...cell, beside: [], shape: { kind: 'box', halfU: 9, halfV: 2, facing: 0 } as const }
    const { to, at } = snapAcross(board, { x: 9.8, y: 0 }, 0.4)
    // 9² + (x + 2)² = 15²: x = 10.
    expect([at, to]).toEqual(['outside of the sled', { x: 10, y: 0 }])
  })
})

describe('the handles of a job', () => {
  const handles = partHandles(answerTo(demo('ferry-lantern')).assembly)

  it('has one for each part; contacts that go with a cell are moved by it', () => {
    const of = (id: string) => handles.find((h) => h.id === id)
    expect(of('parts/leaf')).toMatchObject({ along: false, across: false })
    expect(of('parts/cell')).toMatchObject({ along: true, across: true, z0: 66 })
    expect(of('parts/switch')).toMatchObject({ along: true, across: false })
  })

  it('does not snap a part to what hangs on it', () => {
    const names = handles.find((h) => h.id === 'parts/cell')?.faces.map((f) => f.name) ?? []
    expect(names.some((n) => n.includes('sound board'))).toBe(true)
    expect(names.some((n) => n.includes('front leaf') || n.includes('rear spring'))).toBe(false)
  })
})
