import type { Finding, NotChecked, Where } from '../checks/finding.ts'
import type { Verdict } from '../checks/verdict.ts'
import type { Problem } from '../problem/problem.ts'
import type { FixValue } from '../project/apply-fix.ts'
import type { Project } from '../project/schema/project.ts'
import type { Answer } from './answer.ts'

/** The answer as plain data: what `check --json` prints, what stands beside a sled's files, what papers are made from. */
export interface Report {
  readonly format: 'sledwright-report'
  readonly version: 1
  /** Every length in it. Angles are in degrees. */
  readonly units: 'mm'
  /** Names of the job and of the hilt that was judged. */
  readonly job: string
  readonly hilt: string
  /** The one state looked at, or "every state". */
  readonly state: string
  readonly verdict: Verdict
  /** The finding with least left over, the worst status first; null where nothing could be checked. */
  readonly tightest: ReportTightest | null
  /** Tightest first. */
  readonly findings: readonly ReportFinding[]
  readonly notChecked: readonly ReportNotChecked[]
  /** Entries that look like a slip; they were taken as they stand. */
  readonly questions: readonly Problem[]
  /** Choices nobody made, in words. */
  readonly assumptions: readonly string[]
  /** What else the person should know: fields that were kept but not understood, hilts not looked at. */
  readonly notices: readonly string[]
}

export type ReportTightest = Pick<ReportFinding, 'id' | 'title' | 'status' | 'margin' | 'unit' | 'at'>

/** A finding in which nothing is left out: what does not apply is null. */
export interface ReportFinding extends Omit<Finding, 'probability' | 'at' | 'fix'> {
  readonly probability: number | null
  readonly at: Where | null
  readonly fix: readonly { readonly text: string; readonly path: string; readonly value: FixValue | null }[]
}

export interface ReportNotChecked extends NotChecked {
  readonly status: 'not-checked'
}

export interface ReportAbout {
  readonly project: Project
  /** Paths of fields that were not understood. */
  readonly unknownFields: readonly string[]
  readonly state?: string | undefined
}

export function reportOf(answer: Answer, about: ReportAbout): Report {
  const findings = answer.findings.map(findingOf)
  const tightest = findings.find((f) => f.status !== 'advice')
  return {
    format: 'sledwright-report',
    version: 1,
    units: 'mm',
    job: about.project.job[0]?.name ?? about.project.job[0]?.id ?? '',
    hilt: answer.assembly.hilt.name,
    state: about.state ?? 'every state',
    verdict: answer.verdict,
    tightest: tightest ? tightestOf(tightest) : null,
    findings,
    notChecked: answer.notChecked.map((n) => ({ ...n, status: 'not-checked' })),
    questions: answer.assembly.questions,
    assumptions: answer.assembly.assumptions,
    notices: [...otherHilts(answer, about.project), ...about.unknownFields.map(unknownField)],
  }
}

const tightestOf = ({ id, title, status, margin, unit, at }: ReportFinding): ReportTightest => ({
  id,
  title,
  status,
  margin,
  unit,
  at,
})

function findingOf(f: Finding): ReportFinding {
  return {
    ...f,
    value: near(f.value),
    limit: tidy(f.limit),
    margin: { worst: near(f.margin.worst), nominal: near(f.margin.nominal), best: near(f.margin.best) },
    settled: near(f.settled),
    probability: f.probability === undefined ? null : tidy(f.probability),
    contributors: f.contributors.map((c) => ({ ...c, share: tidy(c.share) })),
    at: f.at === undefined ? null : { z: tidy(f.at.z), theta: tidy(f.at.theta), r: tidy(f.at.r) },
    fix: f.fix.map(({ text, path, value }) => ({ text, path, value: value ?? null })),
  }
}

/** Without the dust of binary arithmetic, so that the same answer reads the same on every machine. Never −0. */
export const tidy = (n: number): number => Number(n.toFixed(9)) + 0

/** JSON knows no infinity: where nothing is near, the gap is told as this, which is farther than any hilt is long. */
export const farAway = 9999
const near = (n: number): number => tidy(Math.min(farAway, Math.max(-farAway, n)))

/** A verdict on one hilt must not pass for one on the whole parcel. */
function otherHilts(answer: Answer, project: Project): string[] {
  const others = project.hilts.filter((h) => h.id !== answer.assembly.hilt.id)
  return others.length === 0
    ? []
    : [
        `Only the hilt "${answer.assembly.hilt.name}" was looked at, not ${others.map((h) => `"${h.name ?? h.id}"`).join(', ')}.`,
      ]
}

const unknownField = (path: string): string => `The field ${path} is not known to this version; it is kept as it is.`
