import { beforeAll, describe, expect, it } from 'vitest'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import type { PlanBody, PlanItem, PlanSolid } from '../../../geometry/plan/plan.ts'
import { disagreements, type Kernels } from './agreement.ts'
import { facetBound } from './facet-bound.ts'
import { jscadBody } from './jscad-body.ts'
import { shellsOf } from './measured.ts'
import { loadOpenCascade, openCascadeBody } from './opencascade-body.ts'

let kernels: Kernels
beforeAll(async () => {
  kernels = { kernel: await loadKernel(), oc: await loadOpenCascade() }
})

const item = (id: string, op: PlanItem['op'], solid: PlanSolid, stage?: 2): PlanItem => ({
  id,
  op,
  solid,
  by: 'sleds/main',
  nest: id,
  dimensions: [],
  ...(stage ? { stage } : {}),
})
const rod = (r: number, z0: number, z1: number, x = 0): PlanSolid => ({
  shape: 'cylinder',
  x,
  y: 0,
  z0,
  z1,
  r0: r,
  r1: r,
})
const bodyOf = (...items: PlanItem[]): PlanBody => ({ id: 'main', name: 'sled', items })

const tube = bodyOf(item('body', 'add', rod(12.5, 0, 40)), item('pocket', 'cut', rod(8, -1, 41)))

describe('what facets may take', () => {
  // REFERENCE section 11, computed: the prism of an N-gon has the share N/(2π)·sin(2π/N), 0.998394 for N = 64.
  it('is 1 − 0.998394 of a cylinder with 64 facets', () => {
    const bound = facetBound(bodyOf(item('body', 'add', rod(3.5, 0, 10))), 0, 10, 64)
    expect(1 - bound / (Math.PI * 3.5 ** 2 * 10)).toBeCloseTo(0.998394, 6)
  })

  it('is taken in full from a tube: polygon in, polygon out, nothing else', () => {
    const n = 96
    const [step, apart] = [(2 * Math.PI) / n, Math.cos(Math.PI / n) ** 2]
    const polygon = (r: number) => (n / 2) * r ** 2 * Math.sin(step)
    const left = 40 * (polygon(12.5) - polygon(8) / apart)
    const exact = openCascadeBody(kernels.oc, tube).volume
    expect(exact).toBeCloseTo(40 * Math.PI * (12.5 ** 2 - 8 ** 2), 6)
    expect(jscadBody(tube, n).volume).toBeCloseTo(left, 6)
    expect(exact - left).toBeCloseTo(facetBound(tube, 0, 40, n), 6)
  })
})

describe('the other kernels read stages as the plan says', () => {
  const staged = bodyOf(
    item('body', 'add', rod(10, 0, 20)),
    item('pocket', 'cut', rod(6, 5, 25)),
    item('pin', 'add', rod(2, 3, 20), 2),
    item('hole', 'cut', rod(1, -1, 21), 2),
  )
  it('adds in the second stage what the first had cut away', () => {
    const volume = Math.PI * (100 * 20 - 36 * 15 + 4 * 15 - 20)
    expect(openCascadeBody(kernels.oc, staged).volume).toBeCloseTo(volume, 5)
    expect(jscadBody(staged, 200).volume / volume).toBeCloseTo(1, 2)
  })
})

describe('they notice', () => {
  const moved = (by: number) => bodyOf(tube.items[0] as PlanItem, item('pocket', 'cut', rod(8 + by, -1, 41)))
  it('a pocket 0.001 mm too wide', () => {
    const found = disagreements(kernels, moved(0.001), tube)
    expect(found.join()).toContain('JSCAD: volume')
  })
  it('a round that is 0.01 mm too narrow, without help from polygons', () => {
    expect(disagreements(kernels, moved(-0.01), tube).join()).toContain('OpenCascade at 192 facets: volume')
  })
  it('a body of two pieces, and a hollow', () => {
    const apart = bodyOf(...tube.items, item('through', 'cut', rod(20, 15, 20)))
    expect(disagreements(kernels, apart, tube).join()).toContain('solids')
    expect(disagreements(kernels, apart)).toEqual([])
    const hollow = bodyOf(item('body', 'add', rod(12, 0, 40)), item('room', 'cut', rod(8, 5, 35)))
    expect(disagreements(kernels, hollow, tube).join()).toContain('hollows')
    expect(disagreements(kernels, hollow)).toEqual([])
    expect(jscadBody(hollow, 96)).toMatchObject({ solids: 1, hollows: 1 })
  })
  it('a length 0.001 mm too short', () => {
    const short = bodyOf(item('body', 'add', rod(12.5, 0, 39.999)), tube.items[1] as PlanItem)
    expect(disagreements(kernels, short, tube).join()).toContain('most z')
  })
})

describe('pieces of a surface', () => {
  const square = (z: number, up: boolean) => {
    const p = [[0, 0, z] as const, [1, 0, z] as const, [1, 1, z] as const, [0, 1, z] as const]
    return up ? p : [...p].reverse()
  }
  it('hang together by corners, also where a seam is open', () => {
    expect(shellsOf([square(1, true), square(0, false)])).toEqual({ solids: 1, hollows: 0 })
    const wall = [[0, 0, 0] as const, [1, 0, 0] as const, [1, 0, 1] as const, [0, 0, 1] as const]
    expect(shellsOf([square(1, true), square(0, false), wall])).toEqual({ solids: 1, hollows: 0 })
  })
})
