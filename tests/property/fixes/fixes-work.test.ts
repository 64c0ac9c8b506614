import { expect, it } from 'vitest'
import { answer } from '../../../src/job/answer.ts'
import { demos } from '../../../src/job/demos/index.ts'
import { provenFixes } from '../../../src/job/proven-fixes.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import { applyFix } from '../../../src/project/apply-fix.ts'
import { checkProject } from '../../../src/project/read.ts'
import type { Project } from '../../../src/project/schema/project.ts'
import { randomJob } from '../../prove/random-job.ts'

/** A fix that carries a number is a promise: typed in, the finding it stands beside holds. */

const presets = loadPresets()
/** Rounding of the numbers that are offered never costs more, mm. */
const rounding = 1e-6

interface Broken {
  readonly finding: string
  readonly fix: string
  readonly after: string
}

/** Fixes that were tried, and those that did not do what they said. */
function tried(project: Project): {
  readonly count: number
  readonly mended: number
  readonly open: number
  readonly broken: readonly Broken[]
} {
  const before = answer(project, presets)
  if (!before.ok) return { count: 0, mended: 0, open: 0, broken: [] }
  const fixes = provenFixes({ project, presets, ...before.value, answerTo: (next) => answer(next, presets) })
  const open = before.value.findings.filter((f) => f.margin.worst < 0 && f.status !== 'advice')
  const mended = open.filter((f) => fixes.get(f.id)?.some((x) => x.value !== undefined)).length
  let count = 0
  const broken: Broken[] = []
  for (const f of before.value.findings)
    for (const fix of fixes.get(f.id) ?? []) {
      const next = fix.value === undefined ? undefined : applyFix(project, fix)
      if (!next) continue
      count++
      const after = answer(next, presets)
      const left = after.ok ? after.value.findings.find((x) => x.id === f.id)?.margin.worst : undefined
      const unseen = after.ok && after.value.notChecked.some((n) => before.value.notChecked.every((o) => o.id !== n.id))
      const held = after.ok && !unseen && (left === undefined || left >= -rounding)
      if (!held)
        broken.push({
          finding: `${f.id} ${f.margin.worst.toFixed(3)}`,
          fix: `${fix.text} ${fix.path} ${JSON.stringify(fix.value)}`,
          after: after.ok
            ? (left ?? 0).toFixed(3)
            : after.problems.map((p) => `${p.path} ${p.got} ${p.hint}`).join('; '),
        })
    }
  return { count, mended, open: open.length, broken }
}

const read = (input: unknown): Project | undefined => {
  const checked = checkProject(input)
  return checked.ok ? checked.value.project : undefined
}

it.each(demos.map((d) => d.name))('every number offered for %s works', (name) => {
  const project = read(demos.find((d) => d.name === name)?.project)
  expect(project).toBeDefined()
  expect(tried(project as Project).broken).toEqual([])
})

const seeds = Array.from({ length: 40 }, (_, i) => 9000 + i)
it(`numbers offered for random jobs work (seeds ${seeds[0]} to ${seeds.at(-1)})`, () => {
  const all = seeds.flatMap((seed) => {
    const project = read(randomJob(seed))
    return project ? [{ seed, ...tried(project) }] : []
  })
  // Jobs that are clear offer nothing: enough of these must not be.
  expect(all.reduce((n, x) => n + x.count, 0)).toBeGreaterThan(40)
  const sum = (of: 'mended' | 'open') => all.reduce((n, x) => n + x[of], 0)
  // What does not hold mostly has a number that works.
  expect(sum('mended') / sum('open')).toBeGreaterThan(0.5)
  expect(all.flatMap((x) => x.broken.map((b) => ({ seed: x.seed, ...b })))).toEqual([])
})
