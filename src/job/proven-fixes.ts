import type { Finding, Fix, NotChecked } from '../checks/finding.ts'
import type { Presets } from '../presets/registry.ts'
import type { Outcome } from '../problem/problem.ts'
import { applyFix } from '../project/apply-fix.ts'
import type { Project } from '../project/schema/project.ts'
import type { Answer } from './answer.ts'
import { listedParts } from './listed-parts.ts'
import { spoiltBy } from './spoilt-by.ts'

/** A number that is offered may be off by its rounding, mm. */
const rounding = 1e-6
/** One place widened, the next may be too tight: so often a number is taken farther. */
const rounds = 4

type Fields = Readonly<Record<string, unknown>>

/**
 * The fixes of every finding that does not hold, each tried: with its number typed in, the finding holds. Checks offer
 * what mends the tightest place; what does not mend all of them is taken farther or dropped, and what spoils something
 * else says so and comes last. Advice without a number stays. Keyed by the finding's id.
 */
export function provenFixes(job: FixJob): ReadonlyMap<string, readonly Fix[]> {
  return new Map(job.findings.filter((f) => f.fix.length > 0).map((f) => [f.id, provenFor(job, f)]))
}

/** The same for one finding, where something else may have to be done in between. */
export function provenFor(job: FixJob, finding: Finding): readonly Fix[] {
  const tried = finding.fix.filter((fix) => fix.value !== undefined)
  const [told, listed] = fromList(job, finding)
  const proven = [...tried.flatMap((fix) => best(job, finding, fix) ?? []), ...listed]
  const [clean, spoiling] = [proven.filter((p) => !spoils(p)), proven.filter(spoils)]
  const noWay = clean.length === 0 && (spoiling.length > 0 || (tried.length > 0 && told.length === 0))
  return [...sorted(clean), ...told, ...(noWay ? [none(spoiling.length > 0, finding)] : []), ...sorted(spoiling)]
}

/** Advice that stays advice, and that for which the list holds a part that does it. */
function fromList(job: FixJob, finding: Finding): [Fix[], Proven[]] {
  const told: Fix[] = []
  const listed: Proven[] = []
  for (const fix of finding.fix.filter((f) => f.value === undefined)) {
    const found = widestThatWorks(job, finding, listedParts(job.project, job.presets, fix))
    if (found) listed.push(found)
    else if (!fix.onlyTried) told.push(fix)
  }
  return [told, listed]
}

/** Of parts from the list, the widest first: the first that leaves nothing open, else the one that leaves least. */
function widestThatWorks(job: FixJob, finding: Finding, parts: readonly Fix[]): Proven | undefined {
  let held: Proven | undefined
  for (const part of parts) {
    const proven = prove(job, finding, part)
    if (!proven || spoils(proven)) continue
    if (!held || byOutcome(proven, held) < 0) held = proven
    if (proven.open === 0) break
  }
  return held
}

interface Proven {
  readonly fix: Fix
  /** How many findings are open then. */
  readonly open: number
}

const spoils = (p: Proven): boolean => p.fix.spoils?.status === 'clash'

const sorted = (proven: readonly Proven[]): Fix[] => proven.toSorted(byOutcome).map((p) => p.fix)

/** What leaves least open comes first, and what makes something else worse after what does not. */
function byOutcome(a: Proven, b: Proven): number {
  const worse = ({ fix }: Proven) => ['unsure', 'clash'].indexOf(fix.spoils?.status ?? '')
  return worse(a) - worse(b) || a.open - b.open
}

/** Said where no number leads to anything but another clash: no place in the project is to blame for that. */
const none = (others: boolean, { parts }: Finding): Fix => ({
  text: `No single number that was tried clears this${others ? ': each leads to another clash' : ''}.${parts.filter((p) => p.startsWith('parts/')).length > 1 ? ' Move one of the two along or around, or take a smaller one.' : ''}`,
  path: '',
})

