import { describe, expect, it } from 'vitest'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { assemblyOf, problemsOf, tube } from './project-of.ts'

/** What is typed for a sled is drawn once: a spread beside it was dropped, and {27 … 31} judged as 29. */
const sled = (more: object): ProjectInput => tube({ sleds: [{ id: 'main', from: 10, to: 60, ...more }] })
const range = { min: 16, max: 20 }
const paths = (more: object) => problemsOf(sled(more)).map((p) => p.path)

describe('a drawn size with a spread is refused', () => {
  it.each([
    ['diameter', { diameter: range }],
    ['diameter', { diameter: '18 ±1' }],
    ['diameter', { diameter: { readings: [{ value: 17 }, { value: 19 }] } }],
    ['bodies/0/diameter', { bodies: [{ from: 10, to: 60, diameter: range }] }],
    ['rings/r/diameter', { rings: [{ id: 'r', z: 12, length: 5, diameter: range }] }],
    ['rings/r/z', { rings: [{ id: 'r', z: range, length: 5, diameter: 20 }] }],
    ['from', { from: range }],
    ['to/by', { to: { of: 'sections/body', by: { value: -100, plus: 2, minus: 2 } } }],
    ['splits/s/z', { splits: [{ id: 's', z: '40 ±1' }] }],
  ])('%s', (field, more) => {
    expect(paths(more)).toEqual([`sleds/main/${field}`])
  })

  it('with what was typed and what to type', () => {
    expect(problemsOf(sled({ diameter: range }))[0]).toMatchObject({ got: '"16 to 20"', limit: 'one number' })
  })
})

it('one number is taken, however it is written, and so is a sled placed by what is known roughly', () => {
  for (const diameter of [18, '18 mm', { value: 18, plus: 0, minus: 0 }, { min: 18, max: 18 }])
    expect(assemblyOf(sled({ diameter })).sleds[0]?.pieces[0]?.radius).toBe(9)
  const from = { of: 'sections/body', end: 'rear', by: { value: 10, plus: 1, minus: 1 } }
  expect(assemblyOf(sled({ from })).sleds[0]?.shift.terms).toHaveLength(1)
})

it('another unit than mm is refused: no number in a file is anything else', () => {
  expect(problemsOf(tube({ job: [{ id: 'j', units: 'inch' as never }] }))).toMatchObject([{ path: 'job/j/units' }])
  expect(problemsOf(tube({ job: [{ id: 'j', units: 'mm' }] }))).toEqual([])
})
