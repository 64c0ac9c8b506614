import type { Quantity, Spread } from '../quantity/quantity.ts'
import { type Ellipse, fitEllipse } from './ellipse.ts'
import { type Ask, askDirections, askTool } from './reading-ask.ts'
import { type ReadingError, readingError } from './reading-error.ts'
import { average, type Direction, directions, type ReadingOptions, type Station, usualCoverage } from './readings.ts'
import { coverageFactors } from './student-t.ts'
import type { Combined, Scatter } from './uncertainty.ts'

export interface RoundOptions extends ReadingOptions {
  /** Width of the flats of inside jaws, mm; corrects readings of tools that have them. */
  readonly jawFlat?: number | undefined
  /** How much the unread diameters may differ from those read, while fewer than three directions are known; mm ≥ 0. */
  readonly ovalityAllowance: number
}

/** A round thing at one place along the axis. All in mm. */
export interface RoundStation {
  readonly z: number | undefined
  /**
   * Nominal: the diameter that decides (least of a bore, greatest of an outside). Two spreads: the error of the
   * readings at the path, and one-sided `…/ovality` to the other diameters.
   */
  readonly quantity: Quantity
  /** Estimates of the oval. Equal where only one direction is known. */
  readonly least: number
  readonly mean: number
  readonly greatest: number
  /** Directions the readings show; three or more well apart fix the oval. */
  readonly directions: number
  readonly ovalKnown: boolean
  /** The error budget of the deciding diameter, on the side where less room is left. */
  readonly combined: Combined
  readonly ask: readonly Ask[]
}

/** Which diameter decides: −1 the least, +1 the greatest. */
export type Side = 1 | -1

/** One station's readings, already corrected for jaw flats; `several` stations tell their paths apart by z. */
export function roundStation(group: Station, several: boolean, options: RoundOptions, side: Side): RoundStation {
  const { tool, coverage = usualCoverage } = options
  const path = several ? `${options.path}/z/${group.z ?? 'none'}` : options.path
  const read = directions(group.readings)
  const ellipse = fitEllipse(read)
  const factor = coverageFactors(coverage)
  const found = ellipse ? fromEllipse(ellipse, read, options, side, factor) : fromFew(read, options, side, factor)
  const count = `${group.readings.length} reading${group.readings.length === 1 ? '' : 's'}, ${tool.name}`
  const { nominal } = found
  const { half, distribution, combined } = found.error
  const [minus, plus] = side < 0 ? [found.beyond, found.across] : [found.across, found.beyond]
  const error: Spread = {
    path,
    kind: 'unknown',
    minus: half,
    plus: half,
    distribution,
    source: 'measured',
    from: count,
  }
  const oval: Spread = {
    path: `${path}/ovality`,
    kind: 'unknown',
    minus,
    plus,
    distribution: 'rectangular',
    source: ellipse ? 'measured' : 'preset',
    from: found.ovalFrom,
  }
  const spreads = minus === 0 && plus === 0 ? [error] : [error, oval]
  const means = read.map((d) => average(d.values))
  // Flats matter to inside jaws in a bore alone.
  const [user, flat] = side < 0 ? [tool, options.jawFlat] : [{ ...tool, jaws: false }, undefined]
  return {
    z: group.z,
    quantity: { nominal, terms: spreads.map((spread) => ({ spread, gain: 1 })) },
    least: ellipse ? ellipse.mean - ellipse.amplitude : Math.min(...means),
    mean: ellipse?.mean ?? average(means),
    greatest: ellipse ? ellipse.mean + ellipse.amplitude : Math.max(...means),
    directions: read.length,
    ovalKnown: ellipse !== undefined,
    combined,
    ask: [...askDirections(read, ellipse !== undefined), ...askTool(user, flat, found.s)],
  }
}

type Factor = (dof: number) => number

interface Found {
  readonly nominal: number
  readonly error: ReadingError
  /** How far the oval reaches to the other diameter, and beyond the one that decides. */
  readonly across: number
  readonly beyond: number
  readonly ovalFrom: string
  readonly s: number
}

/**
 * Where the true long axis lies is itself only known from the readings, and a round bore read with errors looks oval.
 * The diameter along any direction ψ is mean ± (a·cos 2ψ + b·sin 2ψ), linear in the readings, and the true axis is one
 * of the ψ: so the largest of their errors bounds the error of the least and of the greatest diameter.
 */
function fromEllipse(e: Ellipse, read: readonly Direction[], o: RoundOptions, side: Side, factor: Factor): Found {
  const used = read.filter((d) => d.theta !== undefined)
  const counts = used.map((d) => d.values.length)
  const errors = everyDirection.map((angle) =>
    readingError({ weights: e.weights(side, angle), counts, s: e.s, dof: e.dof }, o.tool, factor),
  )
  const widest = errors.reduce((a, b) => (b.half > a.half ? b : a))
  const edge = e.mean + side * e.amplitude
  const means = read.map((d) => average(d.values))
  // A dent that was read counts, even where the fit smooths it over.
  const nominal = side < 0 ? Math.min(edge, ...means) : Math.max(edge, ...means)
  const leastAt = Math.round((e.greatestAt + 90) % 180)
  return {
    nominal,
    error: widest,
    across: Math.abs(e.mean - side * e.amplitude - nominal),
    beyond: 0,
    ovalFrom: `oval by ${Number((2 * e.amplitude).toFixed(3))} mm, least at ${leastAt}°, from ${used.length} directions`,
    s: e.s,
  }
}

const everyDirection = Array.from({ length: 36 }, (_, i) => i * 5)

/** One or two directions: the deciding one of those read, and an allowance for those not read. */
function fromFew(read: readonly Direction[], o: RoundOptions, side: Side, factor: Factor): Found {
  const means = read.map((d) => average(d.values))
  const edge = side < 0 ? Math.min(...means) : Math.max(...means)
  const other = side < 0 ? Math.max(...means) : Math.min(...means)
  const { s, dof } = pooled(read)
  const counts = [(read[means.indexOf(edge)] as Direction).values.length]
  const error = readingError({ weights: [1], counts, s, dof }, o.tool, factor)
  return {
    nominal: edge,
    error,
    across: Math.abs(other - edge) + o.ovalityAllowance,
    beyond: o.ovalityAllowance,
    ovalFrom: `ovality allowance ${o.ovalityAllowance} mm: fewer than three directions read`,
    s,
  }
}

/** Scatter of one reading, pooled over the repeats of every direction. */
function pooled(read: readonly Direction[]): Pick<Scatter, 's' | 'dof'> {
  const dof = read.reduce((n, d) => n + d.values.length - 1, 0)
  const squares = read.reduce((sum, d) => {
    const mean = average(d.values)
    return sum + d.values.reduce((q, v) => q + (v - mean) ** 2, 0)
  }, 0)
  return { s: dof > 0 ? Math.sqrt(squares / dof) : 0, dof }
}
