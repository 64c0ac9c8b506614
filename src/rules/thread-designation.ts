import { plainText, readNumber } from '../entry/number.ts'
import { inch } from '../entry/units.ts'
import { bad, good, type Outcome, type ProblemCode, problem } from '../problem/problem.ts'
import { coarsePitches, coarseTrustedUpTo } from './thread-pitches.ts'

/** A 60° thread: ISO metric or Unified profile, named by its major diameter and pitch. All sizes in mm. */
export interface Thread {
  /** As typed. */
  readonly text: string
  /** Written our way: `M33 × 1.5`, `1.25 in - 18 TPI`, `#10 (0.19 in) - 24 TPI`. */
  readonly name: string
  readonly system: 'metric' | 'inch'
  readonly major: number
  readonly pitch: number
  /** `6H`, `2B` … where it was typed. */
  readonly toleranceClass?: string
  /** The pitch was not given, and the coarse one may well be wrong here. */
  readonly pitchAssumed: boolean
}

/** What is believed of a thread in a hilt, mm. Common practice, no source. */
const majorRange = { min: 1, max: 100 }
const pitchRange = { min: 0.2, max: 6 }
/** The deepest standard thread, M1 × 0.25, has a pitch of a quarter of its diameter. */
const mostPitchShare = 0.3

const allowed = 'a 60° thread: M33x1.5, M3, 1 1/4-20, 1.25-18 UN, 10-24, 33mm-20 or 33x1.5'

/**
 * Reads a designation: `M33 × 1.5`, `M3` (coarse), `1 1/4-20`, `1.25-18 UN 2B`, `#10-24`, `33 mm - 20 TPI`; any
 * D × P or D - TPI. A bare whole number up to 12 before a fine TPI is a number size (10-24 is 0.190 in), unless the
 * thread would then be deeper than standard ones (1-20 is one inch).
 *
 * Fails with unknown-value (not a 60° thread, not understood), missing (no pitch) or out-of-range.
 */
export function parseThread(text: string, path = ''): Outcome<Thread> {
  const fail = (code: ProblemCode, hint: string) => bad(problem(code, path, text, allowed, hint))
  if (text.length > 40) return fail('unknown-value', 'Write the designation alone.')
  const t = plainText(text).replace(/ ?[×✕*] ?/g, 'x')
  if (t === '') return fail('missing', 'Type the designation.')
  if (
    /^(?:MJ|G|R[cp]?|NPT|NPS|BSP|BSW|BSF|W|TR|ACME|S)\b|^(?:MJ|TR|G) ?\d|\b(?:NPT|BSPP?|BSPT|ACME|UNJ[CFS]?)\b/i.test(t)
  ) {
    return fail('unknown-value', 'Only 60° threads (ISO metric, Unified) are known; give the free bore as a reading.')
  }
  const { bare, toleranceClass } = splitClass(t)
  const shape = readMetric(bare) ?? readSizePitch(bare)
  if (!shape)
    return fail('unknown-value', 'Give diameter and pitch as D × P, or diameter and threads per inch as D-TPI.')
  if ('hint' in shape) return fail(shape.code, shape.hint)
  const { major, pitch } = shape
  if (!(major >= majorRange.min && major <= majorRange.max)) {
    return fail('out-of-range', `Diameters of ${majorRange.min} to ${majorRange.max} mm; here ${round(major)} mm.`)
  }
  if (!(pitch >= pitchRange.min && pitch <= pitchRange.max && pitch <= mostPitchShare * major)) {
    const most = round(Math.min(pitchRange.max, mostPitchShare * major))
    const perInch =
      shape.system === 'metric' && pitch >= 8 ? ` For threads per inch write ${round(major)}mm-${pitch}.` : ''
    const hint = `Pitches of ${pitchRange.min} to ${most} mm at this diameter; here ${round(pitch)} mm.${perInch}`
    return fail('out-of-range', hint)
  }
  return good({ ...shape, text, ...(toleranceClass === undefined ? {} : { toleranceClass }) })
}

type Shape = Pick<Thread, 'name' | 'system' | 'major' | 'pitch' | 'pitchAssumed'>
interface Refusal {
  readonly code: ProblemCode
  readonly hint: string
}

