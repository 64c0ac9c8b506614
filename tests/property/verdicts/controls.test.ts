import { beforeAll, describe, expect, it } from 'vitest'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import type { Kernel } from '../../../geometry/kernel/manifold.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { type Fault, type Judged, judgeJob } from '../../prove/judge.ts'
import { randomJob } from '../../prove/random-job.ts'
import { seedsFrom } from './jobs.ts'

const seeds = seedsFrom(1, 16)
let kernel: Kernel
beforeAll(async () => {
  kernel = await loadKernel()
})

/** What the truth says to a product that is asked something else than the job. */
const judgedWith = (asked?: (project: ProjectInput) => ProjectInput): Judged[] =>
  seeds.flatMap((seed) => {
    const judged = judgeJob(randomJob(seed), loadPresets(), kernel, asked ? { asked } : {})
    return typeof judged === 'string' ? [] : [judged]
  })

const faultsOf = (judged: readonly Judged[], kind: Fault['kind'], check: string): Fault[] =>
  judged.flatMap((j) => j.faults.filter((f) => f.kind === kind && f.id.startsWith(check)))

const withThreshold = (id: string, value: number) => (project: ProjectInput) =>
  ({
    ...project,
    thresholds: [...(project.thresholds ?? []).filter((t) => t.id !== id), { id, value }],
  }) as ProjectInput

const withoutIntrusions = (project: ProjectInput): ProjectInput => ({
  ...project,
  features: [],
  sleds: (project.sleds ?? []).map((s) => ({
    ...s,
    windows: (s.windows ?? []).filter((w) => w.for?.startsWith('parts/')),
  })),
})

const withWiderBores = (project: ProjectInput): ProjectInput =>
  withThreshold(
    'ovality',
    0,
  )({
    ...project,
    joints: (project.joints ?? []).map((joint) => ({ ...joint, play: undefined })),
    sections: (project.sections ?? []).map((section) => ({ ...section, eccentricity: undefined })),
  })

describe(`the truth catches a product that is wrong on purpose, seeds ${seeds[0]} to ${seeds.at(-1)}`, () => {
  it('leaves most jobs to be judged, with every verdict among them', () => {
    const judged = judgedWith()
    expect(judged.length).toBeGreaterThan(0.8 * seeds.length)
    expect(new Set(judged.map((j) => j.verdict))).toEqual(new Set(['clear', 'unsure', 'clash']))
    expect(judged.flatMap((j) => j.faults)).toEqual([])
  })

  it.each([
    ['asks for too little clearance', withThreshold('clearance', 0), ['way-in', 'clearance']],
    ['asks for too little between parts', withThreshold('part-gap', 0), ['packing']],
    ['does not see what sticks into the bore', withoutIntrusions, ['way-in', 'clearance']],
    ['forgets play, eccentricity and ovality', withWiderBores, ['way-in']],
  ] as const)('that %s: false clears', (_, asked, checks) => {
    const judged = judgedWith(asked)
    for (const check of checks) expect(faultsOf(judged, 'false clear', check).length).toBeGreaterThan(0)
  })

  it.each([
    ['asks for too much clearance', withThreshold('clearance', 0.8), ['way-in', 'clearance']],
    ['asks for too much between parts', withThreshold('part-gap', 1), ['packing']],
  ] as const)('that %s: false clashes', (_, asked, checks) => {
    const judged = judgedWith(asked)
    for (const check of checks) expect(faultsOf(judged, 'false clash', check).length).toBeGreaterThan(0)
  })
})
