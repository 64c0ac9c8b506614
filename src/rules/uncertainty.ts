/**
 * Combining standard uncertainties by the law of propagation, with effective degrees of freedom by Welch and
 * Satterthwaite and a coverage factor from t. Source: JCGM 100:2008 (GUM) 5.1.2, G.4.1, G.6.4; formulas from memory,
 * checked in the tests against its example H.1.
 */
export interface Component {
  readonly name: string
  /** Standard uncertainty of the input, in the result's unit (sensitivity included), ≥ 0. */
  readonly u: number
  /** Degrees of freedom; Infinity for a limit taken as certain. */
  readonly dof: number
}

export interface Combined {
  /** Combined standard uncertainty. */
  readonly u: number
  /** Effective degrees of freedom, cut to a whole number as GUM G.4.1 allows; Infinity where nothing was estimated. */
  readonly dof: number
  readonly k: number
  /** Expanded uncertainty k·u at the coverage asked for. */
  readonly expanded: number
  readonly components: readonly Component[]
}

/** `factor` gives the coverage factor for effective degrees of freedom (coverageFactors of student-t.ts). */
export function combineUncertainty(components: readonly Component[], factor: (dof: number) => number): Combined {
  const variance = components.reduce((sum, c) => sum + c.u ** 2, 0)
  const spread = components.reduce((sum, c) => sum + (c.u === 0 ? 0 : c.u ** 4 / c.dof), 0)
  // The grain keeps a whole number whole: 16 must not become 15 by rounding.
  const dof = spread === 0 ? Number.POSITIVE_INFINITY : Math.max(1, Math.floor(variance ** 2 / spread + 1e-9))
  const u = Math.sqrt(variance)
  const k = factor(dof)
  return { u, dof, k, expanded: k * u, components }
}

/** Standard uncertainty of a value known only to lie within ±a (GUM 4.3.7). */
export const rectangular = (a: number): number => a / Math.sqrt(3)

/** Standard uncertainty of reading to the nearest step q (GUM F.2.2.1). */
export const resolution = (q: number): number => q / Math.sqrt(12)

export interface Scatter {
  readonly mean: number
  /** Standard deviation of one reading. */
  readonly s: number
  /** Standard uncertainty of the mean, s/√n (GUM 4.2.3). */
  readonly u: number
  readonly dof: number
}

/** Mean and scatter of at least one reading; one alone tells nothing of scatter (s 0, dof 0). */
export function scatter(values: readonly number[]): Scatter {
  const n = values.length
  const mean = values.reduce((a, b) => a + b, 0) / n
  if (n < 2) return { mean, s: 0, u: 0, dof: 0 }
  const s = Math.sqrt(values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (n - 1))
  return { mean, s, u: s / Math.sqrt(n), dof: n - 1 }
}
