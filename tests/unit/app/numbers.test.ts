import { describe, expect, it } from 'vitest'
import { signed, stretch } from '../../../src/app/sheet/numbers.ts'

describe('a stretch of numbers', () => {
  it('has a dash between its ends, and a word where one of them is below nothing', () => {
    expect(stretch('7.96', '8.04')).toBe('7.96–8.04')
    expect(stretch('-3.1', '-2.9')).toBe('−3.1 to −2.9')
    expect(stretch('-0.1', '0.1')).toBe('−0.1 to 0.1')
  })

  it('is one number where its ends are one', () => {
    expect([stretch('14', '14'), stretch('-3', '-3')]).toEqual(['14', '−3'])
  })
})

describe('what is left over', () => {
  it('has hundredths, but not where it is a count', () => {
    expect([signed(-1, 'mm'), signed(-1, '°'), signed(-1, ''), signed(0.004)]).toEqual([
      '−1.00',
      '−1.00',
      '−1',
      '+0.00',
    ])
  })
})
