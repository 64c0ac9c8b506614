import { bad, good, type Outcome, type Problem, problem } from '../problem/problem.ts'
import { known, type Quantity } from '../quantity/quantity.ts'
import type { Source } from './source.ts'
import type { Thread } from './thread-designation.ts'
import {
  deviation,
  externalInch,
  majorTolerance,
  minorTolerance,
  minorToleranceInch,
  pitchTolerance,
} from './thread-tolerance.ts'

/** A diameter between its limits, mm, and what says so. */
export interface Limits {
  readonly nominal: number
  readonly min: number
  readonly max: number
  readonly source: Source
  /** The formula with its values, for a pocket calculator. */
  readonly formula: string
}

/** Heights of the 60° profile as shares of the pitch, on the diameter (ISO 68-1, ISO 724; ASME B1.1). */
const minorShare = 1.08253
const pitchShare = 0.64952
/** To the rounded root of a male thread: ISO 898-1 d3; ASME B1.1 UNR. */
const rootShare = 1.22687
const rootShareInch = 1.19078
/** Pitch diameter to the lowest root that a radius of P/8 allows (ASME B1.13M; gives the published d3 minima). */
const lowestRootShare = 0.61603

const iso: Source = { text: 'ISO 724 and ISO 965-1:1998, clause 13, in a public restatement', how: 'read' }
const asme: Source = { text: 'ASME B1.1-2003, clause 5.8, in a public restatement', how: 'read' }

export const internalClasses = '4H to 8H, 4G to 8G (metric); 1B, 2B, 3B (inch)'
export const externalClasses = '6g, 6h (metric); 1A, 2A, 3A (inch)'

/**
 * The free bore of an internal thread: its minor diameter, D − 1.0825 P, with the tolerance of its class. What passes
 * has to pass the crests. Default classes 6H and 2B; `toleranceClass` overrides what was typed.
 *
 * Fails with unknown-value for a class not listed or not of the thread's system.
 */
export function freeBore(thread: Thread, toleranceClass = thread.toleranceClass, path = ''): Outcome<Limits> {
  const { major, pitch, system } = thread
  const basic = major - minorShare * pitch
  const grade = toleranceClass ?? (system === 'metric' ? '6H' : '2B')
  const wrong = () => {
    const hint = `${thread.name} is ${system}; ${system === 'metric' ? '6H' : '2B'} is usual.`
    return bad(problem('unknown-value', path, grade, `a class of internal threads: ${internalClasses}`, hint))
  }
  const m = /^(?:\d[GH])?(\d)([GH])$/.exec(grade)
  const inchClass = /^[123]B$/.exec(grade)
  if (system === 'metric' ? !m : !inchClass) return wrong()
  const start = m ? deviation(pitch, m[2] as 'G' | 'H') : 0
  const tolerance = m ? minorTolerance(pitch, m[1] as string) : minorToleranceInch(pitch, major, grade === '3B')
  if (tolerance === undefined) return wrong()
  const formula = `D − 1.0825 P = ${f(major)} − 1.0825 × ${f(pitch)} = ${f(basic)}; ${grade}: +${f(start)} to +${f(start + tolerance)}`
  const source = system === 'metric' ? iso : asme
  return good({ nominal: basic + start, min: basic + start, max: basic + start + tolerance, source, formula })
}

/** Both diameters of a male thread: what a tube drawn over it must clear, and what its wall is measured from. */
export interface ExternalThread {
  readonly major: Limits
  /** The root, from the lowest the standard's rounding allows to the highest. */
  readonly minor: Limits
}

/**
 * A male thread's limits. Default classes 6g and 2A; inch tolerances over nine pitches of engagement.
 * Fails with unknown-value for another class.
 */
export function externalThread(
  thread: Thread,
  toleranceClass = thread.toleranceClass,
  path = '',
): Outcome<ExternalThread> {
  const { major, pitch, system } = thread
  const grade = toleranceClass ?? (system === 'metric' ? '6g' : '2A')
  const known = system === 'metric' ? /^6[gh]$/.test(grade) : /^[123]A$/.test(grade)
  if (!known) {
    const hint = `${thread.name} is ${system}; ${system === 'metric' ? '6g' : '2A'} is usual.`
    return bad(problem('unknown-value', path, grade, `a class of external threads: ${externalClasses}`, hint))
  }
  const inchLimits = system === 'inch' ? externalInch(pitch, major, grade as '1A' | '2A' | '3A') : undefined
  const below = inchLimits?.allowance ?? deviation(pitch, grade[1] as 'g' | 'h')
  const crest = inchLimits?.majorTolerance ?? majorTolerance(pitch)
  const flank = inchLimits?.pitchTolerance ?? pitchTolerance(pitch, major)
  const source = inchLimits ? asme : iso
  const top = major - below
  const root = top - (inchLimits ? rootShareInch : rootShare) * pitch
  const lowest = top - pitchShare * pitch - flank - (inchLimits ? pitchShare : lowestRootShare) * pitch
  return good({
    major: {
      nominal: top,
      min: top - crest,
      max: top,
      source,
      formula: `D = ${f(major)}; ${grade}: −${f(below)} to −${f(below + crest)}`,
    },
    minor: {
      nominal: root,
      min: Math.min(lowest, root),
      max: top - minorShare * pitch,
      source,
      formula: `D − ${inchLimits ? rootShareInch : rootShare} P = ${f(root)} in ${grade}`,
    },
  })
}

/** Limits as a quantity: one true value in the hilt at hand, so its spread is unknown until it is measured. */
export function limitsQuantity(limits: Limits, thread: Thread, path: string): Quantity {
  return known(limits.nominal, {
    path,
    kind: 'unknown',
    minus: limits.nominal - limits.min,
    plus: limits.max - limits.nominal,
    distribution: 'rectangular',
    source: thread.pitchAssumed ? 'assumed' : 'computed',
    from: thread.pitchAssumed
      ? `${thread.name}: coarse pitch assumed, none was given`
      : `${thread.name}, ${limits.source.text}`,
  })
}

/**
 * Asks about a bore reading taken at an internal thread: wider than its crests are at the most (and at most half a pitch
 * above the major diameter), it was taken in the roots or between, while what passes has to pass the crests.
 * Undefined where there is nothing to ask.
 */
export function threadReadingQuestion(
  reading: number,
  thread: Thread,
  crests: Limits,
  path: string,
): Problem | undefined {
  if (reading <= crests.max || reading > thread.major + thread.pitch / 2) return undefined
  return problem(
    'suspicious',
    path,
    reading,
    `the crests of ${thread.name}, ${f(crests.min)} to ${f(crests.max)} mm; its roots are at ${f(thread.major)} mm`,
    'Crest or root? What goes through has to pass the crests: read across them, or leave the bore to the thread.',
  )
}

const f = (v: number): string => String(Number(v.toFixed(3)))
