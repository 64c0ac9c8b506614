import { type Problem, problem } from '../problem/problem.ts'
import { type Plausible, thinnestWall } from './plausible.ts'
import { inch } from './units.ts'

/**
 * Questions about entries that parse well and are probably wrong: inches read as millimetres, digits swapped, a bore
 * wider than its tube. "suspicious" asks and leaves the value in force; "out-of-range" and "contradiction" are what
 * cannot be.
 * All lengths in mm. None of them changes a value: what to do is the person's answer.
 */

/** Whether a factor of 25.4 either way makes an unusual size a usual one: inches read as mm, or converted twice. */
export const inchesMeant = (value: number, usual: Plausible): boolean =>
  (value < usual.min || value > usual.max) && [value * inch, value / inch].some((v) => v >= usual.min && v <= usual.max)

/** A size against what is usual there. Zero, negative and not finite cannot be; the rest is asked. */
export function suspectSize(value: number, usual: Plausible, path: string): Problem | undefined {
  const limit = `${usual.what}, usually ${usual.min} to ${usual.max} mm`
  if (!Number.isFinite(value)) return problem('not-a-number', path, value, limit, 'Type a number.')
  if (value <= 0) return problem('out-of-range', path, value, `${usual.what}, above 0 mm`, 'Type the size as measured.')
  if (value >= usual.min && value <= usual.max) return undefined
  const other = [
    [value * inch, `Inches? ${short(value)} in is ${short(value * inch)} mm: then type ${short(value)}in.`],
    [
      value / inch,
      `Converted twice? ${short(value)} mm is ${short(value / inch)} in, so ${short(value / inch)} mm may be meant.`,
    ],
    [value * 1000, `A comma for thousands? Then type ${short(value * 1000)}.`],
    [value / 10, `Centimetres and millimetres mixed? ${short(value / 10)} would be usual.`],
    [value * 10, `Centimetres? ${short(value)} cm is ${short(value * 10)} mm: then type ${short(value)}cm.`],
  ] as const
  const hit = other.find(([v]) => v >= usual.min && v <= usual.max)
  const far = value > usual.max ? 'That is large here; check it.' : 'That is small here; check it.'
  return problem('suspicious', path, value, limit, hit ? hit[1] : far)
}

/**
 * A value beside one it should be close to (another reading of the same place, the preset of the same part): a ratio
 * of 25.4 within 3 % says that one of them is in inches.
 */
export function suspectRatio(value: number, sibling: number, path: string, siblingName: string): Problem | undefined {
  if (!(value > 0 && sibling > 0)) return undefined
  const small = isInchRatio(sibling / value)
  if (!small && !isInchRatio(value / sibling)) return undefined
  const [few, many] = small ? ['this', siblingName] : [siblingName, 'this']
  return problem(
    'suspicious',
    path,
    value,
    `close to ${short(sibling)} mm (${siblingName})`,
    `The two differ by a factor of 25.4: ${few} may be in inches, ${many} in millimetres.`,
  )
}

export const isInchRatio = (r: number): boolean => Math.abs(r / inch - 1) <= 0.03

/** Readings of one place that disagree by more than `most` mm or 4 %: a unit or a digit is wrong. One question each. */
export function suspectReadings(values: readonly number[], path: string, most = 1): Problem[] {
  const sorted = values.filter((v) => v > 0).toSorted((a, b) => a - b)
  const middle = sorted[Math.floor(sorted.length / 2)]
  if (middle === undefined || sorted.length < 2) return []
  return values.flatMap((v, i) => {
    const at = `${path}/${i}/value`
    const ratio = suspectRatio(v, middle, at, 'the other readings')
    if (ratio) return [ratio]
    const allowed = Math.max(most, 0.04 * middle)
    if (Math.abs(v - middle) <= allowed) return []
    const limit = `within ${short(allowed)} mm of the middle reading, ${short(middle)}`
    return [problem('suspicious', at, v, limit, 'A slip of a digit, or another place? Read it again.')]
  })
}

/** A bore in its tube. A bore as wide as the outside cannot be; a wall under `thinnest` is asked about. */
export function suspectWall(
  bore: number,
  outside: number,
  path: string,
  thinnest: number = thinnestWall,
): Problem | undefined {
  if (!(bore > 0 && outside > 0)) return undefined
  const wall = (outside - bore) / 2
  if (wall <= 0) {
    const inches = bore < outside * inch ? `If the outside was read in inches, type ${short(outside)}in.` : ''
    const hint =
      outside * 4 < bore && inches ? inches : 'A bore is smaller than its tube is outside: are the two swapped?'
    return problem('contradiction', path, bore, `below the outside diameter, ${short(outside)} mm`, hint)
  }
  if (wall >= thinnest) {
    // A tube whose wall is most of its radius: the bore may have been typed in inches.
    const inches = outside / bore > 8 && bore * inch < outside
    if (!inches) return undefined
    const hint = `Inches? Then type ${short(bore)}in, ${short(bore * inch)} mm.`
    return problem('suspicious', path, bore, `a bore in a tube of ${short(outside)} mm`, hint)
  }
  const limit = `a wall of at least ${thinnest} mm; here ${short(wall)} mm`
  return problem(
    'suspicious',
    path,
    bore,
    limit,
    'Read bore and outside again; for metal that thin, lower the setting "least-wall".',
  )
}

const short = (v: number): string => String(Number(v.toPrecision(5)))