/** The change as it is offered here, or with the number that another open finding wants at the same place, if that leads farther. */
function best(job: FixJob, finding: Finding, fix: Fix): Proven | undefined {
  const own = prove(job, finding, fix)
  if ((own && own.open === 0) || typeof fix.value !== 'number') return own
  const others = job.findings
    .filter((f) => f.id !== finding.id)
    .flatMap((f) => f.fix)
    .filter((o) => o.path === fix.path && typeof o.value === 'number' && o.value !== fix.value)
  const values = new Map(others.map((o) => [o.value, o]))
  return [...values.values()].reduce((held, other) => {
    const proven = prove(job, finding, other)
    return proven && (!held || byOutcome(proven, held) < 0) ? proven : held
  }, own)
}

export interface FixJob {
  /** Where another part is taken from. */
  readonly presets: Presets
  readonly project: Project
  readonly findings: readonly Finding[]
  readonly notChecked: readonly NotChecked[]
  readonly answerTo: (project: Project) => Outcome<Pick<Answer, 'findings' | 'notChecked'>>
}

function prove(job: FixJob, { id }: Finding, first: Fix): Proven | undefined {
  let fix = first
  let held: Proven | undefined
  for (let round = 0; round < rounds; round++) {
    const next = applyFix(job.project, fix)
    const after = next && job.answerTo(next)
    if (!after?.ok) return held
    const { findings, notChecked } = after.value
    // A finding that is gone because nobody looks any more is not mended.
    if (notChecked.some((n) => job.notChecked.every((o) => o.id !== n.id))) return held
    const now = findings.find((f) => f.id === id)
    const holds = !now || isHeld(now)
    if (holds) {
      const proven = outcome(job, fix, findings, id)
      if (held && byOutcome(proven, held) > 0) return held
      held = proven
    }
    const left = holds ? stillOpen(job, findings, first) : [now]
    const farther = left.flatMap((f) => f.fix.flatMap((other) => fartherThan(fix, other) ?? []))[0]
    if (!farther) return held
    // Said of what is put in: its last size alone, after the first words.
    fix = isRecord(farther.value) ? { ...farther, text: `${first.text} ${farther.text}` } : farther
  }
  return held
}

const isHeld = (f: Finding): boolean => f.margin.worst >= -rounding

/** What comes of a change that mends its finding. */
function outcome(job: FixJob, fix: Fix, after: readonly Finding[], id: string): Proven {
  const spoilt = spoiltBy(job.findings, after, id)
  const open = after.filter((f) => f.status !== 'advice' && !isHeld(f)).length
  if (!spoilt) return { fix, open }
  const told = fix.spoils ? { ...spoilt, text: `${fix.spoils.text} ${spoilt.text}` } : spoilt
  return { fix: { ...fix, text: `${fix.text} ${spoilt.text}`, spoils: told }, open }
}

/**
 * Findings that were open before and are still. What is put in anew, such as a window, is made as large as they need,
 * too: one thing sticks in on the way and in place, and one click is to mend both. A number stays the finding's own.
 */
function stillOpen(job: FixJob, after: readonly Finding[], fix: Fix): readonly Finding[] {
  if (!isRecord(fix.value)) return []
  const open = new Set(job.findings.filter((f) => !isHeld(f)).map((f) => f.id))
  return after.filter((f) => open.has(f.id) && !isHeld(f))
}

/** The same change with a larger number; undefined where the other is another change. */
function fartherThan(fix: Fix, next: Fix): Fix | undefined {
  const { value } = fix
  // Words such as "0.40 mm farther" count from where the first change led to: only a size itself can be said again.
  if (typeof next.value === 'number' && next.path === fix.path)
    return typeof value === 'number' && next.text.includes(next.value.toFixed(2)) ? next : undefined
  const field =
    isRecord(value) && next.path.startsWith(`${fix.path}/${String(value['id'])}/`) ? next.path.split('/').at(-1) : ''
  return field && typeof next.value === 'number'
    ? { ...fix, text: next.text, value: { ...(value as Fields), [field]: next.value } }
    : undefined
}

const isRecord = (v: unknown): v is Fields => v !== null && typeof v === 'object' && !Array.isArray(v)

/** The findings with their fixes as proven. */
export const withProven = <F extends Finding>(
  findings: readonly F[],
  fixes: ReadonlyMap<string, readonly Fix[]>,
): F[] => findings.map((f) => ({ ...f, fix: fixes.get(f.id) ?? [] }))
