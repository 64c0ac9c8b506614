import { expect, it } from 'vitest'
import { sectionRow } from '../../../src/papers/section-row.ts'
import type { Size } from '../../../src/papers/sizes.ts'
import type { SectionInput } from '../../../src/project/schema/hilt.ts'

const size = (path: string, nominal: number): [string, Size] => [
  path,
  { path, nominal, low: nominal, high: nominal, source: 'measured', from: 'a tool' },
]
const stepped: SectionInput = {
  id: 'body',
  length: '1 1/2"',
  outside: [{ length: 10, diameter: 36 }, { diameter: '34,5' }],
  bore: [
    { id: 'cap', kind: 'solid', length: 6 },
    { id: 'wide', diameter: 30 },
    { id: 'neck', diameter: 22 },
  ],
}

it('a section in one line: its length, its outsides, the tightest of its bore', () => {
  const sizes = new Map([
    size('sections/body/length', 38.1),
    size('sections/body/outside/0/diameter', 36),
    size('sections/body/outside/1/diameter', 34.5),
    size('sections/body/bore/wide/diameter', 30),
    size('sections/body/bore/neck/diameter', 22.054),
  ])
  expect(sectionRow(stepped, (path) => sizes.get(path))).toEqual({
    length: '38.1',
    outside: '36 / 34.5',
    bore: '22.05 in 3 steps',
  })
})

it('what the program does not know yet reads as typed, and what nobody typed is a dash', () => {
  expect(sectionRow(stepped, () => undefined)).toEqual({ length: '1 1/2"', outside: '36 / 34,5', bore: '3 steps' })
  const empty: SectionInput = { id: 'body', length: '', bore: [{ id: 'bore' }] }
  expect(sectionRow(empty, () => undefined)).toEqual({ length: '–', outside: '–', bore: '–' })
  const read = { ...empty, bore: [{ diameter: { readings: [{ value: 30 }, { value: 30.1 }] } }] }
  expect(sectionRow(read, () => undefined).bore).toBe('2 readings')
  expect(sectionRow({ ...empty, bore: [{ kind: 'solid' }] }, () => undefined).bore).toBe('closed')
})
