import { describe, expect, it, vi } from 'vitest'
import { createJobStore, held } from '../../../src/app/work/job-store.ts'
import { demos } from '../../../src/job/demos/index.ts'
import { withValue } from '../../../src/project/path.ts'
import { checkProject } from '../../../src/project/read.ts'
import type { Project } from '../../../src/project/schema/project.ts'

const project = ((): Project => {
  const read = checkProject(demos[0]?.project)
  if (!read.ok) throw new Error('a demo is sound')
  return read.value.project
})()
const part = `parts/${project.parts[0]?.id}/note`
const section = `sections/${project.sections[0]?.id}/note`
const set = (path: string, value: unknown) => (p: Project) => withValue(p, path, value)

describe('the job on the table', () => {
  it('goes back step by step, and forward again, to the very same job', () => {
    const job = createJobStore(project)
    job.edit(set(part, 'a'))
    const one = job.get()
    job.edit(set(section, 'b'))
    const two = job.get()
    job.undo()
    expect(job.get()).toEqual(one)
    job.undo()
    expect(job.get()).toEqual(project)
    job.redo()
    job.redo()
    expect(job.get()).toEqual(two)
  })

  it('takes the keys of one word as one step, and those of another place or after a pause as another', () => {
    vi.useFakeTimers()
    const job = createJobStore(project)
    for (const text of ['a', 'ab', 'abc']) job.edit(set(part, text), part)
    for (const text of ['x', 'xy']) job.edit(set(section, text), section)
    vi.advanceTimersByTime(5000)
    job.edit(set(section, 'xyz'), section)
    vi.useRealTimers()
    expect(job.history.getState().pastStates).toHaveLength(3)
    job.undo()
    expect(job.get().sections[0]?.note).toBe('xy')
    job.undo()
    expect(job.get().sections[0]?.note).toBeUndefined()
    expect(job.get().parts[0]?.note).toBe('abc')
    job.undo()
    expect(job.get()).toEqual(project)
  })

  it('takes what is held in the hand as one step, however long it is held', () => {
    vi.useFakeTimers()
    const job = createJobStore(project)
    for (const text of ['a', 'ab', 'abc']) {
      job.edit(set(part, text), `${held}part`)
      vi.advanceTimersByTime(60_000)
    }
    vi.useRealTimers()
    job.undo()
    expect(job.get()).toEqual(project)
    expect(job.history.getState().pastStates).toHaveLength(0)
  })

  it('changes nothing, and has nothing to undo, where a change leads nowhere', () => {
    const job = createJobStore(project)
    expect(job.edit(set('parts/nobody/note', 'a'))).toBe(false)
    expect(job.get()).toBe(project)
    expect(job.history.getState().pastStates).toHaveLength(0)
  })

  it('keeps of each step only the lists it changed, so that two hundred steps are little to store', () => {
    const job = createJobStore(project)
    job.edit(set(part, 'a'))
    expect(Object.keys(job.history.getState().pastStates[0] ?? {})).toEqual(['parts'])
  })

  it('takes up a history again', () => {
    const before = createJobStore(project)
    before.edit(set(part, 'a'))
    before.edit(set(part, 'b'))
    before.undo()
    const { pastStates, futureStates } = before.history.getState()
    const job = createJobStore(before.get(), structuredClone({ past: pastStates, future: futureStates }))
    job.redo()
    expect(job.get().parts[0]?.note).toBe('b')
    job.undo()
    job.undo()
    expect(job.get()).toEqual(project)
  })

  it('cannot undo into another job', () => {
    const job = createJobStore(project)
    job.edit(set(part, 'a'))
    job.replace(project)
    job.undo()
    expect(job.get()).toEqual(project)
    expect(job.history.getState().pastStates).toHaveLength(0)
  })
})