/** Takes the tolerance class, the series letters and the hand off the end. */
function splitClass(t: string): { bare: string; toleranceClass?: string } {
  const handless = t.replace(/[ -](?:LH|RH)$/i, '')
  const m = /[ -]?((?<=[ -])(?:(?:\d[GH])?\d[GH]|(?:\d[efgh])?\d[efgh]|[123][ABab]))$/.exec(handless)
  const rest = m ? handless.slice(0, m.index) : handless
  const bare = rest.replace(/[ -]?UN(?:C|F|EF|S|R|RC|RF)?$/i, '').trim()
  return m ? { bare, toleranceClass: (m[1] as string).replace(/[ab]$/, (c) => c.toUpperCase()) } : { bare }
}

function readMetric(t: string): Shape | Refusal | undefined {
  const m = /^M ?(\d[\d.,]*)(?: ?[x-] ?(\d[\d.,]*)(?: ?mm)?)?$/i.exec(t)
  if (!m) return undefined
  const major = readNumber(m[1] as string)?.value
  if (major === undefined) return undefined
  if (m[2] === undefined) {
    const coarse = coarsePitches.get(major)
    if (coarse === undefined)
      return { code: 'missing', hint: `No coarse pitch is known for M${major}: give it, as M${major}x1.` }
    return metric(major, coarse, major > coarseTrustedUpTo)
  }
  const pitch = readNumber(m[2])?.value
  return pitch === undefined ? undefined : metric(major, pitch, false)
}

const metric = (major: number, pitch: number, pitchAssumed: boolean): Shape => ({
  name: `M${round(major)} × ${round(pitch)}`,
  system: 'metric',
  major,
  pitch,
  pitchAssumed,
})

/** D x P and D - TPI, each with or without units. */
function readSizePitch(t: string): Shape | Refusal | undefined {
  const m = /^(.*[\d"a-z.]) ?([x-]) ?(\d[\d.,]*) ?(mm|tpi)?$/i.exec(t)
  if (!m) {
    const size = /^(?:#|no\.? ?)?[\d./ ]+(?: ?(?:in|"|mm))?$/i.test(t)
    return size ? { code: 'missing', hint: 'Give the pitch or the threads per inch too.' } : undefined
  }
  const [count, unit] = [readNumber(m[3] as string)?.value, m[4]?.toLowerCase()]
  if (count === undefined || count <= 0) return undefined
  const perInch = unit === 'tpi' || (unit === undefined && m[2] === '-')
  const size = readSize(m[1] as string, perInch ? count : undefined)
  if (!size || 'hint' in size) return size
  if (perInch) {
    const name = `${size.name} - ${round(count)} TPI`
    return { name, system: 'inch', major: size.major, pitch: inch / count, pitchAssumed: false }
  }
  if (!size.inches) return metric(size.major, count, false)
  return { code: 'unknown-value', hint: 'With an inch diameter give threads per inch, as 1.25-18.' }
}

interface Size {
  readonly major: number
  readonly inches: boolean
  readonly name: string
}

const inInches = (v: number): Size => ({ major: v * inch, inches: true, name: `${round(v)} in` })
const inMillimetres = (major: number): Size => ({ major, inches: false, name: `${round(major)} mm` })

function readSize(text: string, tpi: number | undefined): Size | Refusal | undefined {
  const numbered = /^(?:#|no\.?) ?(\d{1,2})$/i.exec(text)
  if (numbered) return numberSize(Number(numbered[1]))
  const m = /^([\d.,/ -]*[\d.]) ?(mm|in|inch|")?$/i.exec(text)
  const n = m && readNumber((m[1] as string).trim())
  if (!m || !n) return undefined
  const unit = m[2]?.toLowerCase()
  if (unit === 'mm') return inMillimetres(n.value)
  if (unit !== undefined || n.fraction) return inInches(n.value)
  if (tpi === undefined) return inMillimetres(n.value)
  const numberMajor = 0.06 + 0.013 * n.value
  // Standard number threads have more than four pitches in their diameter (10-24: 4.56); 1-20 as a number has 1.5.
  if (Number.isInteger(n.value) && n.value <= 12 && numberMajor * tpi > 4) return numberSize(n.value)
  if (n.value <= 4) return inInches(n.value)
  return { code: 'unknown-unit', hint: `Inches or millimetres? Write ${n.value}mm-${tpi} or ${n.value}in-${tpi}.` }
}

/** Machine screw number sizes: 0.060 in + 0.013 in a number (ASME B1.1, read). */
function numberSize(n: number): Size | Refusal {
  if (n > 12) return { code: 'out-of-range', hint: 'Number sizes go from 0 to 12.' }
  const size = inInches(0.06 + 0.013 * n)
  return { ...size, name: `#${n} (${size.name})` }
}

const round = (v: number): number => Number(v.toFixed(4))
