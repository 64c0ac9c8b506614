import { describe, expect, it } from 'vitest'
import { answer } from '../../../src/job/answer.ts'
import { demos } from '../../../src/job/demos/index.ts'
import { referencesTo, withoutThing } from '../../../src/job/references-to.ts'
import { placesOf } from '../../../src/papers/places.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import { valueAt, withValue } from '../../../src/project/path.ts'
import { checkProject } from '../../../src/project/read.ts'
import type { Project } from '../../../src/project/schema/project.ts'

const presets = loadPresets()

function demo(name: string): Project {
  const read = checkProject(demos.find((d) => d.name === name)?.project)
  if (!read.ok) throw new Error('a demo is sound')
  return read.value.project
}

function places(project: Project) {
  const found = answer(project, presets)
  if (!found.ok) throw new Error('it can be judged')
  const list = placesOf(found.value.assembly)
  return (ref: string) => list.find((p) => p.ref === ref)
}

const pier = [
  ['parts/board/at/z', { of: 'parts/cell', end: 'blade', by: 5 }],
  ['parts/board/at/across', { beside: 'parts/cell', theta: 0, gap: 3 }],
  ['wires/harness/from', 'parts/cell'],
  ['sleds/main/nests/parts/cell/gap', 0.4],
  ['states', [{ id: 'closed', name: 'closed', without: ['parts/cell', 'parts/board'] }]],
  ['insertions', [{ id: 'cell-in', moves: 'parts/cell', through: { of: 'sections/body', end: 'rear' } }]],
].reduce<Project>((p, [path, value]) => withValue(p, path as string, value) ?? p, demo('pier-lantern'))

describe('who names a part', () => {
  it('is said in words, each once', () => {
    expect(referencesTo(pier, 'parts/cell').map((r) => r.path)).toEqual([
      'parts/spring/presses',
      'parts/leaf/presses',
      'parts/board/at/z',
      'parts/board/at/across',
      'sleds/main/nests/parts/cell',
      'insertions/cell-in',
      'states/closed/without',
      'wires/harness/from',
    ])
    expect(referencesTo(pier, 'parts/switch').map((r) => r.words)).toEqual([
      'window for the push switch, sled was made for it and goes too',
    ])
    expect(referencesTo(pier, 'parts/speaker')).toEqual([])
  })
})

describe('a part taken away', () => {
  const before = places(pier)
  const after = withoutThing(pier, 'parts/cell', before) as Project

  it('leaves nobody naming it, and a project that can be judged', () => {
    expect(JSON.stringify(after)).not.toContain('parts/cell')
    expect(checkProject(after).ok).toBe(true)
    expect(answer(after, presets).ok).toBe(true)
  })

  it('leaves what was placed from it where it was', () => {
    const now = places(after)
    for (const ref of ['parts/board', 'parts/spring', 'parts/leaf'])
      expect(now(ref)?.rear).toBeCloseTo(before(ref)?.rear ?? 0, 1)
    expect(now('parts/board')?.across?.x).toBeCloseTo(before('parts/board')?.across?.x ?? 0, 2)
  })

  it('takes with it only what served it alone', () => {
    expect(valueAt(after, 'states/closed/without')).toEqual(['parts/board'])
    expect(after.insertions).toEqual([])
    expect(after.wires[0]).toMatchObject({ id: 'harness', count: 4 })
    expect(valueAt(after, 'sleds/main/nests')).toEqual([])
  })

  it('is not taken from a job that has it not', () => {
    expect(withoutThing(pier, 'parts/nobody', before)).toBeUndefined()
  })
})
