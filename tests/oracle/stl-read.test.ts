import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { loadKernel } from '../../geometry/kernel/load.ts'
import type { Kernel } from '../../geometry/kernel/manifold.ts'
import { answer } from '../../src/job/answer.ts'
import { buildSled, stlOf } from '../../src/job/build-sled.ts'
import { demos } from '../../src/job/demos/index.ts'
import { loadPresets } from '../../src/presets/presets.ts'
import { checkProject } from '../../src/project/read.ts'
import { findReader } from '../run/readers.mjs'
import { readWithAdmesh } from './readers/admesh.ts'

const admesh = findReader('admesh')
let kernel: Kernel
let folder: string

beforeAll(async () => {
  kernel = await loadKernel()
  folder = mkdtempSync(join(tmpdir(), 'sledwright-'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** Every sled of a demo as built bodies. */
function bodiesOf(project: unknown) {
  const read = checkProject(project)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  const judged = answer(read.value.project, loadPresets())
  if (!judged.ok) throw new Error(JSON.stringify(judged.problems))
  return judged.value.assembly.sleds.flatMap((s) => {
    const built = buildSled(kernel, judged.value.assembly, s.id)
    if (!built.ok) throw new Error(JSON.stringify(built.problems))
    return [...built.value.bodies]
  })
}

describe.skipIf(!admesh)('admesh reads the STL of every demo', () => {
  it.each(demos.map((d) => [d.name, d.project] as const))(
    '%s: closed, one part, nothing to repair, the volume we report',
    (name, project) => {
      for (const body of bodiesOf(project)) {
        const file = join(folder, `${name}-${body.id}.stl`)
        writeFileSync(file, stlOf(body))
        const report = readWithAdmesh(admesh as string, file)
        expect(report).toMatchObject({
          disconnected: 0,
          degenerate: 0,
          parts: 1,
          repairs: 0,
          facets: body.report.triangles,
        })
        expect(Math.abs(report.volume / body.report.volume - 1)).toBeLessThan(1e-4)
      }
    },
  )
})
