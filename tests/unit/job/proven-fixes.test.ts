import { describe, expect, it } from 'vitest'
import type { Finding, Fix, NotChecked } from '../../../src/checks/finding.ts'
import { newJob } from '../../../src/job/new-job.ts'
import { provenFixes } from '../../../src/job/proven-fixes.ts'
import { good } from '../../../src/problem/problem.ts'
import { valueAt } from '../../../src/project/path.ts'
import type { Project } from '../../../src/project/schema/project.ts'

const windows = 'sleds/main/windows'
const finding = (id: string, worst: number, fix: Fix[]): Finding =>
  ({
    id,
    title: id,
    status: worst >= 0 ? 'clear' : 'clash',
    margin: { worst, nominal: worst, best: worst },
    fix,
  }) as never

/** Something sticks in: on the way it needs a window of any gap, in place one of 0.95 mm. */
function findingsOf(project: Project): readonly Finding[] {
  const gap = valueAt(project, `${windows}/pin/gap`)
  const there = valueAt(project, `${windows}/pin`) !== undefined
  const cut: Fix = { text: 'Cut a window.', path: windows, value: { id: 'pin', for: 'features/pin' } }
  const widen: Fix = { text: 'A gap of 0.95 mm around it.', path: `${windows}/pin/gap`, value: 0.95 }
  return [
    finding('way', there ? 1 : -2, there ? [] : [cut]),
    finding('place', there ? Number(gap ?? 0.5) - 0.95 : -1, [there ? widen : cut]),
  ]
}

describe('a fix that puts something in', () => {
  const project = newJob('x')
  const proven = provenFixes({
    project,
    findings: findingsOf(project),
    notChecked: [],
    answerTo: (p) => good({ findings: findingsOf(p), notChecked: [] }),
  })

  it.each(['way', 'place'])('makes it as large as every open finding needs it: %s', (id) => {
    expect(proven.get(id)?.map((f) => [f.text, f.value])).toEqual([
      ['Cut a window. A gap of 0.95 mm around it.', { id: 'pin', for: 'features/pin', gap: 0.95 }],
    ])
  })
})

describe('a fix after which nobody looks any more', () => {
  const project = newJob('x')
  const findings = [finding('place', -1, [{ text: 'Cut a window.', path: windows, value: { id: 'pin', for: 'x/y' } }])]
  const offered = (notChecked: readonly NotChecked[]) =>
    provenFixes({ project, findings, notChecked: [], answerTo: () => good({ findings: [], notChecked }) }).get('place')

  it('is not offered: the finding is gone, and a check stays open in its place', () => {
    expect(offered([{ id: 'unseen' } as never])).toEqual([])
    expect(offered([])).toHaveLength(1)
  })
})
