import { describe, expect, it } from 'vitest'
import { askedAgain } from '../../../src/app/work/asked-again.ts'
import type { Reply } from '../../../src/worker/desk.ts'

const stuck: Reply<string> = { kind: 'stuck', afterMs: 20 }
const broken: Reply<string> = { kind: 'broken', message: 'gone' }
const done: Reply<string> = { kind: 'done', value: 'drawn' }
const overtaken: Reply<string> = { kind: 'overtaken' }

/** Asks that are answered in this order, and how long each was waited for. */
function answering(...replies: readonly Reply<string>[]) {
  const waits: number[] = []
  const ask = (patience: number) => {
    waits.push(patience)
    return Promise.resolve(replies[waits.length - 1] as Reply<string>)
  }
  return { ask, waits }
}

describe('a request whose worker is lost', () => {
  it('is asked anew, with the next patience, until it comes through', async () => {
    const { ask, waits } = answering(stuck, broken, done)
    expect(await askedAgain(ask, [10, 20, 40, 80], () => true)).toEqual(done)
    expect(waits).toEqual([10, 20, 40])
  })

  it('gives the last reply where none came through', async () => {
    const { ask, waits } = answering(broken, stuck)
    expect(await askedAgain(ask, [10, 20], () => true)).toEqual(stuck)
    expect(waits).toEqual([10, 20])
  })

  it('is not asked anew where a newer one has taken its place', async () => {
    const { ask, waits } = answering(overtaken, done)
    expect(await askedAgain(ask, [10, 20], () => true)).toEqual(overtaken)
    expect(waits).toEqual([10])
  })

  it('is neither asked anew nor answered where nobody wants it any more', async () => {
    const { ask, waits } = answering(stuck, done)
    expect(await askedAgain(ask, [10, 20], () => waits.length === 0)).toBeUndefined()
    expect(waits).toEqual([10])
  })
})
