import { inch } from '../entry/units.ts'

/**
 * Thread tolerances as the standards compute them, before they round their tables. All in mm.
 *
 * Metric: ISO 965-1:1998, clause 13 (formulas read in a public restatement). Its tables are rounded to preferred
 * numbers; the tests show how far the two lie apart (within 7 %). Inch: ASME B1.1-2003, clause 5.8 (read in a public
 * restatement), which gives every limit of the tests' published rows.
 */

/** Grades of the minor diameter of an internal thread, as shares of grade 6. */
const minorGrades: Readonly<Record<string, number>> = { 4: 0.63, 5: 0.8, 6: 1, 7: 1.25, 8: 1.6 }

/** TD1, tolerance of the minor diameter of an internal metric thread; undefined for a grade that is not 4 to 8. */
export function minorTolerance(pitch: number, grade: string): number | undefined {
  const share = minorGrades[grade]
  return share === undefined ? undefined : share * minorTolerance6(pitch)
}

function minorTolerance6(p: number): number {
  const fine = (x: number) => (433 * x - 190 * x ** 1.22) / 1000
  const coarse = (x: number) => (230 * x ** 0.7) / 1000
  if (p <= 0.8) return fine(p)
  if (p >= 1) return coarse(p)
  // No standard pitch lies between; a straight line keeps the tolerance growing with the pitch.
  return fine(0.8) + ((p - 0.8) / 0.2) * (coarse(1) - fine(0.8))
}

/** Fundamental deviation of the positions G and g, and of H and h, as a positive distance. */
export function deviation(pitch: number, position: 'G' | 'g' | 'H' | 'h'): number {
  return position === 'G' || position === 'g' ? (15 + 11 * pitch) / 1000 : 0
}

/** Td, tolerance of the major diameter of an external metric thread, grade 6. */
export const majorTolerance = (pitch: number): number => (180 * pitch ** (2 / 3) - 3.15 / Math.sqrt(pitch)) / 1000

/** Td2, tolerance of the pitch diameter of an external metric thread, grade 6. */
export const pitchTolerance = (pitch: number, major: number): number => (90 * pitch ** 0.4 * major ** 0.1) / 1000

/** Tolerance of the minor diameter of an internal Unified thread, classes 1B, 2B and 3B. */
export function minorToleranceInch(pitch: number, major: number, tight: boolean): number {
  const [p, d] = [pitch / inch, major / inch]
  const small = 0.05 * p ** (2 / 3) + (0.03 * p) / d - 0.002
  const loose = 0.25 * p - 0.4 * p ** 2
  const least = p < 0.08 ? 0.23 * p - 1.5 * p ** 2 : 0.12 * p
  if (tight) return inch * clamp(small, least, 0.394 * p)
  return inch * (d < 0.25 ? clamp(small, loose, 0.394 * p) : p > 0.25 ? 0.15 * p : loose)
}

/** Tolerances and allowance of an external Unified thread over an engagement of nine pitches. */
export function externalInch(pitch: number, major: number, grade: '1A' | '2A' | '3A') {
  const [p, d] = [pitch / inch, major / inch]
  const two = 0.0015 * (Math.cbrt(d) + Math.sqrt(9 * p) + 10 * p ** (2 / 3))
  const share = { '1A': 1.5, '2A': 1, '3A': 0.75 }[grade]
  return {
    allowance: grade === '3A' ? 0 : inch * 0.3 * two,
    pitchTolerance: inch * share * two,
    majorTolerance: inch * (grade === '1A' ? 0.09 : 0.06) * p ** (2 / 3),
  }
}

/** The upper bound wins: it keeps the tolerance inside the thread. */
const clamp = (v: number, low: number, high: number): number => Math.min(Math.max(v, low), high)
