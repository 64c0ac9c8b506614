import { bad, good, type Outcome, problem } from '../problem/problem.ts'
import type { Tool } from './tool.ts'

/** One reading: where along the axis (mm) and around it (degrees) the tool stood, as far as that was noted. */
export interface Reading {
  readonly value: number
  readonly z?: number | undefined
  readonly theta?: number | undefined
}

/** How readings are taken together. */
export interface ReadingOptions {
  readonly tool: Tool
  /** Two-sided probability that the interval holds the true size; 0.99 by default. */
  readonly coverage?: number
  /** Path of the field in the project: names the spread, and heads the path of every problem. */
  readonly path: string
}

export const usualCoverage = 0.99
/** Readings closer than this are of one place: mm along, degrees around. */
const sameZ = 0.05
const sameTheta = 0.5
/** More readings than anybody takes of one bore; guards the arithmetic against a hostile file. */
const mostReadings = 1000
/** mm; the program believes no hilt, blade or reading beyond it. */
const largestReading = 10_000

/** Every reading finite, above 0 and believable, and the tool's numbers sound; all problems at once. */
export function checkReadings(readings: readonly Reading[], options: ReadingOptions): Outcome<readonly Reading[]> {
  const { tool, path, coverage = usualCoverage } = options
  const at = (i: number, field: string) => `${path}/readings/${i}/${field}`
  if (readings.length === 0) {
    return bad(
      problem('too-few-readings', `${path}/readings`, 'no readings', 'one or more readings', 'Measure it once.'),
    )
  }
  if (readings.length > mostReadings) {
    const got = `${readings.length} readings`
    return bad(problem('too-large', `${path}/readings`, got, `at most ${mostReadings}`, 'Give fewer readings.'))
  }
  const problems = readings.flatMap(({ value, z, theta }, i) => {
    if (!Number.isFinite(value))
      return [problem('not-a-number', at(i, 'value'), value, 'a length in mm', 'Type the reading.')]
    if (value <= 0 || value > largestReading) {
      return [problem('out-of-range', at(i, 'value'), value, `above 0, up to ${largestReading} mm`, 'Read it again.')]
    }
    return [['z', z] as const, ['theta', theta] as const]
      .filter(([, v]) => v !== undefined && !(Math.abs(v) <= 36_000))
      .map(([field, v]) => problem('out-of-range', at(i, field), v, 'a place on the hilt', 'Type where it was read.'))
  })
  for (const [field, v] of [['mpe', tool.mpe] as const, ['resolution', tool.resolution] as const]) {
    if (v >= 0 && v < largestReading) continue
    problems.push(problem('out-of-range', `${path}/tool/${field}`, v, 'zero or more mm', "Give the tool's own figure."))
  }
  if (!(coverage >= 0.5 && coverage <= 0.9999)) {
    problems.push(problem('out-of-range', `${path}/coverage`, coverage, '0.5 to 0.9999', 'Use 0.99.'))
  }
  return problems.length > 0 ? bad(...problems) : good(readings)
}

/** The readings of one station along the axis; `z` undefined where none was noted. */
export interface Station {
  readonly z: number | undefined
  readonly readings: readonly Reading[]
}

/** Readings grouped by z, in rising z; those without a z are a station of their own, first. */
export function stations(readings: readonly Reading[]): readonly Station[] {
  const sorted = readings.toSorted((a, b) => (a.z ?? -Infinity) - (b.z ?? -Infinity) || 0)
  const groups: { z: number | undefined; readings: Reading[] }[] = []
  for (const r of sorted) {
    const last = groups.at(-1)
    const same = last && (last.z === undefined ? r.z === undefined : r.z !== undefined && r.z - last.z <= sameZ)
    if (same) last.readings.push(r)
    else groups.push({ z: r.z, readings: [r] })
  }
  return groups
}

/** Repeats of one diameter. `theta` in [0, 180): a diameter has two ends. */
export interface Direction {
  readonly theta: number | undefined
  readonly values: readonly number[]
}

/** Readings grouped by direction modulo 180°, in rising angle; those without an angle are one direction, first. */
export function directions(readings: readonly Reading[]): readonly Direction[] {
  const groups: { theta: number | undefined; values: number[] }[] = []
  const angled = readings.map((r) => ({ value: r.value, theta: r.theta === undefined ? undefined : halfTurn(r.theta) }))
  for (const r of angled.toSorted((a, b) => (a.theta ?? -1) - (b.theta ?? -1))) {
    const same = groups.find((g) =>
      g.theta === undefined ? r.theta === undefined : r.theta !== undefined && apart(g.theta, r.theta) <= sameTheta,
    )
    if (same) same.values.push(r.value)
    else groups.push({ theta: r.theta, values: [r.value] })
  }
  return groups
}

const halfTurn = (theta: number): number => ((theta % 180) + 180) % 180

/** Smallest angle between two diameters, 0 to 90°. */
export function apart(a: number, b: number): number {
  const d = halfTurn(a - b)
  return Math.min(d, 180 - d)
}

export const average = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length
