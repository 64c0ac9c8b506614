import { beforeAll, expect, it } from 'vitest'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import type { Kernel } from '../../../geometry/kernel/manifold.ts'
import { trySled } from '../../../src/job/build-sled.ts'
import { builder, cell, job } from '../sled/planned.ts'
import { answerTo } from './demo-answer.ts'

builder()
let kernel: Kernel
beforeAll(async () => {
  kernel = await loadKernel()
})

const sled = (cellAt: number) =>
  job({ splits: [{ id: 's', z: 60, joint: 'plain' }] }, { parts: [cell({ at: { z: cellAt } })] })

function built(z: number, facets?: number) {
  const tried = trySled(kernel, answerTo(sled(z)).assembly, 'main', facets)
  if (!tried.ok) throw new Error(JSON.stringify(tried.problems))
  return tried.value.bodies.map(({ mesh, report }) => structuredClone({ mesh, report }))
}

it('a sled is the same whatever was built before it', () => {
  const first = built(20)
  expect(built(20)).toEqual(first)
  const other = built(22)
  expect(other[0]?.report.volume).not.toBe(first[0]?.report.volume)
  // More than are kept, so that the first is made anew.
  for (let z = 23; z < 28; z++) built(z)
  expect(built(20)).toEqual(first)
  expect(built(22)).toEqual(other)
  expect(built(20, 192)[0]?.mesh.triangles.length).toBeGreaterThan(first[0]?.mesh.triangles.length ?? 0)
})
