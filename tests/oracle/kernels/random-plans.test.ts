import { beforeAll, describe, expect, it } from 'vitest'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import { disagreements, type Kernels } from './agreement.ts'
import { loadOpenCascade } from './opencascade-body.ts'
import { randomPlan } from './random-plan.ts'

/** `PLANS=2000 npx vitest run tests/oracle/kernels` looks at more of them, `FIRST_SEED=5001` at others. */
const count = Number(process.env.PLANS ?? 100)
const first = Number(process.env.FIRST_SEED ?? 1)

let kernels: Kernels
beforeAll(async () => {
  kernels = { kernel: await loadKernel(), oc: await loadOpenCascade() }
})

const plansFrom = (seed: number, n: number) => Array.from({ length: n }, (_, i) => randomPlan(seed + i))
const plans = plansFrom(first, count)

describe('JSCAD and OpenCascade make the same body of a random plan', () => {
  it.each(plans.map((body, i) => ({ seed: first + i, what: `${body.name} of ${body.items.length} solids`, body })))(
    'seed $seed: a $what',
    ({ body }) => {
      expect(disagreements(kernels, body)).toEqual([])
    },
  )
})

describe('the random plans of the first hundred seeds', () => {
  const usual = plansFrom(1, 100)
  it('are of every kind and hold every shape, added and cut, in both stages', () => {
    const seen = new Set(usual.flatMap((p) => p.items.map((x) => `${x.op} ${x.solid.shape} ${x.stage ?? 1}`)))
    for (const shape of ['cylinder', 'box', 'ring-sector', 'spoke', 'plate', 'extruded'])
      expect(seen).toContain(`cut ${shape} 1`)
    for (const late of [
      'add ring-sector 2',
      'add box 2',
      'add cylinder 2',
      'add plate 2',
      'cut cylinder 2',
      'cut box 2',
    ])
      expect(seen).toContain(late)
    expect(new Set(usual.map((p) => p.name))).toEqual(new Set(['cage', 'cradle', 'disc']))
  })
})
