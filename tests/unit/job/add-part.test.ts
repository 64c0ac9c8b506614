import { describe, expect, it } from 'vitest'
import { addPart, duplicatePart, type PartKind, partKinds, reordered } from '../../../src/job/add-part.ts'
import { type Answer, answer } from '../../../src/job/answer.ts'
import { newJob } from '../../../src/job/new-job.ts'
import { soFar } from '../../../src/job/so-far.ts'
import { type Place, placesOf } from '../../../src/papers/places.ts'
import { presetChoices } from '../../../src/presets/preset-choices.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import { problemText } from '../../../src/problem/problem.ts'
import { withValue } from '../../../src/project/path.ts'
import { checkProject } from '../../../src/project/read.ts'
import type { Project } from '../../../src/project/schema/project.ts'
import { demo, projectOf } from './demo-answer.ts'

const presets = loadPresets()
const { parts } = presetChoices(presets)

function tube(bore: string): Project {
  const sizes = [
    ['sections/body/length', '240'],
    ['sections/body/bore/bore/diameter', bore],
    ['sections/body/outside', [{ diameter: 40 }]],
  ] as const
  return sizes.reduce<Project>((p, [path, value]) => withValue(p, path, value) ?? p, newJob('Try'))
}

function judged(project: Project): Answer {
  const found = answer(soFar(project).project, presets)
  if (!found.ok) throw new Error(found.problems.map(problemText).join('\n'))
  return found.value
}

function fill(project: Project, kinds: readonly PartKind[]): Project {
  return kinds.reduce((p, kind) => {
    const places: readonly Place[] = placesOf(judged(p).assembly)
    return addPart(p, kind, parts, (ref) => places.find((x) => x.ref === ref)).project
  }, project)
}

