import { beforeAll, describe, expect, it } from 'vitest'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import type { Kernel } from '../../../geometry/kernel/manifold.ts'
import { answer } from '../../../src/job/answer.ts'
import { trySled } from '../../../src/job/build-sled.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import { checkProject } from '../../../src/project/read.ts'
import { randomJob } from '../../prove/random-job.ts'

/*
 * What the gate refuses for a wall thinner than the process prints, no finding may have called clear: the walls told from
 * the plan against the walls measured on the mesh.
 */

const seeds = Array.from({ length: 60 }, (_, i) => i + 1)
let kernel: Kernel
const judged = new Map<number, readonly Walls[]>()
beforeAll(async () => {
  kernel = await loadKernel()
})

interface Walls {
  readonly told: boolean
  /** A nest was refused for the wall that it lacks: then that is told once. */
  readonly refused: boolean
  readonly measured: boolean
}

/** For each sled of a job whether a finding tells of a thin wall, and whether its mesh has one. */
function wallsOf(seed: number): Walls[] {
  const read = checkProject(randomJob(seed))
  const found = read.ok ? answer(read.value.project, loadPresets()) : read
  if (!found.ok) return []
  return found.value.assembly.sleds.flatMap(({ id }): Walls[] => {
    const tried = trySled(kernel, found.value.assembly, id)
    if (!tried.ok) return []
    const told = found.value.findings.find((f) => f.id === `sled-wall:${id}`)?.status === 'clash'
    const refused = found.value.findings.some(
      (f) => f.id.startsWith(`buildable:${id}:`) && f.title.includes('no room in it for') && f.status === 'clash',
    )
    return [{ told, refused, measured: tried.value.problems.some((p) => p.got.includes('a wall of')) }]
  })
}

describe(`walls of random jobs, seeds ${seeds[0]} to ${seeds.at(-1)}`, () => {
  it.each(seeds)('seed %i', (seed) => {
    const walls = wallsOf(seed)
    judged.set(seed, walls)
    expect(walls.filter((w) => w.measured && !w.told && !w.refused)).toEqual([])
  })

  it('some are thin, and most are not', () => {
    const all = [...judged.values()].flat()
    expect(all.filter((w) => w.measured).length).toBeGreaterThan(5)
    expect(all.filter((w) => w.told && !w.measured).length).toBeLessThan(0.05 * all.length)
  })
})
