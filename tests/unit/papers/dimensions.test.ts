import { describe, expect, it } from 'vitest'
import { demos } from '../../../src/job/demos/index.ts'
import { dimensionsOf } from '../../../src/papers/dimensions.ts'
import { printFiguresOf, settingsOf } from '../../../src/papers/settings.ts'
import { withValue } from '../../../src/project/path.ts'
import type { Project } from '../../../src/project/schema/project.ts'
import { answerTo, demo, projectOf } from '../job/demo-answer.ts'

const listed = (project: Project) => dimensionsOf(project, answerTo(project).assembly)
const find = (project: Project, path: string, name?: string) =>
  listed(project).find((d) => d.path === path && (name === undefined || d.name === name))

describe('the dimensions of a sled', () => {
  it('say whether they are typed, a default with its source, or follow from others', () => {
    const pier = projectOf(demo('pier-lantern'))
    expect(find(pier, 'sleds/main/chamfer')).toMatchObject({
      name: 'chamfer',
      value: 0.4,
      kind: 'default',
      source: 'common practice, no source',
      typeable: true,
      part: undefined,
    })
    expect(find(projectOf(demo('weir-lantern')), 'sleds/main/diameter')).toMatchObject({ value: 28.2, kind: 'typed' })
    expect(find(pier, 'sleds/main/nests/parts/board/gap', 'shelf width')).toMatchObject({
      kind: 'derived',
      typeable: false,
      nest: 'board shelf',
      part: 'parts/board',
    })
  })

  it('a typed one takes the place of the default, and emptied gives way to it', () => {
    const pier = projectOf(demo('pier-lantern'))
    const path = 'sleds/main/nests/parts/cell/gap'
    const typed = withValue(pier, path, 0.4) as Project
    expect(find(typed, path)).toMatchObject({ value: 0.4, kind: 'typed', source: 'typed' })
    expect(find(withValue(typed, path, undefined) as Project, path)).toEqual(find(pier, path))
  })

  it('a pocket whose radius follows can be given one', () => {
    const pier = projectOf(demo('pier-lantern'))
    const path = 'sleds/main/nests/parts/cell/pocketRadius'
    const before = find(pier, path)
    expect(before).toMatchObject({ kind: 'derived', typeable: true })
    expect(find(withValue(pier, path, 9.8) as Project, path)).toMatchObject({ value: 9.8, kind: 'typed' })
  })

  it('of a slim sled the diameter is that of its rings', () => {
    const slim = { ...projectOf(demo('pier-lantern')) }
    const project = withValue(slim, 'sleds/main/outside', 'slim') as Project
    expect(find(project, 'sleds/main/diameter', 'ring diameter')).toMatchObject({ value: 29.3, typeable: true })
    expect(find(project, 'sleds/main/slimBy', 'body diameter')).toMatchObject({ kind: 'derived', typeable: false })
    expect(find(project, 'sleds/main/slimBy', 'slimmer than the rings')).toMatchObject({
      value: expect.closeTo(1.5, 9),
      kind: 'default',
      typeable: true,
    })
    const typed = withValue(project, 'sleds/main/diameter', 29) as Project
    expect(find(typed, 'sleds/main/diameter', 'ring diameter')).toMatchObject({ value: 29, kind: 'typed' })
  })

  it('a body that steps with the bore has a diameter for each step', () => {
    const steps = listed(projectOf(demo('ferry-lantern'))).filter((d) => d.name.startsWith('body diameter, z'))
    expect(steps.length).toBeGreaterThan(1)
    expect(new Set(steps.map((d) => d.value)).size).toBe(steps.length)
    expect(steps.every((d) => !d.typeable)).toBe(true)
  })

  it('of what nobody wrote down nothing is typed', () => {
    const project = projectOf(demo('buoy-lantern'))
    expect(find(project, 'sleds/chamber/rods/rod-1/diameter')).toMatchObject({ kind: 'default', typeable: false })
    expect(find(project, 'sleds/body/splits/cell/foot')).toMatchObject({ kind: 'default', typeable: true })
  })

  for (const { name, project: input } of demos)
    it(`typed as they are, all that can be typed of ${name} change nothing`, () => {
      const project = projectOf(input)
      const before = listed(project)
      expect(new Set(before.map((d) => `${d.path} ${d.name}`)).size).toBe(before.length)
      for (const d of before.filter((x) => x.typeable)) {
        const after = listed(withValue(project, d.path, d.value) as Project)
        const same = after.find((x) => x.path === d.path && x.typeable)
        expect({ path: d.path, ...same }).toMatchObject({
          path: d.path,
          value: expect.closeTo(d.value, 6),
          kind: 'typed',
        })
      }
    })
})

describe('the settings of a job', () => {
  it('are the defaults with their source, or what the job sets', () => {
    const project = withValue(projectOf(demo('pier-lantern')), 'thresholds/clearance/value', 0.3) as Project
    const settings = settingsOf(answerTo(project).assembly)
    expect(settings.find((s) => s.id === 'clearance')).toMatchObject({ value: 0.3, usual: 0.15, kind: 'typed' })
    expect(settings.find((s) => s.id === 'part-gap')).toMatchObject({ kind: 'default', unit: 'mm' })
  })

  it('tell what the printer does, and who says so', () => {
    const [figures] = printFiguresOf(answerTo(demo('weir-lantern')).assembly)
    expect(figures).toMatchObject({ sled: 'main', error: { inside: 0.1, outside: 0.1 }, density: undefined })
    expect(figures?.leastWallSource).not.toBe('')
    const [bare] = printFiguresOf(answerTo({ ...demo('weir-lantern'), printer: [] }).assembly)
    expect(bare?.error.from).toContain(bare?.process ?? 'a process')
  })
})
