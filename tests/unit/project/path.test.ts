import { describe, expect, it } from 'vitest'
import { demos } from '../../../src/job/demos/index.ts'
import { freshId, valueAt, withRecord, withValue } from '../../../src/project/path.ts'
import { checkProject } from '../../../src/project/read.ts'
import type { Project } from '../../../src/project/schema/project.ts'

const project = (() => {
  const read = checkProject({
    format: 'sledwright',
    version: 1,
    sections: [
      {
        id: 'body',
        length: 100,
        bore: [{ id: 'neck', length: 10, diameter: 20 }, { diameter: 24 }],
        outside: [{ diameter: 30 }],
      },
    ],
    parts: [{ id: 'cell', kind: 'cell', preset: 'cell-18650-flat' }],
    sleds: [{ id: 'main', windows: [{ id: 'w' }] }],
  })
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value.project
})()
const frozen = JSON.stringify(project)

describe('a path of the project', () => {
  it.each([
    ['sections/body/length', 100],
    ['sections/body/bore/neck/diameter', 20],
    ['sections/body/bore/1/diameter', 24],
    ['sections/body/outside/0/diameter', 30],
    ['parts/cell/preset', 'cell-18650-flat'],
    ['sleds/main/windows/w/gap', undefined],
    ['sleds/main/nests/parts/cell/gap', undefined],
    ['sleds/other/from', undefined],
    ['sections/body/bore/0/diameter', undefined],
  ])('%s leads to %s', (path, value) => expect(valueAt(project, path)).toBe(value))

  it.each([
    'sections/body/length',
    'sections/body/bore/neck/diameter',
    'sections/body/bore/1/diameter',
    'parts/cell/body/diameter',
    'sleds/main/diameter',
    'sleds/main/windows/w/gap',
    'sleds/main/nests/parts/cell/gap',
    'thresholds/clearance/value',
  ])('%s takes a number, changes nothing else and leaves the project as it was', (path) => {
    const changed = withValue(project, path, 12.5) as Project
    expect(valueAt(changed, path)).toBe(12.5)
    expect(JSON.stringify(project)).toBe(frozen)
    const back = withValue(changed, path, valueAt(project, path)) as Project
    const made = path.startsWith('thresholds') || path.includes('nests') || path.includes('parts/cell/body')
    if (!made) expect(back).toEqual(project)
  })

  it('keeps every record it does not touch, as the same object', () => {
    const changed = withValue(project, 'parts/cell/at/z', 4) as Project
    expect(changed.sections).toBe(project.sections)
    expect(changed.parts).not.toBe(project.parts)
  })

  it('makes a nest and a setting that were default, once', () => {
    const one = withValue(project, 'sleds/main/nests/parts/cell/gap', 0.3) as Project
    const two = withValue(one, 'sleds/main/nests/parts/cell/fit', 'snug') as Project
    expect(two.sleds[0]?.nests).toEqual([{ part: 'parts/cell', gap: 0.3, fit: 'snug' }])
    expect((withValue(project, 'thresholds/clearance/value', 0.2) as Project).thresholds).toEqual([
      { id: 'clearance', value: 0.2 },
    ])
  })

  it('takes a field away, and a record out of its list', () => {
    expect(withValue(project, 'parts/cell/preset', undefined)?.parts).toEqual([{ id: 'cell', kind: 'cell' }])
    expect(withValue(project, 'parts/cell', undefined)?.parts).toEqual([])
    expect(withValue(project, 'sleds/main/windows/w', undefined)?.sleds[0]?.windows).toEqual([])
  })

  it.each(['parts/nobody/at/z', 'sleds/other/diameter', 'sections/body/bore/7/diameter'])('%s leads nowhere', (path) =>
    expect(withValue(project, path, 1)).toBeUndefined(),
  )

  it('adds a record to a list, also to one that is not there yet', () => {
    expect(withRecord(project, 'sleds/main/windows', { id: 'v' })?.sleds[0]?.windows).toHaveLength(2)
    expect(withRecord(project, 'sleds/main/channels', { id: 'v' })?.sleds[0]?.channels).toEqual([{ id: 'v' }])
    expect(withRecord(project, 'sections/body/length', { id: 'v' })).toBeUndefined()
  })

  it('finds an id that is free', () => {
    expect(freshId([{ id: 'cell' }, { id: 'cell-2' }], 'Cell')).toBe('cell-3')
    expect(freshId([], 'Ø 28 mm speaker!')).toBe('28-mm-speaker')
    expect(freshId([], '…')).toBe('new')
  })
})

describe.each(demos.map((d) => [d.name, d.project] as const))('in the demo %s', (_, demo) => {
  it('every record is found by its id and may be written as it stands', () => {
    const read = checkProject(demo)
    if (!read.ok) throw new Error('a demo is sound')
    const p = read.value.project
    for (const list of ['sections', 'parts', 'features', 'sleds', 'insertions'] as const)
      for (const record of p[list]) {
        expect(valueAt(p, `${list}/${record.id}`)).toBe(record)
        expect(withValue(p, `${list}/${record.id}`, record)).toEqual(p)
      }
  })
})
