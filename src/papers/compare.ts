import type { Finding } from '../checks/finding.ts'
import type { Status, Verdict } from '../checks/verdict.ts'
import { placeWords } from '../project/place-words.ts'
import type { Project } from '../project/schema/project.ts'
import { isOne, isRecord, valueWords } from './value-words.ts'

/** One thing that two jobs have differently, in words. */
export interface Difference {
  readonly path: string
  readonly what: string
  readonly before: string
  readonly after: string
}

/** How a check stands in one of two jobs, least margin in its unit. */
export interface Standing {
  readonly status: Status
  readonly worst: number
}

/** A check that came out differently; undefined in the job that does not have it. */
export interface FindingChange {
  readonly id: string
  readonly title: string
  readonly unit: Finding['unit']
  readonly before: Standing | undefined
  readonly after: Standing | undefined
}

export interface Comparison {
  readonly verdicts: { readonly before: Verdict; readonly after: Verdict }
  readonly differences: readonly Difference[]
  /** The worst of the later job first. */
  readonly findings: readonly FindingChange[]
  /** Checks that came out the same. */
  readonly same: number
}

/** What was found of a job. */
export interface Found {
  readonly project: Project
  readonly verdict: Verdict
  readonly findings: readonly Finding[]
}

/** Two jobs, or one as it was and as it is: what differs, and what came of it. */
export function compare(before: Found, after: Found, presetName: PresetName): Comparison {
  const was = new Map(before.findings.map((f) => [f.id, f]))
  const is = new Set(after.findings.map((f) => f.id))
  const changed = after.findings.flatMap((f) => changeOf(was.get(f.id), f))
  const gone = before.findings.filter((f) => !is.has(f.id)).flatMap((f) => changeOf(f, undefined))
  return {
    verdicts: { before: before.verdict, after: after.verdict },
    differences: differencesOf(before.project, after.project, presetName),
    findings: [...changed, ...gone],
    same: after.findings.length - changed.length,
  }
}

/** Margins that read the same are the same, mm. */
const sameMargin = 0.005

function changeOf(before: Finding | undefined, after: Finding | undefined): FindingChange[] {
  const one = after ?? before
  if (!one) return []
  const [a, b] = [standing(before), standing(after)]
  if (a && b && a.status === b.status && !(Math.abs(a.worst - b.worst) >= sameMargin)) return []
  return [{ id: one.id, title: one.title, unit: one.unit, before: a, after: b }]
}

const standing = (f: Finding | undefined): Standing | undefined => f && { status: f.status, worst: f.margin.worst }

/** Everything in which two projects differ, in the order of the project; what reads the same is told once: job and hilt often share a name. */
export function differencesOf(
  before: Project,
  after: Project,
  presetName: PresetName = () => undefined,
): readonly Difference[] {
  const all = walk({ before, after, presetName }, before, after, [], '')
  const read = new Set<string>()
  return all.filter((d) => {
    const text = [d.what, d.before, d.after].join('\n')
    return !read.has(text) && read.add(text)
  })
}

/** What a preset is called; undefined where nobody knows it, or the presets are not at hand. */
type PresetName = (id: string) => string | undefined

interface Two {
  readonly before: Project
  readonly after: Project
  readonly presetName: PresetName
}

/** Fields that name a preset. */
const ofPresets = new Set(['preset', 'process', 'material'])

function walk(two: Two, a: unknown, b: unknown, path: readonly string[], list: string): Difference[] {
  if (a === b || JSON.stringify(a) === JSON.stringify(b)) return []
  if (isList(a) || isList(b)) return records(two, a, b, path, list)
  if ((isRecord(a) || isRecord(b)) && !isOne(a ?? b) && !isOne(b ?? a)) {
    const names = new Set([...Object.keys(isRecord(a) ? a : {}), ...Object.keys(isRecord(b) ? b : {})])
    const [x, y] = [isRecord(a) ? a : {}, isRecord(b) ? b : {}]
    return [...names].filter((n) => n !== 'id').flatMap((n) => walk(two, x[n], y[n], [...path, n], n))
  }
  const whole = path.join('/')
  const named = b === undefined ? two.before : two.after
  const words = (project: Project, value: unknown) =>
    (typeof value === 'string' && ofPresets.has(path.at(-1) ?? '') ? two.presetName(value) : undefined) ??
    valueWords(project, value, whole)
  return [{ path: whole, what: placeWords(named, whole), before: words(two.before, a), after: words(two.after, b) }]
}

const isList = (v: unknown): v is readonly Readonly<Record<string, unknown>>[] =>
  Array.isArray(v) && v.length > 0 && v.every(isRecord)

/** Records are the same one where their names are; without names by their place. */
function records(two: Two, a: unknown, b: unknown, path: readonly string[], list: string): Difference[] {
  const [before, after] = [keyed(a), keyed(b)]
  return [...new Set([...before.keys(), ...after.keys()])].flatMap((key) => {
    const [x, y] = [before.get(key), after.get(key)]
    if (x && y) return walk(two, x, y, [...path, key], list)
    // A nest that is typed for the first time is told by what was typed.
    if (list === 'nests' || list === 'thresholds') return walk(two, x ?? {}, y ?? {}, [...path, key], list).filter(told)
    const whole = [...path, key].join('/')
    const what = placeWords(x ? two.before : two.after, whole)
    return [{ path: whole, what, before: x ? 'there' : 'not there', after: y ? 'there' : 'not there' }]
  })
}

/** The part a nest is for is its name. */
const told = (d: Difference): boolean => !d.path.endsWith('/part')

function keyed(list: unknown): Map<string, Readonly<Record<string, unknown>>> {
  const found = Array.isArray(list) ? list.filter(isRecord) : []
  return new Map(found.map((r, i) => [keyOf(r) ?? String(i), r]))
}

function keyOf({ id, part }: Readonly<Record<string, unknown>>): string | undefined {
  return [id, part].find((k): k is string => typeof k === 'string')
}
