import { expect, it } from 'vitest'
import { needed } from '../../../../src/app/verdict/needed.ts'
import type { Finding } from '../../../../src/checks/finding.ts'

const left = (worst: number, limit = 0.15) => needed({ unit: 'mm', limit, margin: { worst } } as Finding)

it.each([
  [0.02, 'beyond the 0.15 needed'],
  // A nothing that is a rounding below nothing is told as nothing, and stands.
  [-1e-12, 'beyond the 0.15 needed'],
  [-0.02, 'against the 0.15 needed'],
])('what %d is counted from', (worst, words) => {
  expect(left(worst)).toBe(words)
  expect(left(worst, 0)).toBe('')
})
