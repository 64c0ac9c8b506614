import { expect, it } from 'vitest'
import { loadPresets } from '../../../src/presets/presets.ts'
import { JobBench } from '../../../src/worker/job-bench.ts'
import { demo, projectOf } from '../job/demo-answer.ts'

const never = () => Promise.reject(new Error('not asked for'))

it('offers what the presets have, as data that a message can carry', async () => {
  const bench = new JobBench({ presets: async () => loadPresets(), press: never, reader: never })
  const choices = await bench.choices()
  expect(structuredClone(choices)).toEqual(choices)
  expect(choices.tools.filter((t) => t.jaws).map((t) => t.id)).toEqual(['calliper-inside'])
  expect(choices.parts.cell.map((c) => c.id)).toContain('cell-18650-flat')
})

it('asks for an emptied length, and not for the places of all that lies beyond it', async () => {
  const bench = new JobBench({ presets: async () => loadPresets(), press: never, reader: never })
  const project = projectOf(demo('ferry-lantern'))
  const sections = project.sections.map((s) => (s.id === 'rear' ? { ...s, length: '' } : s))
  const judged = await bench.judge({ ...project, sections }, { theta: 0 })
  expect(judged.ok ? [] : judged.problems.map((p) => p.path)).toEqual(['sections/rear/length'])
  // What is wrong for itself is told all the same.
  const parts = project.parts.map((p) => (p.id === 'cell' ? { ...p, preset: 'cell-of-nobody' } : p))
  const wrong = await bench.judge({ ...project, sections, parts }, { theta: 0 })
  const told = wrong.ok ? [] : wrong.problems.map((p) => `${p.code} ${p.path}`)
  expect(told).toContain('unknown-preset parts/cell/preset')
  expect(told).toContain('missing sections/rear/length')
  expect(told.join()).not.toContain('outside-hilt')
})
