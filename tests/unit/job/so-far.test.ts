import { describe, expect, it } from 'vitest'
import { newJob } from '../../../src/job/new-job.ts'
import { soFar } from '../../../src/job/so-far.ts'
import type { Project } from '../../../src/project/schema/project.ts'

const tube = (id: string, length: string) => ({ id, name: id, length, bore: [{ id: 'bore' }] })
const pin = {
  id: 'pin',
  kind: 'intrusion' as const,
  on: 'sections/body',
  at: { z: { of: 'sections/body', by: '' } },
  shape: { form: 'pin' as const, diameter: '3' },
}
const begun: Project = {
  ...newJob('Trial'),
  sections: [tube('body', '150'), tube('head', '')],
  joints: [{ id: 'body-head', kind: 'threaded', rear: 'body', blade: 'head' }],
  features: [pin],
}

describe('a job that is still being measured', () => {
  it('counts what is there, and says what it waits for', () => {
    const { project, waiting } = soFar(begun)
    expect(project.sections.map((s) => s.id)).toEqual(['body'])
    expect([project.joints, project.features, project.sleds]).toEqual([[], [], []])
    expect(waiting.map((p) => p.path)).toEqual(['features/pin/at/z/by', 'sections/head/length', 'parts'])
  })

  it('leaves the one section there is, so that its length is asked for', () => {
    const { project } = soFar(newJob('Trial'))
    expect(project.sections).toHaveLength(1)
  })

  it('leaves what something else stands on', () => {
    const named = { ...begun, features: [{ ...pin, on: 'sections/head', at: { z: '12' } }] }
    expect(soFar(named).project.sections.map((s) => s.id)).toEqual(['body', 'head'])
    const hidden = { ...begun, states: [{ id: 'closed', without: ['features/pin'] }] }
    expect(soFar(hidden).project.features).toHaveLength(1)
  })

  it.each(['bore', 'outside'] as const)(
    'leaves out a step just added, until the one before it has a length: %s',
    (list) => {
      const steps = [
        { id: 'a', diameter: '31' },
        { id: 'b', diameter: '' },
      ]
      const section = { ...tube('body', '150'), outside: [{ diameter: '38' }], [list]: steps }
      const job = { ...begun, sections: [section], joints: [], features: [], sleds: [], insertions: [] }
      const { project, waiting } = soFar(job)
      expect(project.sections[0]?.[list]).toEqual([steps[0]])
      expect(waiting.map((p) => p.path)).toEqual([`sections/body/${list}/a/length`])
      const told = { ...job, sections: [{ ...section, [list]: [{ ...steps[0], length: '100' }, steps[1]] }] }
      expect(soFar(told)).toEqual({ project: told, waiting: [] })
    },
  )

  it('leaves a whole job as it is', () => {
    const whole = { ...begun, sections: [tube('body', '150')], joints: [], features: [], sleds: [], insertions: [] }
    expect(soFar(whole)).toEqual({ project: whole, waiting: [] })
  })
})
