import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bundleDiameter, bundleFactor } from '../../../src/rules/bundle.ts'
import { calculate } from '../../../src/rules/index.ts'
import type { RuleValues } from '../../../src/rules/rule.ts'
import { evenly } from '../../evenly.ts'

type Given = Record<string, number | readonly number[]>

function run(name: string, given: Given): RuleValues {
  const outcome = calculate(name, new Map(Object.entries(given)))
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems))
  return outcome.value
}

function refused(name: string, given: Given) {
  const outcome = calculate(name, new Map(Object.entries(given)))
  if (outcome.ok) throw new Error(JSON.stringify(outcome.value))
  return outcome.problems[0]
}

const number = (values: RuleValues, name: string): number => values[name] as number

describe('smallest bore for a packing', () => {
  it('two equal discs side by side need twice their diameter', () => {
    const out = run('smallest-bore', { discs: [10, 10], discX: [5, -5], clearance: 0 })
    expect(out).toMatchObject({ bore: 20, boreOnAxis: 20, leastGap: 0, between: 'disc 1 and disc 2' })
  })

  it('a rectangle standing on the middle line: (w/2)² + h² = (R − c)², the usual hand formula (computed)', () => {
    const out = run('smallest-bore', { boxWidth: [16], boxHeight: [6], boxX: [3], clearance: 0.15 })
    expect(number(out, 'boreOnAxis')).toBeCloseTo(2 * (Math.hypot(8, 6) + 0.15), 9)
    expect(number(out, 'bore')).toBeCloseTo(2 * (Math.hypot(8, 3) + 0.15), 9)
    expect(number(out, 'shiftX')).toBeCloseTo(-3, 9)
    expect(out['touches']).toBe('box 1')
  })

  it('a box facing 90° has its height along y', () => {
    const out = run('smallest-bore', { boxWidth: [16], boxHeight: [6], boxY: [3], boxFacing: [90], clearance: 0 })
    expect(number(out, 'boreOnAxis')).toBeCloseTo(2 * Math.hypot(8, 6), 9)
  })

  it('the shift it names brings everything into the smaller bore (seed 31)', () => {
    const coordinate = evenly(-10, 10)
    const discs = fc.array(fc.record({ d: evenly(1, 12), x: coordinate, y: coordinate }), {
      minLength: 1,
      maxLength: 6,
    })
    fc.assert(
      fc.property(discs, (list) => {
        const given = { discs: list.map((o) => o.d), discX: list.map((o) => o.x), discY: list.map((o) => o.y) }
        const out = run('smallest-bore', { ...given, clearance: 0 })
        const farthest = Math.max(
          ...list.map((o) => 2 * Math.hypot(o.x + number(out, 'shiftX'), o.y + number(out, 'shiftY')) + o.d),
        )
        expect(farthest).toBeCloseTo(number(out, 'bore'), 6)
        expect(number(out, 'bore')).toBeLessThanOrEqual(number(out, 'boreOnAxis') + 1e-9)
      }),
      { seed: 31, numRuns: 200 },
    )
  })

  it('asks for something to pack, and for lists that belong together', () => {
    expect(refused('smallest-bore', {})).toMatchObject({ code: 'missing', path: 'smallest-bore' })
    expect(refused('smallest-bore', { discs: [5, 6], discX: [1] })).toMatchObject({
      code: 'contradiction',
      path: 'smallest-bore/discX',
    })
    expect(refused('smallest-bore', { boxWidth: [5] })).toMatchObject({ path: 'smallest-bore/boxHeight' })
  })
})

describe('board over an off-centre cell', () => {
  it('is no larger than the best of many places tried one by one (seed 32)', () => {
    const size = (min: number, max: number) => evenly(min, max)
    fc.assert(
      fc.property(size(10, 22), size(4, 40), size(1, 12), size(0, 3), (cell, width, height, gap) => {
        const out = run('board-over-cell', { cell, width, height, gap, clearance: 0 })
        const [low, high] = [cell / 2 + gap, cell / 2 + gap + height]
        const need = (e: number) =>
          2 * Math.max(cell / 2 + Math.abs(e), Math.hypot(width / 2, high - e), Math.hypot(width / 2, low - e))
        expect(need(number(out, 'cellOffset'))).toBeCloseTo(number(out, 'bore'), 6)
        for (let e = -10; e <= 40; e += 0.05) expect(need(e)).toBeGreaterThanOrEqual(number(out, 'bore') - 1e-6)
      }),
      { seed: 32, numRuns: 100 },
    )
  })

  it('its formula, worked by hand: d 18, w 16, h 6, gap 1: t 16, e (64 + 256 − 81)/(2 · 25) = 4.78, R 13.78', () => {
    const out = run('board-over-cell', { cell: 18, width: 16, height: 6, gap: 1, wall: 0.5, clearance: 0.15 })
    expect(number(out, 'cellOffset')).toBeCloseTo(4.78, 9)
    expect(number(out, 'sled')).toBeCloseTo(2 * 14.28, 9)
    expect(number(out, 'bore')).toBeCloseTo(2 * 14.28 + 0.3, 9)
    expect(number(out, 'boardOffset')).toBeCloseTo(13 - 4.78, 9)
    expect(out['touches']).toBe('cell and outer corners')
  })
})

