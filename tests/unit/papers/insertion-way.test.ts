import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { demos } from '../../../src/job/demos/index.ts'
import { type InsertionWay, insertionWays } from '../../../src/papers/insertion-way.ts'
import { shiftAt } from '../../../src/papers/way-shift.ts'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { evenly } from '../../evenly.ts'
import { perfect, sure } from '../checks/judged.ts'
import { answerTo } from '../job/demo-answer.ts'
import { assemblyOf as resolved } from '../resolve/project-of.ts'

const answers = new Map(demos.map((d) => [d.name, answerTo(d.project)]))

interface Neck {
  /** Rear bore, neck and what lies before it, by radius. */
  readonly rear: number
  readonly neck: number
  /** Where the neck begins. */
  readonly at: number
  /** The sled's ring, by radius and length; it ends so far behind the sled's nose. */
  readonly ring: number
  readonly length: number
  readonly behind: number
  readonly end: 'rear' | 'blade'
}

const usual: Neck = { rear: 15, neck: 13, at: 40, ring: 14, length: 5, behind: 5, end: 'rear' }

/** A tube of 150 with a neck, and a sled from 20 to 110 with a ring near its nose: the end that goes in first. */
function necked(n: Neck): ProjectInput {
  const neck = { id: 'neck', name: 'neck', length: sure(10), diameter: sure(2 * n.neck) }
  const [outer, inner] = [
    { id: 'outer', name: 'outer bore', length: sure(n.at), diameter: sure(2 * n.rear) },
    { id: 'inner', name: 'inner bore', diameter: sure(2 * n.rear) },
  ]
  const mirrored = n.end === 'blade'
  const front = mirrored ? 40 + n.behind + n.length : 110 - n.behind
  return {
    format: 'sledwright',
    version: 1,
    sections: [
      {
        id: 'body',
        name: 'body',
        length: sure(150),
        bore: mirrored ? [inner, neck, outer] : [outer, neck, inner],
      },
    ],
    sleds: [
      {
        id: 'main',
        name: 'sled',
        from: mirrored ? 40 : 20,
        to: mirrored ? 130 : 110,
        diameter: sure(20),
        rings: [{ id: 'ring', z: front - n.length, length: n.length, diameter: sure(2 * n.ring) }],
      },
    ],
    insertions: [{ id: 'in', moves: 'sleds/main', through: { of: 'sections/body', end: n.end }, lateral: 'axis' }],
    printer: perfect,
  }
}

const only = (project: ProjectInput): InsertionWay => {
  const ways = insertionWays(resolved(project))
  expect(ways).toHaveLength(1)
  return ways[0] as InsertionWay
}
const near = (way: InsertionWay, depth: number) =>
  way.samples.reduce((a, b) => (Math.abs(b.depth - depth) < Math.abs(a.depth - depth) ? b : a))