describe('filling an empty hilt part by part', () => {
  const usual = ['cell', 'contact', 'contact', 'board', 'speaker', 'switch', 'port', 'connector'] as const

  it('meets no clash and no problem on the way in a bore that has room', () => {
    let project = tube('32')
    for (const kind of usual) {
      project = fill(project, [kind])
      const { findings, notChecked } = judged(project)
      expect(findings.filter((f) => f.status === 'clash').map((f) => f.title)).toEqual([])
      expect(notChecked.map((c) => c.title)).toEqual([])
    }
  })

  it('puts the first contact behind the cell and the second before it', () => {
    const { parts: made } = fill(tube('32'), ['cell', 'contact', 'contact'])
    expect(made.map((p) => [p.name, p.presses?.end])).toEqual([
      ['cell', undefined],
      ['rear contact', 'rear'],
      ['front contact', 'blade'],
    ])
  })

  it('grows the sled around what it carries', () => {
    const sled = (p: Project) => placesOf(judged(p).assembly).find((x) => x.ref === 'sleds/main')
    const one = sled(fill(tube('32'), ['cell']))
    const two = sled(fill(tube('32'), ['cell', 'board']))
    expect(one?.rear).toBeLessThan(8)
    expect((two?.blade ?? 0) - (one?.blade ?? 0)).toBeGreaterThan(28)
  })

  it('asks in a hilt that is not measured for nothing but its length', () => {
    const { project } = addPart(newJob('Try'), 'cell', parts, () => undefined)
    const found = answer(soFar(project).project, presets)
    expect(found.ok ? [] : found.problems.map((p) => p.path)).toEqual(['sections/body/length'])
  })

  it('makes projects that a file may hold, of every kind, measured or not', () => {
    for (const kind of partKinds) {
      const { project, id } = addPart(newJob('Try'), kind, parts, () => undefined)
      expect(checkProject(project).ok).toBe(true)
      expect(project.parts.map((p) => p.id)).toEqual([id])
    }
  })

  it('goes on after the cell while nobody knows yet where things lie', () => {
    const blind = (p: Project, kind: PartKind) => addPart(p, kind, parts, () => undefined).project
    const made = (['cell', 'contact', 'board'] as const).reduce(blind, newJob('Try'))
    expect(made.parts.map((p) => p.at?.z)).toMatchObject([
      { of: 'sections/body', end: 'rear' },
      undefined,
      { of: 'parts/cell', end: 'blade' },
    ])
  })

  it('goes past what is in the wall, too, into the first stretch that has room for it', () => {
    const before = withValue(fill(tube('32'), ['cell']), 'parts', [
      ...fill(tube('32'), ['cell']).parts,
      {
        id: 'button',
        kind: 'switch',
        on: 'sections/body',
        goesIn: 'after',
        body: { shape: 'cylinder', axis: 'radial', diameter: 8, length: 8 },
        at: { z: 120, theta: 0 },
      },
    ]) as Project
    const spans = (p: Project) => placesOf(judged(p).assembly).filter((x) => x.ref.startsWith('parts/'))
    const cell = spans(before).find((x) => x.ref === 'parts/cell')
    // Between cell and button there are some 40 mm: a port finds room there, and a board only behind the button.
    expect(116 - (cell?.blade ?? 0)).toBeGreaterThan(30)
    const port = fill(before, ['port'])
    expect(port.parts.at(-1)?.at?.z).toEqual({ of: 'parts/cell', end: 'blade', by: 8 })
    const long = fill(before, ['board'])
    expect(long.parts.at(-1)?.at?.z).toEqual({ of: 'parts/button', end: 'blade', by: 8 })
    for (const p of [port, long, fill(port, ['board']), fill(long, ['port', 'speaker'])]) {
      const sorted = spans(p).toSorted((a, b) => a.rear - b.rear)
      for (const [i, next] of sorted.slice(1).entries())
        expect(next.rear).toBeGreaterThanOrEqual((sorted[i]?.blade ?? 0) - 1e-6)
    }
  })

  it('stands in the wall of the section it lies in', () => {
    const two = fill(tube('32'), ['cell'])
    const project = withValue(
      withValue(two, 'sections', [
        { ...two.sections[0], length: '70' },
        { id: 'front', length: '160', bore: [{ id: 'bore', diameter: '32' }], outside: [{ diameter: 40 }] },
      ]) ?? two,
      'parts',
      two.parts,
    ) as Project
    const inWall = parts.switch.filter((p) => p.body.shape === 'cylinder' && p.body.axis === 'radial')
    const places: readonly Place[] = placesOf(judged(project).assembly)
    const made = addPart(project, 'switch', { ...parts, switch: inWall }, (ref) => places.find((x) => x.ref === ref))
    expect(made.project.parts.at(-1)).toMatchObject({ on: 'sections/front', at: { z: { of: 'parts/cell' } } })
  })

  it('says so where no stretch has room, and lies where it can be judged: within the ends of the sled', () => {
    const project = projectOf(demo('pier-lantern'))
    const places: readonly Place[] = placesOf(judged(project).assembly)
    const made = addPart(project, 'board', parts, (ref) => places.find((x) => x.ref === ref))
    expect(made.noRoom).toBeGreaterThan(20)
    expect(made.project.parts.at(-1)?.at?.z).toBeCloseTo(188 - 2 - (made.noRoom ?? 0), 6)
    expect(judged(made.project).verdict).toBe('clash')
    expect(addPart(project, 'contact', parts, () => undefined).noRoom).toBeUndefined()
  })

  it('names a second one of a kind apart', () => {
    expect(fill(tube('32'), ['board', 'board']).parts.map((p) => [p.id, p.name])).toEqual([
      ['sound-board', 'sound board'],
      ['sound-board-2', 'sound board 2'],
    ])
  })
})

describe('a like part', () => {
  it('stands right after the first, in the list and in the hilt', () => {
    const project = fill(tube('32'), ['cell', 'board'])
    const made = duplicatePart(project, 'cell', () => undefined)
    expect(made?.project.parts.map((p) => p.id)).toEqual(['cell', 'cell-2', 'sound-board'])
    expect(made?.project.parts[1]).toMatchObject({
      preset: 'cell-18650-flat',
      at: { z: { of: 'parts/cell', end: 'blade' } },
    })
  })

  it('is none of a part that there is not', () => {
    expect(duplicatePart(newJob('Try'), 'nobody', () => undefined)).toBeUndefined()
  })
})

describe('the order of a list', () => {
  const list = [{ id: 'a' }, { id: 'b' }, { id: 'c' }]

  it('changes by one place, and not beyond its ends', () => {
    expect(reordered(list, 'b', -1)?.map((r) => r.id)).toEqual(['b', 'a', 'c'])
    expect(reordered(list, 'b', 1)?.map((r) => r.id)).toEqual(['a', 'c', 'b'])
    expect(reordered(list, 'a', -1)).toBeUndefined()
    expect(reordered(list, 'c', 1)).toBeUndefined()
  })
})
