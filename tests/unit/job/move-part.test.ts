import { describe, expect, it } from 'vitest'
import { movedAcross, movedAlong } from '../../../src/job/move-part.ts'
import { demo, projectOf } from './demo-answer.ts'

/** The pier lantern with the place of its board written in a form of one's own. */
function withBoard(at: Record<string, unknown>) {
  const job = demo('pier-lantern')
  return projectOf({ ...job, parts: job.parts?.map((p) => (p.id === 'board' ? { ...p, at } : p)) })
}
const board = (p: ReturnType<typeof withBoard> | undefined) => p?.parts.find((o) => o.id === 'board')?.at

describe('a part moved along the axis', () => {
  it('keeps the form of its place', () => {
    expect(board(movedAlong(withBoard({ z: 134 }), 'parts/board', 2.5))).toEqual({ z: 136.5 })
    expect(board(movedAlong(withBoard({ z: { value: 134, plus: 0.2, minus: 0.1 } }), 'parts/board', -1))?.z).toEqual({
      value: 133,
      plus: 0.2,
      minus: 0.1,
    })
    expect(
      board(movedAlong(withBoard({ z: { of: 'parts/cell', end: 'blade', by: 2 } }), 'parts/board', 1.25))?.z,
    ).toEqual({
      of: 'parts/cell',
      end: 'blade',
      by: 3.25,
    })
    expect(board(movedAlong(withBoard({ z: { of: 'parts/cell', end: 'blade' } }), 'parts/board', 1))?.z).toMatchObject({
      by: 1,
    })
  })

  it('puts a number for a text, which would no longer be true', () => {
    expect(board(movedAlong(withBoard({ z: '5 in' }), 'parts/board', 3))?.z).toBe(130)
  })

  it('does not move what has no place of its own', () => {
    expect(movedAlong(withBoard({ z: 134 }), 'parts/leaf', 1)).toBeUndefined()
    expect(movedAlong(withBoard({ z: 134 }), 'parts/none', 1)).toBeUndefined()
  })
})

describe('a part moved in the cross-section', () => {
  const move = (across: Record<string, unknown> | undefined, to: { x: number; y: number }, from = { x: 5, y: 0 }) =>
    board(
      movedAcross(withBoard({ z: 134, ...(across && { across }) }), 'parts/board', {
        from,
        to,
        around: { x: -4, y: 0 },
      }),
    )?.across

  it('keeps the form of its place', () => {
    expect(move(undefined, { x: 1.5, y: -2 })).toEqual({ x: 1.5, y: -2 })
    expect(move({ x: 5, y: { value: 0, plus: 0.1, minus: 0.1 } }, { x: 4, y: 1 })).toEqual({
      x: 4,
      y: { value: 1, plus: 0.1, minus: 0.1 },
    })
    expect(move({ r: 5, theta: 0 }, { x: 0, y: 3 })).toEqual({ r: 3, theta: 90 })
  })

  it('turns a pushed part around, and pulls it in by its gap', () => {
    expect(move({ pushed: 0, gap: 0.4 }, { x: 0, y: 4 })).toEqual({ pushed: 90, gap: 1.4 })
    expect(move({ pushed: 0, gap: 0.4 }, { x: 9, y: 0 })).toEqual({ pushed: 0, gap: 0 })
    expect(move({ pushed: 30, gap: 0.4 }, { x: 0, y: 0 })).toEqual({ pushed: 30, gap: 5.4 })
  })

  it('keeps a part beside the other one', () => {
    expect(move({ beside: 'parts/cell', theta: 0, gap: 0.5 }, { x: 6, y: 0 })).toEqual({
      beside: 'parts/cell',
      theta: 0,
      gap: 1.5,
    })
  })
})
