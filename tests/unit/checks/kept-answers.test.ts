import { describe, expect, test } from 'vitest'
import { answer } from '../../../src/job/answer.ts'
import { demos } from '../../../src/job/demos/index.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import { checkProject } from '../../../src/project/read.ts'
import type { Project } from '../../../src/project/schema/project.ts'
import { equal } from '../../../src/quantity/equal.ts'
import { variants } from '../../bench/variants.ts'

/* What one answer found out is kept for the next: no answer may depend on what was asked before it. */

const presets = loadPresets()
const projectOf = (given: unknown): Project => {
  const read = checkProject(given)
  if (!read.ok) throw new Error('demo does not read')
  return read.value.project
}
const answered = (project: Project): string => {
  const found = answer(project, presets)
  if (!found.ok) return JSON.stringify(found.problems)
  const { verdict, findings, notChecked } = found.value
  return JSON.stringify({ verdict, findings, notChecked })
}

test.each(demos.map((d) => d.name))('%s says the same before and after twelve changes, in either order', (name) => {
  const project = projectOf(demos.find((d) => d.name === name)?.project)
  const first = answered(project)
  const changed = variants(project, 12)
  const there = changed.map(answered)
  expect(answered(project)).toBe(first)
  const back = [...changed].reverse().map(answered).reverse()
  expect(back).toEqual(there)
  expect(new Set([first, ...there]).size).toBeGreaterThan(1)
})

describe('equal in all they hold', () => {
  test('values', () => {
    expect(equal({ a: [1, { b: 2 }] }, { a: [1, { b: 2 }] })).toBe(true)
    expect(equal({ a: [1, { b: 2 }] }, { a: [1, { b: 2.0000001 }] })).toBe(false)
    expect(equal([1, 2], [1, 2, 3])).toBe(false)
    expect(equal({ a: 1, b: undefined }, { a: 1, c: undefined })).toBe(false)
    expect(equal({ a: 1 }, { a: 1, b: 2 })).toBe(false)
    expect(equal(0, -0)).toBe(false)
    expect(equal(Number.NaN, Number.NaN)).toBe(true)
    expect(equal(null, {})).toBe(false)
  })
  test('maps by what is in them, functions and objects of a class only by being the same', () => {
    expect(equal(new Map([['z', 1]]), new Map([['z', 1]]))).toBe(true)
    expect(equal(new Map([['z', 1]]), new Map([['z', 2]]))).toBe(false)
    expect(
      equal(
        () => 1,
        () => 1,
      ),
    ).toBe(false)
    expect(equal(new Set([1]), new Set([1]))).toBe(false)
    const date = new Date(0)
    expect(equal({ date }, { date })).toBe(true)
    expect(equal({ date }, { date: new Date(0) })).toBe(false)
  })
})
