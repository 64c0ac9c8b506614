import { describe, expect, it } from 'vitest'
import { newJob } from '../../../src/job/new-job.ts'
import { soFar } from '../../../src/job/so-far.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import { listNames } from '../../../src/project/format.ts'
import { checkProject } from '../../../src/project/read.ts'
import type { Project } from '../../../src/project/schema/project.ts'
import { resolve } from '../../../src/resolve/resolve.ts'

const problemsOf = (project: Project) => {
  const found = resolve(project, loadPresets())
  return found.ok ? [] : found.problems
}

describe('a new job', () => {
  it('has every list, and its name where the papers look for it', () => {
    const job = newJob('Quay lantern')
    expect(listNames.filter((list) => !Array.isArray(job[list]))).toEqual([])
    expect([job.job[0]?.name, job.hilts[0]?.name]).toEqual(['Quay lantern', 'Quay lantern'])
  })

  it('lacks nothing but the length it asks for first', () => {
    const read = checkProject({ ...newJob('x'), sections: [{ ...newJob('x').sections[0], length: 100 }] })
    expect(read.ok ? [] : read.problems).toEqual([])
    expect(problemsOf(soFar(newJob('x')).project).map((p) => p.path)).toEqual(['sections/body/length'])
  })

  it('is a new one each time', () => {
    expect(newJob('x')).toEqual(newJob('x'))
    expect(newJob('x').sections).not.toBe(newJob('x').sections)
  })
})

describe('a job so far', () => {
  const begun = (extra: Partial<Project> = {}): Project => ({
    ...newJob('x'),
    sections: [{ id: 'body', length: 100, bore: [{ id: 'bore', diameter: 30 }] }],
    ...extra,
  })

  it('leaves out a sled with nothing on it, and its move, and says what it waits for', () => {
    const { project, waiting } = soFar(begun())
    expect([project.sleds, project.insertions]).toEqual([[], []])
    expect(waiting).toMatchObject([{ code: 'missing', path: 'parts' }])
    expect(problemsOf(project)).toEqual([])
  })

  it('keeps the moves of everything else', () => {
    const plug = { id: 'plug-in', moves: 'parts/plug' }
    const { project } = soFar(begun({ insertions: [...newJob('x').insertions, plug] }))
    expect(project.insertions).toEqual([plug])
  })

  it.each<[string, Partial<Project>]>([
    ['two typed ends', { sleds: [{ id: 'main', from: 10, to: 60 }] }],
    ['a part that names it', { parts: [{ id: 'cell', kind: 'cell', on: 'sleds/main' }] }],
    ['a part that names nothing: it sits on the first sled', { parts: [{ id: 'cell', kind: 'cell' }] }],
    ['wires that name it', { wires: [{ id: 'w', sled: 'main', diameter: 1 }] }],
  ])('keeps a sled with %s', (_what, extra) => {
    const job = begun(extra)
    expect(soFar(job)).toEqual({ project: job, waiting: [] })
  })

  it('leaves out a second sled that waits, though parts sit on the first', () => {
    const job = begun({
      sleds: [
        { id: 'main', from: 10, to: 60 },
        { id: 'chamber', name: 'chamber unit', from: 70 },
      ],
      parts: [{ id: 'cell', kind: 'cell' }],
    })
    const { project, waiting } = soFar(job)
    expect(project.sleds.map((s) => s.id)).toEqual(['main'])
    expect(waiting.map((w) => [w.path, w.hint])).toEqual([['parts', expect.stringContaining('chamber unit')]])
  })

  it('does not change the job it was given', () => {
    const job = begun()
    const before = structuredClone(job)
    soFar(job)
    expect(job).toEqual(before)
  })
})
