import { describe, expect, it } from 'vitest'
import { mayWrite } from '../../../../src/app/keeping/revision.ts'

const kept = { revision: 4, stamp: 'd' }

describe('who may write', () => {
  it('writes over what it has seen', () => {
    expect(mayWrite(kept, 'e', ['d'])).toBe('write')
  })

  it('writes over a writing of its own that was still under way', () => {
    expect(mayWrite(kept, 'e', ['c', 'd'])).toBe('write')
  })

  it('never writes over what it has not seen, whatever its revision', () => {
    expect(mayWrite(kept, 'e', ['c'])).toBe('changed')
    expect(mayWrite({ revision: 1, stamp: 'x' }, 'e', ['c'])).toBe('changed')
    expect(mayWrite(kept, 'e', [])).toBe('changed')
  })

  it('finds its own writing there when it comes twice', () => {
    expect(mayWrite(kept, 'd', ['c'])).toBe('written')
  })

  it('writes a new job, and does not bring back one that was deleted', () => {
    expect(mayWrite(undefined, 'a', [])).toBe('write')
    expect(mayWrite(undefined, 'e', ['d'])).toBe('deleted')
  })
})