describe('widest channel beside the contents', () => {
  it('beside a centred cell: half of what is left, less both walls', () => {
    expect(number(run('widest-channel', { sled: 30, discs: [20], wall: 0 }), 'diameter')).toBeCloseTo(5, 2)
    expect(number(run('widest-channel', { sled: 30, discs: [20], wall: 1 }), 'diameter')).toBeCloseTo(3, 2)
  })

  it('lies opposite a cell pushed aside, and is 0 where nothing fits', () => {
    const out = run('widest-channel', { sled: 30, discs: [20], discX: [-4], wall: 0 })
    expect(number(out, 'diameter')).toBeCloseTo(9, 2)
    expect(number(out, 'x')).toBeCloseTo(10.5, 1)
    expect(number(out, 'r')).toBeCloseTo(10.5, 1)
    expect(run('widest-channel', { sled: 20, discs: [19], wall: 1.2 })).toMatchObject({ diameter: 0, theta: '' })
  })
})

describe('contacts along the axis', () => {
  const chain = { cellMin: 64.5, cellMax: 65.5, room: 70.5, solid: [3], free: [9], preload: 0.5 }

  it('slack at both ends, and the room that suits both', () => {
    expect(run('axial-chain', chain)).toEqual({
      longest: 2,
      shortest: 2.5,
      roomLeast: 68.5,
      roomMost: 73,
      suits: 'Suits every cell.',
    })
  })

  it.each([
    [{ room: 68 }, 'Too short for the longest cell.'],
    [{ room: 74 }, 'Too long for the shortest cell.'],
    [{ free: [3.6] }, 'No room suits every cell: take a contact with more way between solid and free.'],
    [{ room: 68.5, roomSpread: 0.1 }, 'Too short for the longest cell.'],
    [{ solid: [1, 2], free: [4, 5] }, 'Suits every cell.'],
  ])('%o: %s', (change, suits) => {
    expect(run('axial-chain', { ...chain, ...change })['suits']).toBe(suits)
  })

  it('lengths that contradict each other', () => {
    expect(refused('axial-chain', { ...chain, cellMin: 66 })).toMatchObject({ path: 'axial-chain/cellMin' })
    expect(refused('axial-chain', { ...chain, free: [2] })).toMatchObject({ path: 'axial-chain/free/0' })
    expect(refused('axial-chain', { ...chain, free: [9, 9] })).toMatchObject({ path: 'axial-chain/free' })
  })
})

describe('bundles of wires', () => {
  it('1 to 7 equal wires: 1, 2, 2.155, 2.414, 2.701, 3, 3 diameters (circles packed in a circle; from memory)', () => {
    const published = [1, 2, 2.155, 2.414, 2.701, 3, 3]
    for (const [i, factor] of published.entries()) expect(bundleFactor(i + 1)).toBeCloseTo(factor, 3)
  })

  it('never below the two largest side by side, never fuller than full, never less for one more (seed 33)', () => {
    const wires = fc.array(evenly(0.5, 3), { minLength: 2, maxLength: 20 })
    fc.assert(
      fc.property(wires, (list) => {
        const [a = 0, b = 0] = list.toSorted((x, y) => y - x)
        const d = bundleDiameter(list)
        expect(d).toBeGreaterThanOrEqual(a + b - 1e-9)
        expect(list.reduce((s, w) => s + w * w, 0)).toBeLessThanOrEqual(d * d + 1e-9)
        expect(bundleDiameter([...list, a * 0.5])).toBeGreaterThanOrEqual(d - 1e-9)
      }),
      { seed: 33, numRuns: 300 },
    )
  })

  it('counts by number or by list, and refuses both at once', () => {
    expect(number(run('bundle-diameter', { wires: [1.3], count: 4 }), 'diameter')).toBeCloseTo(1.3 * 2.4142, 3)
    expect(number(run('bundle-diameter', { wires: [1.3, 1.3, 1.3, 1.3] }), 'diameter')).toBeCloseTo(1.3 * 2.4142, 3)
    expect(number(run('bundle-diameter', { wires: [2, 1] }), 'diameter')).toBeCloseTo(3, 9)
    expect(refused('bundle-diameter', { wires: [1, 2], count: 3 })).toMatchObject({ code: 'contradiction' })
    expect(refused('bundle-diameter', { wires: [1], count: 2.5 })).toMatchObject({ code: 'out-of-range' })
  })
})
