import { describe, expect, it } from 'vitest'
import type { Finding } from '../../../src/checks/finding.ts'
import { spoiltBy } from '../../../src/job/spoilt-by.ts'

const finding = (id: string, status: Finding['status'], worst: number, more: object = {}): Finding =>
  ({ id, check: id, title: id, status, margin: { worst, nominal: worst, best: worst }, ...more }) as never
const wall = (value: number): Finding => finding('sled-wall', 'clear', value - 1.2, { value, limit: 1.2 })

describe('what a change spoils', () => {
  const before = [finding('a', 'clash', -1), finding('b', 'clear', 0.5), finding('c', 'clash', -2), wall(3)]
  const told = (...after: Finding[]) => spoiltBy(before, after, 'a')?.text

  it('is nothing where nothing is worse', () => {
    expect(
      told(finding('a', 'clear', 1), finding('b', 'clear', 0.1), finding('c', 'clash', -2), wall(3)),
    ).toBeUndefined()
  })

  it('is first a clash where there was none, then one that is larger', () => {
    expect(told(finding('b', 'clash', -0.1), finding('c', 'clash', -3))).toBe('But then it clashes elsewhere: b.')
    expect(told(finding('b', 'clear', 0.5), finding('c', 'clash', -3))).toBe(
      'But then it clashes by more elsewhere: c.',
    )
  })

  it('is what is no longer sure, but for a size that is only assumed', () => {
    expect(told(finding('b', 'unsure', -0.1))).toBe('Then it is not sure elsewhere: b.')
    expect(told(finding('b', 'unsure', 0.1))).toBeUndefined()
  })

  it('is a wall of the sled that is left much thinner, also where it can still be printed', () => {
    expect(told(wall(1.35))).toBe('Its walls are then thinner: 1.35 mm, where 1.20 mm can be printed.')
    expect(told(wall(2.6))).toBeUndefined()
  })
})
