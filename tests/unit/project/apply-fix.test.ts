import { describe, expect, it } from 'vitest'
import { type Applicable, applyFix } from '../../../src/project/apply-fix.ts'
import { valueAt } from '../../../src/project/path.ts'
import { checkProject } from '../../../src/project/read.ts'
import type { Project, ProjectInput } from '../../../src/project/schema/project.ts'
import { tube } from '../resolve/project-of.ts'

const assumed = { source: 'assumed', from: expect.stringContaining('measure it') }

function projectOf(extra: Partial<ProjectInput> = {}): Project {
  const read = checkProject(tube(extra))
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value.project
}

/** What stands at a path after a number was put there in place of another. */
function after(before: unknown, value: number, path = 'sleds/main/diameter'): unknown {
  const project = projectOf({ sleds: [{ id: 'main', from: 10, to: 60, diameter: before as number }] })
  return valueAt(applyFix(project, { path, value }) as Project, path)
}

const bored = (diameter: unknown) =>
  projectOf({ sections: [{ id: 'body', length: 100, bore: [{ id: 'main', diameter: diameter as number }] }] })
const boreAfter = (before: unknown, value: number): unknown =>
  valueAt(
    applyFix(bored(before), { path: 'sections/body/bore/main/diameter', value }) as Project,
    'sections/body/bore/main/diameter',
  )

/** The same with its numbers to nine digits. */
const rounded = (v: unknown): unknown =>
  JSON.parse(JSON.stringify(v), (_, x) => (typeof x === 'number' ? Number(x.toFixed(9)) : x))

describe('a number of the drawing', () => {
  it.each<[unknown, number, unknown]>([
    [20, 19, 19],
    ['20', 19, 19],
    ['20 ± 0.05', 19, { value: 19, plus: 0.05, minus: 0.05 }],
    [
      { value: 20, plus: 0.2, minus: 0.1, tool: 'calliper-outside' },
      19,
      { value: 19, plus: 0.2, minus: 0.1, tool: 'calliper-outside' },
    ],
    [{ value: 20, text: '20.0', source: 'measured', from: 'me' }, 19, { value: 19 }],
    [{ min: 19.8, max: 20.4 }, 19, { min: 18.7, max: 19.3 }],
    [{ min: 19.8, max: 20.4, nominal: 20 }, 19, { min: 18.8, max: 19.4, nominal: 19 }],
    [{ readings: [{ value: 20 }, { value: 20.1 }] }, 19, 19],
    [undefined, 19, 19],
  ])('%j becomes %d: %j', (before, value, expected) => {
    const got = after(before, value)
    expect(rounded(got)).toEqual(expected)
  })
})

describe('a size of what is there already', () => {
  it('stands as assumed until it is measured, and keeps its spread', () => {
    expect(boreAfter({ value: 30, plus: 0.1, minus: 0.1 }, 31)).toEqual({
      value: 31,
      plus: 0.1,
      minus: 0.1,
      ...assumed,
    })
    expect(boreAfter(30, 31)).toEqual({ value: 31, ...assumed })
    expect(boreAfter({ readings: [{ value: 30 }], tool: 'calliper-inside' }, 31)).toEqual({ value: 31, ...assumed })
  })

  it('a part’s place is drawn, its body is in hand', () => {
    const cell = { id: 'cell', kind: 'cell', body: { shape: 'cylinder', diameter: 18, length: 65 }, at: { z: 20 } }
    const project = projectOf({ parts: [cell as never] })
    const moved = applyFix(project, { path: 'parts/cell/at/z', value: 22 }) as Project
    expect(valueAt(moved, 'parts/cell/at/z')).toBe(22)
    const thinner = applyFix(project, { path: 'parts/cell/body/diameter', value: 17 }) as Project
    expect(valueAt(thinner, 'parts/cell/body/diameter')).toEqual({ value: 17, ...assumed })
  })

  it('of a pin’s tip and its reach only the newer one is left', () => {
    const pin = {
      id: 'pin',
      kind: 'intrusion',
      on: 'sections/body',
      at: { z: 50, theta: 0 },
      shape: { form: 'pin', diameter: 2, reach: 3 },
    }
    const fixed = applyFix(projectOf({ features: [pin as never] }), { path: 'features/pin/shape/tip', value: 13 })
    expect(valueAt(fixed as Project, 'features/pin/shape')).toEqual({
      form: 'pin',
      diameter: 2,
      tip: { value: 13, ...assumed },
    })
  })
})

describe('records and lists', () => {
  const windows = (ids: readonly string[]) =>
    projectOf({ sleds: [{ id: 'main', from: 10, to: 60, diameter: 20, windows: ids.map((id) => ({ id })) }] })
  const put = (project: Project, fix: Applicable) => applyFix(project, fix) as Project

  it('a record with an id is one more in its list, under an id of its own', () => {
    const one = put(windows(['w']), { path: 'sleds/main/windows', value: { id: 'w', for: 'parts/switch' } })
    expect(valueAt(one, 'sleds/main/windows')).toEqual([{ id: 'w' }, { id: 'w-2', for: 'parts/switch' }])
  })

  it('makes a list that was not there', () => {
    const bare = projectOf({ sleds: [{ id: 'main', from: 10, to: 60, diameter: 20 }] })
    expect(valueAt(put(bare, { path: 'sleds/main/windows', value: { id: 'w' } }), 'sleds/main/windows')).toEqual([
      { id: 'w' },
    ])
  })

  it('a list takes the place of the one there', () => {
    const bodies = [{ from: 10, to: 30, diameter: 20 }]
    expect(valueAt(put(windows([]), { path: 'sleds/main/bodies', value: bodies }), 'sleds/main/bodies')).toEqual(bodies)
  })

  it('a record takes the place of a record', () => {
    const fixed = put(windows(['w']), { path: 'sleds/main/windows/w', value: { id: 'w', width: 9 } })
    expect(valueAt(fixed, 'sleds/main/windows')).toEqual([{ id: 'w', width: 9 }])
  })
})

describe('what cannot be applied', () => {
  it('is undefined: advice, and a record that there is not', () => {
    const project = projectOf({})
    expect(applyFix(project, { path: 'sections/body/length' })).toBeUndefined()
    expect(applyFix(project, { path: 'sections/gone/length', value: 10 })).toBeUndefined()
    expect(applyFix(project, { path: 'sleds/gone/windows', value: { id: 'w' } })).toBeUndefined()
  })

  it('leaves the project it was given as it was', () => {
    const project = projectOf({})
    const before = structuredClone(project)
    applyFix(project, { path: 'sections/body/length', value: 10 })
    expect(project).toEqual(before)
  })
})
