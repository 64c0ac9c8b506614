import { describe, expect, it } from 'vitest'
import { movable, newMove, notYetMoved } from '../../../src/job/new-move.ts'
import { demo, projectOf } from './demo-answer.ts'

const pier = projectOf(demo('pier-lantern'))

describe('a move that is added', () => {
  it('is first thought of for what no move brings in yet: sleds, then what sits in a wall', () => {
    expect(notYetMoved({ ...pier, insertions: [] })).toBe('sleds/main')
    // The sled has its move; the switch in the wall of the body has none.
    expect(notYetMoved(pier)).toBe('parts/switch')
    expect(movable(pier)).toEqual(['sleds/main', 'parts/switch', 'sections/pommel', 'sections/body'])
  })

  it('is of nothing where all have theirs', () => {
    expect(notYetMoved({ ...pier, insertions: [...pier.insertions, newMove(pier, 'parts/switch')] })).toBeUndefined()
  })

  it('goes through the section it belongs to, under a name of its own', () => {
    const switched = newMove(pier, 'parts/switch')
    expect(switched).toEqual({ id: 'move', moves: 'parts/switch', through: { of: 'sections/body', end: 'rear' } })
    const again = newMove({ ...pier, insertions: [...pier.insertions, switched] }, 'sleds/main')
    expect(again).toMatchObject({ id: 'move-2', through: { of: 'sections/pommel', end: 'rear' } })
  })
})
