/**
 * Quantiles of Student's t for whole degrees of freedom, and of the normal distribution as their limit.
 *
 * With t = √ν·tan φ the probability between −t and t is a finite sum of powers of cos φ (Abramowitz and Stegun 26.7.3
 * and 26.7.4, from memory), so nothing is approximated but the inversion; the tests hold it to closed forms.
 */

/** Beyond this t is the normal quantile within 0.2 % at 99 %, and rounding ν down errs to the safe side. */
const mostDof = 1000

/**
 * Coverage factor k: a value lies within ±k standard uncertainties with probability `coverage` (GUM G.3.2).
 * 0 < coverage < 1; ν a whole number ≥ 1, or Infinity for the normal. Anything else is a bug of the caller.
 */
export function coverageFactor(coverage: number, dof: number): number {
  const normal = dof === Number.POSITIVE_INFINITY
  const valid = coverage > 0 && coverage < 1 && (normal || (Number.isInteger(dof) && dof >= 1))
  if (!valid) throw new RangeError(`coverageFactor(${coverage}, ${dof})`)
  return normal ? normalFactor(coverage) : studentFactor(coverage, Math.min(dof, mostDof))
}

/** Coverage factors at one coverage, each computed once: fields and fits ask for the same few many times. */
export function coverageFactors(coverage: number): (dof: number) => number {
  let found = kept.get(coverage)
  if (!found) {
    if (kept.size >= mostKept) kept.clear()
    found = new Map()
    kept.set(coverage, found)
  }
  const factors = found
  return (dof) => {
    const k = factors.get(dof) ?? coverageFactor(coverage, dof)
    factors.set(dof, k)
    return k
  }
}

/** A job has one coverage, so that one map serves all its fields. */
const kept = new Map<number, Map<number, number>>()
const mostKept = 8

/**
 * The quantile at probability p of Student's t with ν degrees of freedom.
 * @internal
 */
export function tQuantile(p: number, dof: number): number {
  if (p === 0.5) return 0
  return p > 0.5 ? coverageFactor(2 * p - 1, dof) : -coverageFactor(1 - 2 * p, dof)
}

function studentFactor(coverage: number, dof: number): number {
  const slope = slopeAtZero(dof)
  let [low, high] = [0, Math.PI / 2]
  let phi = Math.min(coverage / slope, 1)
  for (let i = 0; i < 60; i++) {
    const excess = within(phi, dof) - coverage
    if (excess > 0) high = phi
    else low = phi
    const newton = phi - excess / (slope * Math.cos(phi) ** (dof - 1))
    const next = newton > low && newton < high ? newton : (low + high) / 2
    const done = Math.abs(next - phi) < 1e-15
    phi = next
    if (done) break
  }
  return Math.sqrt(dof) * Math.tan(phi)
}

/** The slope of P(|T| ≤ √ν·tan φ) at φ = 0: 2·Γ((ν + 1)/2)/(√π·Γ(ν/2)), by the step of two in ν. */
function slopeAtZero(dof: number): number {
  const odd = dof % 2 === 1
  let slope = odd ? 2 / Math.PI : 1
  for (let nu = odd ? 3 : 4; nu <= dof; nu += 2) slope *= (nu - 1) / (nu - 2)
  return slope
}

/** P(|T| ≤ √ν·tan φ). */
function within(phi: number, dof: number): number {
  const [sin, cos] = [Math.sin(phi), Math.cos(phi)]
  const odd = dof % 2 === 1
  let term = odd ? cos : 1
  let sum = dof === 1 ? 0 : term
  for (let j = odd ? 3 : 2; j <= dof - 2; j += 2) {
    term *= ((j - 1) / j) * cos * cos
    sum += term
  }
  return odd ? (2 / Math.PI) * (phi + sin * sum) : sin * sum
}

function normalFactor(coverage: number): number {
  const height = 2 / Math.sqrt(2 * Math.PI)
  let [low, high] = [0, 9]
  let x = Math.min(coverage / height, 4)
  for (let i = 0; i < 100; i++) {
    const excess = height * bell(x) - coverage
    if (excess > 0) high = x
    else low = x
    const newton = x - excess / (height * Math.exp((-x * x) / 2))
    const next = newton > low && newton < high ? newton : (low + high) / 2
    const done = Math.abs(next - x) < 1e-13
    x = next
    if (done) break
  }
  return x
}

/** ∫₀ˣ exp(−t²/2) dt by Simpson's rule. */
function bell(x: number): number {
  const n = 400
  const h = x / n
  let sum = 1 + Math.exp((-x * x) / 2)
  for (let i = 1; i < n; i++) sum += (i % 2 === 1 ? 4 : 2) * Math.exp(-((i * h) ** 2) / 2)
  return (sum * h) / 3
}
