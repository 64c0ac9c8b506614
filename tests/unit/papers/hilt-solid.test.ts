import { describe, expect, it } from 'vitest'
import { demos } from '../../../src/job/demos/index.ts'
import { hiltSolid } from '../../../src/papers/hilt-solid.ts'
import type { MetalLeaf } from '../../../src/papers/metal-leaves.ts'
import { simpleSolid } from '../../../src/papers/simple-solid.ts'
import { sure } from '../checks/judged.ts'
import { answerTo } from '../job/demo-answer.ts'
import { assemblyOf, tube } from '../resolve/project-of.ts'

const round = (leaves: readonly MetalLeaf[]) =>
  leaves.reduce((sum, l) => sum + (l.angles.at(-1) as number) - (l.angles[0] as number), 0)
const radii = (l: MetalLeaf) => l.rings.flat().map(([, r]) => r)

describe('the hilt as simple bodies', () => {
  it('has a plain tube as one leaf all around, from bore to outside', () => {
    const { metal } = hiltSolid(assemblyOf(tube()))
    expect(metal).toHaveLength(1)
    expect(metal[0]).toMatchObject({ section: 'sections/body', angles: [0, 360], order: 0, sides: [[], []] })
    const all = radii(metal[0] as MetalLeaf)
    expect([Math.min(...all), Math.max(...all)]).toEqual([15, 17.5])
  })

  it('leaves no metal in a through slot, over its own length only', () => {
    const slotted = tube({
      features: [
        {
          id: 'slot',
          kind: 'slot',
          on: 'sections/body',
          at: { z: 60, theta: 350 },
          shape: { form: 'slot', length: sure(20), width: sure(15) },
        },
      ],
    })
    const { metal } = hiltSolid(assemblyOf(slotted))
    // 15 wide in a bore of 15 radius: asin(7.5 / 15) = 30° to each side.
    const within = metal.filter((l) => Math.abs((l.angles[0] as number) - 320) < 0.01)
    expect(within).toHaveLength(2)
    expect(within.map((l) => l.angles.at(-1))).toEqual([expect.closeTo(380, 6), expect.closeTo(380, 6)])
    const zs = within.map((l) => l.rings[0]?.map(([z]) => z) ?? [])
    expect(zs.map((z) => [Math.min(...z), Math.max(...z)])).toEqual([
      [0, 50],
      [70, 180],
    ])
    const rest = metal.filter((l) => !within.includes(l))
    expect(round(rest)).toBeCloseTo(300, 6)
    // Beside the slot only its own edges are drawn: 50 to 70 in bore and outside, and its ends.
    expect(rest[0]?.sides.map((s) => s.map(([a, b]) => [a, b].toSorted((p, q) => p[0] - q[0])))).toEqual(
      [0, 1].map(() => [
        [
          [expect.closeTo(50, 6), 15],
          [expect.closeTo(70, 6), 15],
        ],
        [
          [expect.closeTo(50, 6), 17.5],
          [expect.closeTo(70, 6), 17.5],
        ],
      ]),
    )
    expect(within.map((l) => l.sides.map((s) => s.length))).toEqual([
      [1, 1],
      [1, 1],
    ])
  })

  it.each(demos.map((d) => [d.name, d.project] as const))('has all parts of %s, and metal all around', (_, project) => {
    const { assembly } = answerTo(project)
    const { metal, things } = hiltSolid(assembly)
    for (const part of assembly.parts) expect(things.map((t) => t.id)).toContain(part.id)
    for (const { id } of assembly.sections) {
      const leaves = metal.filter((l) => l.section === `sections/${id}`)
      expect(round(leaves)).toBeGreaterThanOrEqual(360 - 1e-6)
      for (const l of leaves) {
        expect(new Set(l.rings.map((r) => r.length)).size).toBe(1)
        expect(l.rings).toHaveLength(l.angles.length)
        expect(Math.min(...radii(l))).toBeGreaterThanOrEqual(0)
      }
    }
  })

  it('says what each thing moves with', () => {
    const ferry = demos.find((d) => d.name === 'ferry-lantern')
    const { things } = hiltSolid(answerTo(ferry?.project).assembly)
    const rides = Object.fromEntries(things.map((t) => [t.id, t.rides]))
    expect(rides).toMatchObject({
      'parts/cell': 'sleds/main',
      'parts/switch': 'parts/switch',
      'screws/retention': expect.stringMatching(/^sections\//),
    })
  })

  it('shows a pin with its own numbers, and a bore by other means', () => {
    const { assembly } = answerTo(demos.find((d) => d.name === 'pier-lantern')?.project)
    const button = assembly.parts.find((p) => p.id === 'parts/switch')?.bodies[0]
    expect(button && simpleSolid(button)).toMatchObject({ shape: 'pin', theta: 0 })
    expect(assembly.bores.map((b) => simpleSolid(b.body)).filter(Boolean)).toEqual([])
  })
})
