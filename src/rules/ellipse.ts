import type { Direction } from './readings.ts'

/**
 * The diameters of an oval: d(θ) = mean + a·cos 2θ + b·sin 2θ, fitted to readings by least squares.
 *
 * Three directions fix it exactly (60° apart: least = mean − √(⅔ Σ(d − mean)²)); more are averaged. To first order in
 * the ovality an ellipse has these diameters. A lobed bore (three-jaw chuck) hides from any two-point tool.
 */
export interface Ellipse {
  readonly mean: number
  /** Half the difference between the greatest and the least diameter. */
  readonly amplitude: number
  /** Direction of the greatest diameter, degrees in [0, 180). */
  readonly greatestAt: number
  /** Standard deviation of one reading about the fit, and its degrees of freedom (0: no reading to spare). */
  readonly s: number
  readonly dof: number
  /**
   * How much each direction weighs in the diameter `mean + side·amplitude` when the greatest diameter stands at
   * `at`°: Σ weight·d. Their sum is 1.
   */
  weights(side: 1 | -1, at: number): readonly number[]
}

/** Two fitted directions nearer than about 20° blow errors up more than this; the fit then says nothing. */
const worstGain = 2.5

/** Undefined with fewer than three directions, or where they stand too close together to fix an oval. */
export function fitEllipse(directions: readonly Direction[]): Ellipse | undefined {
  const rows = directions.flatMap(({ theta, values }) => (theta === undefined ? [] : [{ theta, values }]))
  if (rows.length < 3) return undefined
  const normal = [0, 0, 0, 0, 0, 0, 0, 0, 0]
  for (const { theta, values } of rows) {
    const x = basis(theta)
    for (let i = 0; i < 9; i++) add(normal, i, values.length * at(x, Math.floor(i / 3)) * at(x, i % 3))
  }
  const inverse = invert3(normal)
  if (!inverse) return undefined
  const influence = rows.map(({ theta, values }) => times(inverse, basis(theta)).map((v) => v * values.length))
  const means = rows.map(({ values }) => values.reduce((p, q) => p + q, 0) / values.length)
  const [mean, a, b] = [0, 1, 2].map((k) => sum(influence.map((w, i) => at(w, k) * at(means, i)))) as [
    number,
    number,
    number,
  ]

  const weights = (side: 1 | -1, greatestAt: number): readonly number[] => {
    const [, c, s] = basis(greatestAt)
    return influence.map((w) => at(w, 0) + side * (c * at(w, 1) + s * at(w, 2)))
  }
  for (let angle = 0; angle < 180; angle += 15) {
    if (Math.hypot(...weights(1, angle)) > worstGain) return undefined
  }
  const residue = sum(
    rows.map(({ theta, values }) => {
      const [, c, s] = basis(theta)
      return sum(values.map((v) => (v - mean - a * c - b * s) ** 2))
    }),
  )
  const dof = sum(rows.map((r) => r.values.length)) - 3
  return {
    mean,
    amplitude: Math.hypot(a, b),
    greatestAt: ((Math.atan2(b, a) * 90) / Math.PI + 180) % 180,
    s: dof > 0 ? Math.sqrt(residue / dof) : 0,
    dof,
    weights,
  }
}

const basis = (theta: number): readonly [number, number, number] => {
  const t = (theta * Math.PI) / 90
  return [1, Math.cos(t), Math.sin(t)]
}

function invert3(m: readonly number[]): readonly number[] | undefined {
  const [a, b, c, d, e, f, g, h, i] = m as [number, number, number, number, number, number, number, number, number]
  const det = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g)
  if (Math.abs(det) < 1e-9) return undefined
  return [
    e * i - f * h,
    c * h - b * i,
    b * f - c * e,
    f * g - d * i,
    a * i - c * g,
    c * d - a * f,
    d * h - e * g,
    b * g - a * h,
    a * e - b * d,
  ].map((v) => v / det)
}

const times = (m: readonly number[], x: readonly number[]): readonly number[] =>
  [0, 3, 6].map((r) => at(m, r) * at(x, 0) + at(m, r + 1) * at(x, 1) + at(m, r + 2) * at(x, 2))

const sum = (values: readonly number[]): number => values.reduce((p, q) => p + q, 0)
const at = (values: readonly number[], i: number): number => values[i] as number
const add = (values: number[], i: number, by: number): void => {
  values[i] = at(values, i) + by
}
