import { describe, expect, it } from 'vitest'
import { splitList } from '../../../src/entry/list.ts'

describe('a list as typed or pasted', () => {
  it.each([
    ['25.02', ['25.02']],
    ['25.02,25.03', ['25.02', '25.03']],
    ['25.02, 25.03 ,25', ['25.02', '25.03', '25']],
    ['25,02; 25,03', ['25,02', '25,03']],
    ['25,02 25,03', ['25,02', '25,03']],
    ['25.02 25.03 25.01', ['25.02', '25.03', '25.01']],
    ['25,02\n25,03\n', ['25,02', '25,03']],
    ['25,02\t25,03', ['25,02', '25,03']],
    ['25, 26', ['25', '26']],
    ['25,26,27', ['25', '26', '27']],
    ['1 1/2", 1 1/4"', ['1 1/2"', '1 1/4"']],
    ['1 1/2"', ['1 1/2"']],
    ['1in,2in', ['1in', '2in']],
  ])('%s', (typed, parts) => {
    expect(splitList(typed)).toEqual({ ok: true, value: parts })
  })

  it.each(['25,4', '25,02,25,03'])('%s is refused: the comma may be a decimal sign', (typed) => {
    const outcome = splitList(typed, 'readings')
    expect(!outcome.ok && outcome.problems[0]?.code).toBe('contradiction')
  })

  it('takes commas between whole angles as separators', () => {
    expect(splitList('0,60', '', true)).toEqual({ ok: true, value: ['0', '60'] })
    expect(splitList('0,60,120,180', '', true)).toEqual({ ok: true, value: ['0', '60', '120', '180'] })
  })

  it('refuses nothing and too much', () => {
    expect(splitList('').ok).toBe(false)
    expect(splitList('1;'.repeat(501)).ok).toBe(false)
    expect(splitList('1;'.repeat(1_000_000)).ok).toBe(false)
  })
})
