import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { Desk, type Far, type Hand } from '../../../src/worker/desk.ts'

interface Calls {
  work(name: string): string
}

interface Job {
  readonly name: string
  readonly hand: number
  readonly done: (value: string) => void
  readonly fail: (error: Error) => void
}

/** Hands whose work ends when the test says so. */
function office() {
  const jobs: Job[] = []
  const ended: number[] = []
  const fails: ((message: string) => void)[] = []
  let hired = 0
  const hire = (): Hand<Calls> => {
    const hand = hired++
    const calls: Far<Calls> = {
      work: (name) => new Promise((done, fail) => jobs.push({ name, hand, done, fail })),
    }
    return { calls, end: () => ended.push(hand), onFailure: (tell) => (fails[hand] = tell) }
  }
  const desk = new Desk<Calls>(hire)
  const ask = (name: string, lane = 'check') => desk.ask(lane, 1000, (calls) => calls.work(name))
  const job = (name: string) => jobs.find((j) => j.name === name) as Job
  return { desk, ask, jobs, job, ended, fails, hired: () => hired }
}

describe('the desk before the worker', () => {
  beforeEach(() => vi.useFakeTimers())
  afterEach(() => vi.useRealTimers())

  it('hands over what the worker answers', async () => {
    const { ask, job } = office()
    const reply = ask('a')
    job('a').done('A')
    expect(await reply).toEqual({ kind: 'done', value: 'A' })
  })

  it('works on one request of a lane at a time; of those that wait the latest wins', async () => {
    const { ask, job, jobs } = office()
    const replies = ['a', 'b', 'c', 'd'].map((name) => ask(name))
    expect(jobs.map((j) => j.name)).toEqual(['a'])
    job('a').done('A')
    await vi.advanceTimersByTimeAsync(0)
    expect(jobs.map((j) => j.name)).toEqual(['a', 'd'])
    job('d').done('D')
    expect(await Promise.all(replies)).toEqual([
      { kind: 'overtaken' },
      { kind: 'overtaken' },
      { kind: 'overtaken' },
      { kind: 'done', value: 'D' },
    ])
  })

  it('lets lanes go their own ways', async () => {
    const { ask, job } = office()
    const [check, draw] = [ask('a', 'check'), ask('b', 'draw')]
    job('b').done('B')
    job('a').done('A')
    expect(await Promise.all([check, draw])).toEqual([
      { kind: 'done', value: 'A' },
      { kind: 'done', value: 'B' },
    ])
  })

  it('ends a worker that is stuck, tells who waited on it, and goes on with a new one', async () => {
    const { ask, job, jobs, ended, hired } = office()
    const [stuck, beside, later] = [ask('a'), ask('x', 'draw'), ask('b')]
    await vi.advanceTimersByTimeAsync(1000)
    expect(await stuck).toEqual({ kind: 'stuck', afterMs: 1000 })
    expect((await beside).kind).toBe('stuck')
    expect(ended).toEqual([0])
    expect(jobs.at(-1)).toMatchObject({ name: 'b', hand: 1 })
    job('b').done('B')
    expect(await later).toEqual({ kind: 'done', value: 'B' })
    expect(hired()).toBe(2)
  })

  it('does not listen to a worker that was ended', async () => {
    const { ask, job } = office()
    const stuck = ask('a')
    await vi.advanceTimersByTimeAsync(1000)
    job('a').done('too late')
    expect((await stuck).kind).toBe('stuck')
    const next = ask('b')
    job('b').done('B')
    expect(await next).toEqual({ kind: 'done', value: 'B' })
  })

  it('says what broke, and tries again with the next request', async () => {
    const { ask, job, fails, ended } = office()
    const thrown = ask('a')
    job('a').fail(new Error('no kernel'))
    expect(await thrown).toEqual({ kind: 'broken', message: 'no kernel' })
    const lost = ask('b')
    fails[0]?.('could not be loaded')
    expect(await lost).toEqual({ kind: 'broken', message: 'could not be loaded' })
    expect(ended).toEqual([0])
    const next = ask('c')
    job('c').done('C')
    expect(await next).toEqual({ kind: 'done', value: 'C' })
  })

  it('hires nobody before the first request, unless told to be ready', () => {
    const { desk, hired } = office()
    expect(hired()).toBe(0)
    desk.warm()
    desk.warm()
    expect(hired()).toBe(1)
  })
})
