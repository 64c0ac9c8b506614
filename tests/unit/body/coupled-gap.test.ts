import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Body, Shape } from '../../../src/body/body.ts'
import { gapAt } from '../../../src/body/gap-at.ts'
import { pairOf } from '../../../src/body/pair.ts'
import { exact, type Quantity, type Spread } from '../../../src/quantity/quantity.ts'
import { evenly } from '../../evenly.ts'

/*
 * A spread that makes a body larger and moves it as well: at its worst a gap is no more than anywhere in the interval,
 * as a loop over it finds (computed).
 */

const spread = (path: string, half: number): Spread => ({
  path,
  kind: 'unknown',
  minus: half,
  plus: half,
  distribution: 'rectangular',
  source: 'measured',
  from: 'a test',
})

type Gains = readonly number[]

/** nominal + Σ gain · spread, or its value where the spreads have these. */
function sum(nominal: number, gains: Gains, spreads: readonly Spread[], at?: readonly number[]): Quantity {
  if (at) return exact(gains.reduce((n, g, i) => n + g * (at[i] as number), nominal))
  return { nominal, terms: gains.flatMap((gain, i) => (gain === 0 ? [] : [{ spread: spreads[i] as Spread, gain }])) }
}

const body = (id: string, shape: Shape): Body => ({ id, of: id, name: id, shape })
const along = { z0: exact(0), z1: exact(10) }

interface Case {
  readonly spreads: readonly Spread[]
  readonly moving: (at?: readonly number[]) => Body
  readonly still: Body
}

const least = ({ moving, still, spreads }: Case): number => {
  const steps = spreads.length > 1 ? 24 : 200
  const ways = spreads.reduce<number[][]>(
    (list, s) =>
      list.flatMap((v) => Array.from({ length: steps + 1 }, (_, i) => [...v, s.plus * ((2 * i) / steps - 1)])),
    [[]],
  )
  return Math.min(...ways.map((at) => gapAt(pairOf(moving(at), still), 'nominal').lo))
}

const told = ({ moving, still }: Case): number => gapAt(pairOf(moving(), still), 'worst').lo

const block = (spreads: readonly Spread[], place: [Gains, Gains], size: [Gains, Gains]) => (at?: readonly number[]) =>
  body('parts/moving', {
    kind: 'box',
    ...along,
    x: sum(0, place[0], spreads, at),
    y: sum(0, place[1], spreads, at),
    halfWidth: sum(2, size[0], spreads, at),
    halfHeight: sum(1, size[1], spreads, at),
    facing: 90,
  })

const gain = evenly(-1, 1)
const gains = (n: number) => fc.array(gain, { minLength: n, maxLength: n })
const positive = (n: number) => fc.array(evenly(0, 0.7), { minLength: n, maxLength: n })

const obstacles = fc.oneof(
  fc
    .record({ x: evenly(-6, 6), y: evenly(-6, 6), r: evenly(0.1, 2) })
    .map(({ x, y, r }) =>
      body('parts/still', { kind: 'round', ...along, x: exact(x), y: exact(y), r0: exact(r), r1: exact(r) }),
    ),
  fc
    .record({ x: evenly(-6, 6), y: evenly(-6, 6), w: evenly(0.1, 2), facing: evenly(0, 90) })
    .map(({ x, y, w, facing }) =>
      body('parts/still', {
        kind: 'box',
        ...along,
        x: exact(x),
        y: exact(y),
        halfWidth: exact(w),
        halfHeight: exact(0.5),
        facing,
      }),
    ),
  evenly(4, 7).map((r) =>
    body('sections/still', { kind: 'bore', ...along, x: exact(0), y: exact(0), r0: exact(r), r1: exact(r) }),
  ),
)

describe('a coupled spread', () => {
  it.each([
    [1, 20261],
    [2, 20262],
  ])('tells no more than the least gap inside its interval: %i at once, seed %i', (n, seed) => {
    const cases = fc.record({
      halves: fc.array(evenly(0.01, 0.6), { minLength: n, maxLength: n }),
      place: fc.tuple(gains(n), gains(n)),
      size: fc.tuple(positive(n), positive(n)),
      still: obstacles,
    })
    fc.assert(
      fc.property(cases, ({ halves, place, size, still }) => {
        const spreads = halves.map((h, i) => spread(`parts/moving/${i}`, h))
        const made: Case = { spreads, moving: block(spreads, place, size), still }
        fc.pre(least(made) > 0)
        expect(told(made)).toBeLessThanOrEqual(least(made) + 1e-9)
      }),
      { seed, numRuns: n > 1 ? 60 : 150 },
    )
  })

  it('whose corner passes another between the middle and an end, by hand', () => {
    // Its upper right corner runs from (1.6, 1.12) by (2, 1) to (2.4, 0.88), under the other's lower left one at (2.2, 1.3).
    const spreads = [spread('parts/moving/height', 0.4)]
    const still = body('parts/still', {
      kind: 'box',
      ...along,
      x: exact(2.7),
      y: exact(2.3),
      halfWidth: exact(0.5),
      halfHeight: exact(1),
      facing: 90,
    })
    const made: Case = { spreads, moving: block(spreads, [[1], [-0.6]], [[0], [0.3]]), still }
    expect(least(made)).toBeCloseTo(0.3448, 3)
    expect(told(made)).toBeLessThanOrEqual(least(made) + 1e-9)
  })

  it('costs little where the gap runs evenly: a rod pushed to a wall', () => {
    const spreads = [spread('parts/rod/diameter', 0.1)]
    const rod = (at?: readonly number[]) =>
      body('parts/rod', {
        kind: 'round',
        ...along,
        x: sum(3, [-0.5], spreads, at),
        y: exact(0),
        r0: sum(4, [0.5], spreads, at),
        r1: sum(4, [0.5], spreads, at),
      })
    const still = body('parts/still', {
      kind: 'box',
      ...along,
      x: exact(-1.6),
      y: exact(0),
      halfWidth: exact(2),
      halfHeight: exact(0.3),
      facing: 0,
    })
    const made: Case = { spreads, moving: rod, still }
    expect(least(made) - told(made)).toBeGreaterThanOrEqual(0)
    expect(least(made) - told(made)).toBeLessThan(0.002)
  })
})
