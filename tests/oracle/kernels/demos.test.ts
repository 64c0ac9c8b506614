import { beforeAll, describe, expect, it } from 'vitest'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import { disagreements, type Kernels } from './agreement.ts'
import { demoBodies } from './demo-plans.ts'
import { loadOpenCascade } from './opencascade-body.ts'

let kernels: Kernels
beforeAll(async () => {
  kernels = { kernel: await loadKernel(), oc: await loadOpenCascade() }
})

const bodies = demoBodies()

describe('JSCAD and OpenCascade make the same body of every demo', () => {
  it.each(bodies.map(({ demo, body }) => ({ demo, body, name: body.name, n: body.items.length })))(
    '$demo, $name: $n solids, engraved text and all',
    ({ body }) => {
      expect(disagreements(kernels, body)).toEqual([])
    },
  )
})
