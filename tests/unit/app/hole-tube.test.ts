import { describe, expect, it } from 'vitest'
import { holeTube } from '../../../src/app/solid/hole-tube.ts'
import { holed } from '../../../src/app/solid/holed.ts'
import type { Turned } from '../../../src/app/solid/turned.ts'
import { wallHoles } from '../../../src/worker/wall-holes.ts'
import { answerTo, demo } from '../job/demo-answer.ts'

/** A tube of 10 to 12 from 0 to 30, all around. */
const ring = [
  [0, 10],
  [30, 10],
  [30, 12],
  [0, 12],
] as const
const metal: Turned = { angles: [0, 360], rings: [ring, ring] }
const hole = { id: 'features/vent', section: 'sections/body', z: 15, theta: 30, radius: 4 }

describe('the wall of a round hole', () => {
  it('has both its rims on the metal, as far from its middle as its radius', () => {
    const tube = holeTube(metal, hole, 0, 360)
    expect(tube?.there.every(Boolean)).toBe(true)
    const w = (30 * Math.PI) / 180
    for (const [rim, r] of [
      [tube?.inner, 10],
      [tube?.outer, 12],
    ] as const)
      for (const [x, y, z] of rim ?? []) {
        expect(Math.hypot(x, y)).toBeCloseTo(r, 9)
        expect(Math.hypot(y * Math.cos(w) - x * Math.sin(w), z - 15)).toBeCloseTo(4, 9)
        expect(x * Math.cos(w) + y * Math.sin(w)).toBeGreaterThan(0)
      }
  })

  it('is cut with the metal it goes through', () => {
    // A wedge that ends in the middle of the hole leaves one half of it.
    const half = holeTube(metal, hole, 30, 360)?.there.filter(Boolean).length ?? 0
    expect(half).toBeGreaterThan(18)
    expect(half).toBeLessThan(26)
    expect(holeTube(metal, hole, 90, 300)?.there.some(Boolean)).toBe(false)
  })

  it('is drawn once: in the piece that has its middle, and only where there is metal', () => {
    expect(holeTube({ ...metal, angles: [90, 270] }, hole, 0, 360)).toBeUndefined()
    expect(holeTube(metal, { ...hole, z: 40 }, 0, 360)).toBeUndefined()
    const over = holeTube(metal, { ...hole, z: 28 }, 0, 360)
    expect(over?.there.some(Boolean)).toBe(true)
    expect(over?.there.every(Boolean)).toBe(false)
  })
})

describe('metal with holes', () => {
  it('has a program for each set of them', () => {
    const shader = {
      vertexShader: 'void main() {\n#include <begin_vertex>\n}',
      fragmentShader: 'void main() {\n#include <clipping_planes_fragment>\n}',
    }
    const plain = { ...shader }
    const compile = (holes: Parameters<typeof holed>[0], of: typeof shader) =>
      (holed(holes).onBeforeCompile as (s: typeof shader) => void)(of)
    compile([], plain)
    expect(plain).toEqual(shader)
    compile([hole, { ...hole, z: 20 }], shader)
    expect(shader.vertexShader).toContain('inHilt = position;')
    expect(shader.fragmentShader.match(/discard;/g)).toHaveLength(2)
    expect(holed([hole]).key).not.toBe(holed([{ ...hole, radius: 5 }]).key)
  })

  it('are those of the job that go through, as long as they are there', () => {
    const job = demo('pier-lantern')
    const round = { on: 'sections/body', kind: 'hole', at: { z: 150, theta: 90 } } as const
    const features = [
      { ...round, id: 'vent', shape: { form: 'round', diameter: 6 } },
      { ...round, id: 'dimple', kind: 'recess', shape: { form: 'round', diameter: 4, depth: 1 } },
    ] as const
    const { assembly } = answerTo({ ...job, features: [...(job.features ?? []), ...features] })
    expect(wallHoles(assembly)).toEqual([
      { id: 'features/vent', section: 'sections/body', z: 150, theta: 90, radius: 3 },
    ])
    const states = assembly.states.map((state) => ({ ...state, without: new Set(['features/vent']) }))
    expect(wallHoles({ ...assembly, states })).toEqual([])
  })
})
