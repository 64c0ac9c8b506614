import { describe, expect, it } from 'vitest'
import type { Finding, Fix, NotChecked } from '../../../src/checks/finding.ts'
import { newJob } from '../../../src/job/new-job.ts'
import { provenFixes } from '../../../src/job/proven-fixes.ts'
import { good } from '../../../src/problem/problem.ts'
import { valueAt } from '../../../src/project/path.ts'
import type { Project } from '../../../src/project/schema/project.ts'
import { quickPresets } from '../presets/quick-presets.ts'

const windows = 'sleds/main/windows'
const finding = (id: string, worst: number, fix: Fix[]): Finding =>
  ({
    id,
    title: id,
    status: worst >= 0 ? 'clear' : 'clash',
    margin: { worst, nominal: worst, best: worst },
    parts: [],
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
    presets: quickPresets(),
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
    provenFixes({
      project,
      presets: quickPresets(),
      findings,
      notChecked: [],
      answerTo: () => good({ findings: [], notChecked }),
    }).get('place')

  it('is not offered: the finding is gone, and a check stays open in its place', () => {
    expect(offered([{ id: 'unseen' } as never])).toEqual([
      { text: 'No single number that was tried clears this.', path: '' },
    ])
    expect(offered([])?.map((f) => f.text)).toEqual(['Cut a window.'])
  })
})

describe('changes that spoil what others mend', () => {
  const diameter = 'sleds/main/diameter'
  const wider: Fix = { text: '28 wide.', path: diameter, value: 28 }
  const narrower: Fix = { text: '26 wide.', path: diameter, value: 26 }
  const told: Fix = { text: 'Measure it.', path: 'sections/body/length' }
  const shorter: Fix = { text: '60 long.', path: 'sleds/main/to', value: 60 }

  /** A sled that is 27 wide at first: 26 go in, and 28 hold what is in it. */
  function narrow(project: Project): readonly Finding[] {
    const d = Number(valueAt(project, diameter) ?? 27)
    const short = valueAt(project, 'sleds/main/to') === 60
    return [
      finding('in place', short ? 1 : 26 - d, short ? [] : [narrower, told]),
      finding('holds', short ? 1 : d - 28, short ? [] : [wider, told]),
    ]
  }
  function fixesOf(more: readonly Fix[] = []) {
    const project = newJob('x')
    const [first, ...rest] = narrow(project)
    const findings = [{ ...(first as Finding), fix: [...(first?.fix ?? []), ...more] }, ...rest]
    return provenFixes({
      project,
      presets: quickPresets(),
      findings,
      notChecked: [],
      answerTo: (p) => good({ findings: narrow(p), notChecked: [] }),
    })
  }

  it.each([
    ['in place', '26 wide. But then it clashes by more elsewhere: holds.'],
    ['holds', '28 wide. But then it clashes by more elsewhere: in place.'],
  ])('come last and say so, and that no other number was found: %s', (id, weak) => {
    expect(
      fixesOf()
        .get(id)
        ?.map((f) => f.text),
    ).toEqual(['Measure it.', 'No single number that was tried clears this: each leads to another clash.', weak])
    expect(fixesOf().get(id)?.at(-1)?.spoils?.status).toBe('clash')
  })

  it('come after the one that clears all, and nothing more is said then', () => {
    expect(
      fixesOf([shorter])
        .get('in place')
        ?.map((f) => f.text),
    ).toEqual(['60 long.', 'Measure it.', '26 wide. But then it clashes by more elsewhere: holds.'])
  })
})

describe('one size that several findings want changed', () => {
  const at = 'sleds/main/diameter'
  const findingsAt = (d: number): readonly Finding[] => [
    finding('place', 26.7 - d, d > 26.7 ? [{ text: 'At most 26.7.', path: at, value: 26.7 }] : []),
    finding('nest', 23.4 - d, d > 23.4 ? [{ text: 'At most 23.4.', path: at, value: 23.4 }] : []),
  ]
  it('is offered as the number that mends them all', () => {
    const project = newJob('x')
    const proven = provenFixes({
      project,
      presets: quickPresets(),
      findings: findingsAt(28),
      notChecked: [],
      answerTo: (p) => good({ findings: findingsAt(Number(valueAt(p, at) ?? 28)), notChecked: [] }),
    })
    expect(proven.get('place')?.map((f) => f.text)).toEqual(['At most 23.4.'])
    expect(proven.get('nest')?.map((f) => f.text)).toEqual(['At most 23.4.'])
  })
})

describe('a clash of two parts that no number mends', () => {
  it.each([
    [['parts/switch', 'parts/board'], / Move one of the two along or around, or take a smaller one\.$/],
    [['parts/switch', 'sleds/main'], /clears this\.$/],
  ])('says what else there is to do: %s', (parts, words) => {
    const wide: Fix = { text: 'At most 5.', path: 'sleds/main/diameter', value: 5 }
    const clash = { ...finding('two', -3, [wide]), parts }
    const job = { project: newJob('x'), presets: quickPresets(), findings: [clash], notChecked: [] }
    const proven = provenFixes({ ...job, answerTo: () => good({ findings: [clash], notChecked: [] }) })
    expect(proven.get('two')?.map((f) => f.text)).toEqual([expect.stringMatching(words)])
  })
})
