import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { loadKernel } from '../../geometry/kernel/load.ts'
import type { Kernel } from '../../geometry/kernel/manifold.ts'
import { answer } from '../../src/job/answer.ts'
import type { BodyReport } from '../../src/job/body-report.ts'
import { demos } from '../../src/job/demos/index.ts'
import { fileLayouts } from '../../src/job/lay-out.ts'
import { reportOf } from '../../src/job/report.ts'
import { type NamedFile, sledFiles, sledSet } from '../../src/job/sled-files.ts'
import { type SledReport, sledReport } from '../../src/job/sled-report.ts'
import { loadPresets } from '../../src/presets/presets.ts'
import { checkProject } from '../../src/project/read.ts'
import { findReader } from '../run/readers.mjs'
import { readWithAdmesh } from './readers/admesh.ts'
import { readWithSlicer, type SlicerReport } from './readers/prusa-slicer.ts'
import { readThreeMf } from './readers/three-mf.ts'

const admesh = findReader('admesh')
const slicer = findReader('prusa-slicer')
/** What a slicer prints is believed to this share of a volume, and a size to its six decimals. */
const volumeWithin = 1e-4

let kernel: Kernel
let folder: string
beforeAll(async () => {
  kernel = await loadKernel()
  folder = mkdtempSync(join(tmpdir(), 'sledwright-'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

interface Made {
  readonly files: readonly NamedFile[]
  readonly report: SledReport
}

const made = new Map<string, Promise<Made>>()

/** The files of a demo as the command line writes them, those of a clash forced out. */
function filesOf(name: string, layout: (typeof fileLayouts)[number]): Promise<Made> {
  const key = `${name} ${layout}`
  const making = made.get(key) ?? make(name, layout)
  made.set(key, making)
  return making
}

async function make(name: string, layout: (typeof fileLayouts)[number]): Promise<Made> {
  const read = checkProject(demos.find((d) => d.name === name)?.project)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  const { project } = read.value
  const judged = answer(project, loadPresets())
  if (!judged.ok) throw new Error(JSON.stringify(judged.problems))
  const set = sledSet(kernel, judged.value, layout)
  if (!set.ok) throw new Error(JSON.stringify(set.problems))
  const files = await sledFiles(set.value, { base: name, job: name })
  for (const file of files) writeFileSync(join(folder, file.name), file.bytes)
  const report = reportOf(judged.value, { project, unknownFields: [] })
  return { files, report: await sledReport(set.value, files, report) }
}

/** Every STL with the body it must hold, every 3MF with its bodies in their order. */
function expected({ files, report }: Made, ending: '.stl' | '.3mf') {
  return files
    .filter((f) => f.name.endsWith(ending))
    .map((file) => {
      const bodies = report.sleds.find((s) => s.id === file.sled)?.bodies ?? []
      return {
        file,
        path: join(folder, file.name),
        bodies: bodies.filter((b) => file.body === undefined || b.id === file.body),
      }
    })
}

function expectSlicerSees(seen: readonly SlicerReport[], bodies: readonly BodyReport[]): void {
  expect(seen.length).toBe(bodies.length)
  for (const [i, body] of bodies.entries()) {
    const object = seen[i] as SlicerReport
    expect(object).toMatchObject({ manifold: true, parts: 1, openEdges: 0, facets: body.triangles })
    expect(Math.abs(object.volume / body.volume - 1)).toBeLessThan(volumeWithin)
    for (const k of [0, 1, 2] as const)
      expect(object.size[k]).toBeCloseTo((body.bounds.max[k] as number) - (body.bounds.min[k] as number), 4)
  }
}

const cases = demos.flatMap((d) => fileLayouts.map((layout) => [d.name, layout] as const))

describe.skipIf(!admesh)('admesh reads every STL of every demo', () => {
  it.each(cases)('%s, %s: closed, one part, nothing to repair, the volume we report', async (name, layout) => {
    const list = expected(await filesOf(name, layout), '.stl')
    expect(list.length).toBeGreaterThan(0)
    for (const { path, bodies } of list) {
      const [body] = bodies as [BodyReport]
      const report = readWithAdmesh(admesh as string, path)
      expect(report).toMatchObject({ disconnected: 0, degenerate: 0, parts: 1, repairs: 0, facets: body.triangles })
      expect(Math.abs(report.volume / body.volume - 1)).toBeLessThan(volumeWithin)
    }
  })
})

describe.skipIf(!slicer)('prusa-slicer reads every file of every demo', () => {
  it.each(cases)('%s, %s: STL closed, one part, of our size and volume', async (name, layout) => {
    for (const { path, bodies } of expected(await filesOf(name, layout), '.stl'))
      expectSlicerSees(readWithSlicer(slicer as string, path), bodies)
  })

  it.each(cases)(
    '%s, %s: 3MF with each body an object, closed, one part, of our size and volume',
    async (name, layout) => {
      const list = expected(await filesOf(name, layout), '.3mf')
      expect(list.length).toBeGreaterThan(0)
      for (const { path, bodies } of list) expectSlicerSees(readWithSlicer(slicer as string, path), bodies)
    },
  )
})

describe('the rules of the 3MF core specification', () => {
  it.each(cases)('%s, %s: nothing against them, each body under its name', async (name, layout) => {
    for (const { file, bodies } of expected(await filesOf(name, layout), '.3mf')) {
      const { faults, objects } = readThreeMf(file.bytes)
      expect(faults).toEqual([])
      expect(objects.map((o) => o.name?.replace(/^UNPROVEN /, ''))).toEqual(bodies.map((b) => b.name))
      for (const [i, b] of bodies.entries()) {
        expect(objects[i]?.triangles).toBe(b.triangles)
        expect(Math.abs((objects[i]?.volume ?? 0) / b.volume - 1)).toBeLessThan(volumeWithin)
      }
    }
  })
})