describe('the way in, step by step', () => {
  it.each([...answers.keys()])('agrees with the findings of %s', (name) => {
    const { assembly, findings } = answers.get(name) as NonNullable<ReturnType<typeof answers.get>>
    const ways = insertionWays(assembly)
    expect(ways.map((w) => w.insertion)).toEqual(assembly.insertions.map((i) => i.id))
    for (const way of ways) {
      const own = findings.filter((f) => f.id.startsWith(`way-in:${way.insertion}:`))
      const worst = Math.min(...way.samples.map((s) => s.worst))
      const told = Math.min(...own.map((f) => f.margin.worst + f.limit))
      // Between two depths looked at it may be tighter by no more than the way between them.
      expect(worst).toBeGreaterThanOrEqual(told - 1e-6)
      expect(worst).toBeLessThan(told + 0.3)
      expect(Math.min(...way.samples.map((s) => s.gap))).toBeGreaterThanOrEqual(
        Math.min(...own.map((f) => f.margin.nominal + f.limit)) - 1e-6,
      )
      expect(way.touches.some((t) => t.overlap > 0)).toBe(own.some((f) => f.margin.nominal + f.limit < 0))
      for (const s of way.samples) expect(s.worst).toBeLessThanOrEqual(s.gap + 1e-9)
    }
  })

  it('stops the one that clashes on its way in where the finding says that it does', () => {
    const { assembly, findings } = answers.get('weir-lantern') as NonNullable<ReturnType<typeof answers.get>>
    const [way] = insertionWays(assembly)
    const finding = findings.find((f) => f.id === 'way-in:sled-in:sleds/main')
    const [touch] = way?.touches ?? []
    if (!way || !touch || !finding) throw new Error('no touch')
    expect(finding.why).toContain(`first comes against it at depth ${touch.depth.toFixed(1)} mm`)
    expect(finding.why).toContain(`overlapping by up to ${touch.overlap.toFixed(2)}`)
    expect(finding.at?.z).toBe(touch.at.z)
    expect(touch).toMatchObject({ mover: 'sled', obstacle: 'mouth thread', parts: finding.parts })
    // The depth is found to 0.01.
    const at = way.samples.findIndex((s) => s.depth === touch.depth)
    expect(Math.abs(way.samples[at]?.gap ?? 1)).toBeLessThan(0.01)
    for (const s of way.samples.slice(0, at)) expect(s.gap).toBeGreaterThan(0)
    expect(way.samples[at + 1]?.gap).toBeLessThan(0)
  })

  it('comes against a neck where the ring meets it: with its nose 5 ahead, at 45', () => {
    const way = only(necked(usual))
    expect(way).toMatchObject({ from: -2, to: 110, heading: 'blade', moves: 'sleds/main', unit: 'sleds/main' })
    expect(way.touches).toHaveLength(1)
    expect(way.touches[0]).toMatchObject({ depth: expect.closeTo(45, 1), overlap: expect.closeTo(1, 6) })
    expect(way.touches[0]?.at).toMatchObject({ z: expect.closeTo(40, 1) })
    // The ring of 14 in the bore of 15; then the way left to the neck; then a ring of 14 in a neck of 13.
    expect(near(way, 30).gap).toBeCloseTo(1, 6)
    const close = near(way, 44.5)
    expect(close.gap).toBeCloseTo(45 - close.depth, 6)
    expect(near(way, 50).gap).toBeCloseTo(-1, 6)
    expect(near(way, 80)).toMatchObject({ gap: expect.closeTo(1, 6), mover: 'sled', obstacle: 'inner bore' })
  })

  it('counts depths down where the unit goes in towards the rear', () => {
    // The mouth at 150, the neck from 110 down, the nose at 40 with the ring 5 behind it.
    const way = only(necked({ ...usual, end: 'blade' }))
    expect(way).toMatchObject({ heading: 'rear', to: 130, from: 130 + (150 - 40) + 2 })
    expect(way.samples[0]?.depth).toBe(way.from)
    expect(way.samples.at(-1)?.depth).toBe(way.to)
    // The ring's nose-side face at 110 puts the nose at 105 and the other end 90 behind it.
    expect(way.touches[0]).toMatchObject({ depth: expect.closeTo(195, 1), overlap: expect.closeTo(1, 6) })
    expect(shiftAt(way, way.to)).toBe(0)
    expect(shiftAt(way, way.from)).toBe(112)
  })

  const seed = 20261201
  it(`touches where it must, and nowhere else, for any neck and ring, from both ends (seed ${seed})`, () => {
    const limit = 0.15
    fc.assert(
      fc.property(
        fc.record({
          rear: fc.constant(15),
          neck: evenly(12, 14.8),
          at: evenly(20, 60),
          ring: evenly(11, 14.5),
          length: evenly(1, 10),
          // A ring at the very nose has its chamfer, and meets the neck later.
          behind: evenly(1, 8),
          end: fc.constantFrom('rear' as const, 'blade' as const),
        }),
        (n) => {
          // Within a hundredth of the limits either answer is right.
          const over = n.ring - n.neck
          fc.pre(Math.abs(over) > 0.01 && Math.abs(over + limit) > 0.01)
          const way = only(necked(n))
          const [touch] = way.touches
          if (over < -limit) return touch === undefined
          const travelled = touch ? Math.abs(touch.depth - way.from) - 2 : Number.NaN
          // Too near is found a little earlier than against, by no more than the limit.
          expect(travelled).toBeLessThan(n.at + n.behind + 0.02)
          expect(travelled).toBeGreaterThan(n.at + n.behind - 0.02 - (over > 0 ? 0 : limit))
          expect(touch?.overlap).toBeCloseTo(Math.max(0, over), 6)
          return true
        },
      ),
      { seed, numRuns: 60 },
    )
  })

  it('a tube is drawn over a unit that stands still', () => {
    const project: ProjectInput = {
      ...necked(usual),
      sections: [
        { id: 'core', length: sure(10), bore: [{ id: 'b', diameter: sure(30) }] },
        {
          id: 'tube',
          length: sure(140),
          bore: [
            { id: 'neck', name: 'neck', length: sure(5), diameter: sure(27) },
            { id: 'wide', diameter: sure(32) },
          ],
        },
      ],
      insertions: [
        { id: 'over', moves: 'sections/tube', through: { of: 'sections/core', end: 'blade' }, lateral: 'axis' },
      ],
    }
    const [over, assumed] = insertionWays(resolved(project)).toSorted((a, b) => a.moves.localeCompare(b.moves))
    if (!over) throw new Error('no way')
    expect(over).toMatchObject({ moves: 'sections/tube', unit: 'sleds/main', heading: 'blade' })
    expect(over.touches[0]).toMatchObject({ obstacle: 'neck', overlap: expect.closeTo(0.5, 6) })
    // The unit has not gone in: the tube stands so much farther towards the blade.
    expect(shiftAt(over, over.from)).toBe(over.to - over.from)
    expect(assumed).toMatchObject({ moves: 'sleds/main', insertion: 'main-in' })
  })

  it('leaves away what is not there yet', () => {
    const absent = (name: string) =>
      insertionWays((answers.get(name) as NonNullable<ReturnType<typeof answers.get>>).assembly).map((w) => w.absent)
    expect(absent('pier-lantern')).toEqual([['sections/pommel', 'parts/switch']])
    expect(absent('ferry-lantern')).toEqual([['sections/pommel', 'screws/retention', 'parts/switch']])
    expect(absent('buoy-lantern')).toEqual([['sleds/body', 'sections/body'], []])
  })
})
