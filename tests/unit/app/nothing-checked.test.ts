import { describe, expect, it } from 'vitest'
import { nothingChecked } from '../../../src/app/findings/nothing-checked.ts'
import { newJob } from '../../../src/job/new-job.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import { JobBench } from '../../../src/worker/job-bench.ts'
import { demo, projectOf } from '../job/demo-answer.ts'

const bench = new JobBench({
  presets: async () => loadPresets(),
  press: () => Promise.reject(new Error('nothing is built here')),
  reader: () => Promise.reject(new Error('nothing is read here')),
})

async function reportOf(project: Parameters<typeof bench.judge>[0]) {
  const judged = await bench.judge(project, { theta: 0 })
  if (!judged.ok) throw new Error(JSON.stringify(judged.problems))
  return judged.value
}

describe('a job in which nothing was checked', () => {
  it('is a hilt that is measured and empty', async () => {
    const job = newJob('Empty')
    const [body] = job.sections
    if (!body) throw new Error('a new job has no section')
    const report = await reportOf({
      ...job,
      sections: [{ ...body, length: 120, bore: [{ id: 'bore', diameter: 30 }] }],
    })
    expect(nothingChecked(report)).toBe(true)
  })

  it('is none with findings, nor one with a check that was left out for want of a reading', async () => {
    expect(nothingChecked(await reportOf(projectOf(demo('pier-lantern'))))).toBe(false)
    const { notChecked } = await reportOf(projectOf(demo('landing-lantern')))
    expect(notChecked).not.toEqual([])
    expect(nothingChecked({ findings: [], notChecked })).toBe(false)
  })
})
