import { describe, expect, it } from 'vitest'
import type { Mesh } from '../../../geometry/mesh/mesh.ts'
import { RayTree } from '../../../geometry/mesh/ray-tree.ts'
import { rngOf } from '../../prove/rng.ts'

/** Loose triangles in a block of 40, some of them long strips, as along a round body. */
function looseTriangles(random: () => number, count: number): Mesh {
  const vertices = new Float32Array(9 * count)
  for (let i = 0; i < count; i++) {
    const [x, y, z] = [40 * random(), 40 * random(), 40 * random()]
    const long = i % 3 === 0 ? 60 : 3
    for (let c = 0; c < 3; c++)
      vertices.set([x + 3 * random(), y + 3 * random(), z + (c === 1 ? long : 3) * random()], 9 * i + 3 * c)
  }
  return {
    vertices,
    triangles: Uint32Array.from({ length: 3 * count }, (_, i) => i),
    made: new Uint16Array(count),
  }
}

/** The nearest crossing of a ray with the plane of each triangle that lies inside it, from the signs of three volumes. */
function bySigns(m: Mesh, o: number[], d: number[], reach: number): { t: number; triangle: number } {
  const best = { t: Number.POSITIVE_INFINITY, triangle: -1 }
  const far = o.map((x, k) => x + 1000 * (d[k] as number))
  for (let i = 0; i < m.triangles.length / 3; i++) {
    const [a, b, c] = [0, 1, 2].map((k) => [...m.vertices.subarray(9 * i + 3 * k, 9 * i + 3 * k + 3)]) as number[][]
    const sides = [
      [a, b],
      [b, c],
      [c, a],
    ].map(([p, q]) => Math.sign(sixfold(o, far, p as number[], q as number[])))
    if (new Set(sides).size !== 1) continue
    const [h0, h1] = [
      sixfold(a as number[], b as number[], c as number[], o),
      sixfold(a as number[], b as number[], c as number[], far),
    ]
    const t = (1000 * h0) / (h0 - h1)
    if (t > 1e-5 && t < reach && t < best.t) Object.assign(best, { t, triangle: i })
  }
  return best
}

function sixfold(p: number[], ...others: number[][]): number {
  const [ux, uy, uz, vx, vy, vz, wx, wy, wz] = others.flatMap((x) => x.map((n, k) => n - (p[k] as number))) as Nine
  return ux * (vy * wz - vz * wy) - uy * (vx * wz - vz * wx) + uz * (vx * wy - vy * wx)
}

type Nine = [number, number, number, number, number, number, number, number, number]

describe('the first triangle a ray meets', () => {
  it('is the one found by asking every triangle, near and far (seed 517)', () => {
    const random = rngOf(517).next
    const m = looseTriangles(random, 300)
    const tree = new RayTree(m)
    let hits = 0
    for (let i = 0; i < 300; i++) {
      const o = [40 * random(), 40 * random(), 40 * random()]
      const away = [random() - 0.5, random() - 0.5, random() - 0.5]
      const straight = [0, 0, 0]
      straight[i % 3] = i % 2 ? 1 : -1
      const raw = i % 4 === 0 ? straight : away
      const d = raw.map((n) => n / Math.hypot(...raw))
      const reach = i % 5 === 0 ? 6 : 100
      const t = tree.first(
        o[0] as number,
        o[1] as number,
        o[2] as number,
        d[0] as number,
        d[1] as number,
        d[2] as number,
        reach,
      )
      const expected = bySigns(m, o, d, reach)
      expect(tree.struck).toBe(expected.triangle)
      if (expected.triangle < 0) continue
      expect(t).toBeCloseTo(expected.t, 6)
      hits++
    }
    expect(hits).toBeGreaterThan(30)
  })

  it('of two at one place is the one that comes first in the mesh', () => {
    const flat = [0, 0, 1, 9, 0, 1, 0, 9, 1]
    const twice: Mesh = {
      vertices: Float32Array.from([...flat, ...flat]),
      triangles: Uint32Array.from([0, 1, 2, 3, 4, 5]),
      made: new Uint16Array(2),
    }
    const tree = new RayTree(twice)
    expect(tree.first(1, 1, 0, 0, 0, 1, 6)).toBe(1)
    expect(tree.struck).toBe(0)
  })

  it('is none where there is nothing to meet', () => {
    const tree = new RayTree({ vertices: new Float32Array(), triangles: new Uint32Array(), made: new Uint16Array() })
    expect(tree.first(0, 0, 0, 0, 0, 1, 6)).toBe(Number.POSITIVE_INFINITY)
    expect(tree.struck).toBe(-1)
  })
})
