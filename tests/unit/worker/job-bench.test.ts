import { expect, it } from 'vitest'
import { loadPresets } from '../../../src/presets/presets.ts'
import { JobBench } from '../../../src/worker/job-bench.ts'

const never = () => Promise.reject(new Error('not asked for'))

it('offers what the presets have, as data that a message can carry', async () => {
  const bench = new JobBench({ presets: async () => loadPresets(), press: never, reader: never })
  const choices = await bench.choices()
  expect(structuredClone(choices)).toEqual(choices)
  expect(choices.tools.filter((t) => t.jaws).map((t) => t.id)).toEqual(['calliper-inside'])
  expect(choices.parts.cell.map((c) => c.id)).toContain('cell-18650-flat')
})
