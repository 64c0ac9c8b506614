import { describe, expect, test, vi } from 'vitest'
import { equal } from '../../../geometry/equal.ts'
import { demos } from '../../../src/job/demos/index.ts'
import { withValue } from '../../../src/project/path.ts'
import type { Project } from '../../../src/project/schema/project.ts'
import { variants } from '../../bench/variants.ts'
import { demo, projectOf } from '../job/demo-answer.ts'

/* What one answer found out is kept for the next: no answer may depend on what was asked before it. */

type Said = (project: Project) => string

/** The program as it is just after it was started: nothing was asked of it yet. */
async function justStarted(): Promise<Said> {
  vi.resetModules()
  const [{ answer }, { loadPresets }, { fetchRare }] = await Promise.all([
    import('../../../src/job/answer.ts'),
    import('../../../src/presets/presets.ts'),
    import('../../../src/checks/rare.ts'),
  ])
  await fetchRare()
  const presets = loadPresets()
  return (project) => {
    const found = answer(project, presets)
    if (!found.ok) return JSON.stringify(found.problems)
    const { verdict, findings, notChecked } = found.value
    return JSON.stringify({ verdict, findings, notChecked })
  }
}

test.each(demos.map((d) => d.name))('%s says after other jobs what it says as the first', async (name) => {
  const project = projectOf(demo(name))
  const jobs = [project, ...variants(project, 5)]
  const first: string[] = []
  for (const job of jobs) first.push((await justStarted())(job))
  expect(new Set(first).size).toBeGreaterThan(1)
  const said = await justStarted()
  expect(jobs.map(said)).toEqual(first)
  expect(jobs.toReversed().map(said)).toEqual(first.toReversed())
})

test('what lies around a sled changes its plan, though the sled itself has not changed', async () => {
  const project = projectOf(demo('pier-lantern'))
  const narrower = withValue(project, 'parts/board/body/width', 16) as Project
  const first = [(await justStarted())(project), (await justStarted())(narrower)]
  const said = await justStarted()
  expect([said(project), said(narrower)]).toEqual(first)
  expect(first[0]).not.toBe(first[1])
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
