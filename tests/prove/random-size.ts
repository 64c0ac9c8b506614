import type { QuantityInput } from '../../src/project/schema/quantity.ts'
import type { Rng } from './rng.ts'

type As = 'bore' | 'outside' | 'length' | 'offset'

/**
 * A dimension in one of the forms people give: a bare number, with a spread (even or not, unknown or varying), as a
 * range, as a text, as readings. `most` bounds the spread where it is written out, mm.
 */
export function randomSize(rng: Rng, value: number, as: As, most = 0.15): QuantityInput {
  const v = Number(value.toFixed(3))
  const [plus, minus] = [rng.between(0, most), rng.between(0, most)]
  const about = rng.chance(0.15) ? { kind: rng.pick(['unknown', 'varies'] as const) } : {}
  const source = rng.chance(0.04) ? { source: 'assumed' as const } : {}
  switch (rng.whole(0, as === 'bore' || as === 'outside' ? 7 : 6)) {
    case 0:
      return v
    case 1:
      return { value: v, plus, minus: plus, ...about, ...source }
    case 2:
      return { value: v, plus, minus, ...about, ...source }
    case 3:
      return { min: round(v - minus), max: round(v + plus), ...about }
    case 4:
      return { min: round(v - minus), max: round(v + plus), nominal: v, ...about }
    case 5:
      return `${v} ±${plus}`
    case 6:
      return { value: v, plus: 0, minus: 0 }
    default:
      return readings(rng, v, as)
  }
}

function readings(rng: Rng, v: number, as: As): QuantityInput {
  const tool = as === 'bore' ? rng.pick(['calliper-inside', 'telescoping-gauge'] as const) : 'calliper-outside'
  const off = (): number => round(v + rng.between(-0.03, 0.03, 3))
  const angles = rng.chance(0.5) ? [0, 60, 120] : rng.chance(0.5) ? [0, 90] : [0]
  return { readings: angles.map((theta) => ({ value: off(), theta })), tool }
}

const round = (n: number): number => Number(n.toFixed(4))
