import { describe, expect, it } from 'vitest'
import type { Orientation } from '../../../geometry/mesh/orientation.ts'
import { orientationText } from '../../../src/job/orientation-text.ts'

const good = { foot: 500, overhang: 100, tip: 20 }
const hung = { foot: 300, overhang: 420.4, tip: 12 }
const pointed = { foot: 12, overhang: 0, tip: 3 }
const slender = { foot: 80, overhang: 0, tip: 2.4 }
const o = (
  down: Orientation['down'],
  reason: Orientation['reason'],
  rear: Orientation['chosen'],
  blade: Orientation['chosen'],
  chosen = down === 'rear' ? rear : blade,
): Orientation => ({ down, reason, chosen, ends: { rear, blade } })

describe('why a body is printed the way it is', () => {
  it.each([
    [
      o('rear', 'less-overhang', good, hung),
      'Upright on its rear end: 100 mm² hang over; the other way up 420 mm² would.',
    ],
    [
      o('blade', 'only-foot', pointed, good),
      'Upright on its blade end, turned over: the other end gives no foot to stand on (12 mm²).',
    ],
    [
      o('rear', 'only-foot', good, slender),
      'Upright on its rear end: the other end gives no foot to stand on (80 mm², falls when tipped by 2°).',
    ],
    [
      o('blade', 'split-face', good, good),
      'Upright on its blade end, turned over: it is the face of the split, and about as much hangs over either way.',
    ],
    [
      o('rear', 'wider-foot', good, { ...good, foot: 300 }),
      "Upright on its rear end: its foot has 500 mm², the other end's 300 mm².",
    ],
    [o('rear', 'as-drawn', good, good), 'Upright on its rear end: either end would do.'],
    [
      o(270, 'no-foot', pointed, slender, { foot: 900, overhang: 210, tip: 30 }),
      'On its side, θ 270° down: no end gives a foot of 40 mm² that it does not fall over (rear 12 mm², blade 80 mm², ' +
        'falls when tipped by 2°). It lies on 900 mm² and wants supports under 210 mm².',
    ],
  ])('%#', (orientation, text) => {
    expect(orientationText(orientation)).toBe(text)
  })
})
