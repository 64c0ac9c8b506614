import { bad, good, type Outcome, problem } from '../problem/problem.ts'
import { least, most, type Quantity } from '../quantity/quantity.ts'
import { checkReadings, type Reading, stations } from './readings.ts'
import { type RoundOptions, type RoundStation, roundStation, type Side } from './round-station.ts'
import { boreFromJaws } from './tool.ts'

export interface RoundSize {
  /** Of the station that governs: smallest at the worst end for a bore, largest for an outside. */
  readonly quantity: Quantity
  readonly governing: RoundStation
  readonly stations: readonly RoundStation[]
}

/**
 * A bore from readings: repeats at one (z, θ) averaged; different θ are different diameters of a bore that may be
 * oval; stations along z kept apart, the least governs. `worst` of the quantity is the small end of the least
 * diameter, `best` the large end of the greatest.
 *
 * Fails with too-few-readings, not-a-number, out-of-range or too-large. What would be worth reading next is in `ask`.
 */
export const boreFromReadings = (readings: readonly Reading[], options: RoundOptions): Outcome<RoundSize> =>
  roundFromReadings(readings, options, -1)

/** The same for an outside diameter, where the greatest decides. Jaw flats play no part. */
export const outsideFromReadings = (readings: readonly Reading[], options: RoundOptions): Outcome<RoundSize> =>
  roundFromReadings(readings, options, 1)

/** Wider flats than any calliper's jaws, mm. */
const widestFlat = 10

function roundFromReadings(given: readonly Reading[], options: RoundOptions, side: Side): Outcome<RoundSize> {
  const { tool, path, jawFlat, ovalityAllowance } = options
  const checked = checkReadings(given, options)
  if (!checked.ok) return checked
  if (!(ovalityAllowance >= 0 && ovalityAllowance <= 10)) {
    const hint = 'A machined tube is round within about 0.1 mm.'
    return bad(problem('out-of-range', `${path}/ovalityAllowance`, ovalityAllowance, '0 to 10 mm', hint))
  }
  const smallest = Math.min(...given.map((r) => r.value))
  if (jawFlat !== undefined && !(jawFlat >= 0 && jawFlat <= Math.min(widestFlat, smallest / 2))) {
    const limit = `0 to ${Math.min(widestFlat, smallest / 2)} mm`
    return bad(problem('out-of-range', `${path}/jawFlat`, jawFlat, limit, 'Measure the flat across the jaw tip.'))
  }
  const corrects = side < 0 && tool.jaws && jawFlat !== undefined
  const readings = corrects ? given.map((r) => ({ ...r, value: boreFromJaws(r.value, jawFlat) })) : given
  const groups = stations(readings)
  const all = groups.map((g) => roundStation(g, groups.length > 1, options, side))
  const decides = (s: RoundStation) => (side < 0 ? least(s.quantity) : -most(s.quantity))
  const governing = all.reduce((a, b) => (decides(b) < decides(a) ? b : a))
  return good({ quantity: governing.quantity, governing, stations: all })
}
