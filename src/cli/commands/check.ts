import { fetchRare } from '../../checks/rare.ts'
import { type Answer, answer } from '../../job/answer.ts'
import { provenFixes, withProven } from '../../job/proven-fixes.ts'
import { type Report, reportOf } from '../../job/report.ts'
import { loadPresets } from '../../presets/presets.ts'
import { good, type Outcome, type Problem } from '../../problem/problem.ts'
import { placeWords } from '../../project/place-words.ts'
import type { Project } from '../../project/schema/project.ts'
import { exit } from '../exit.ts'
import { readInput } from '../input.ts'
import type { Io } from '../io.ts'
import { count, problemsJson, problemsText } from '../problems-text.ts'
import { reportText } from '../report-text.ts'

export interface JobOptions {
  readonly state?: string
  readonly hilt?: string
}

export interface CheckOptions extends JobOptions {
  readonly json?: boolean
  readonly full?: boolean
}

export interface Judged {
  readonly project: Project
  readonly answer: Answer
  readonly report: Report
}

/** From the file's name to the answer, for every command that needs one. */
export async function judge(path: string, options: JobOptions, io: Io): Promise<Outcome<Judged>> {
  const read = await readInput(path, io)
  if (!read.ok) return read
  const { project, notices } = read.value
  const { state, hilt } = options
  await fetchRare()
  const presets = loadPresets()
  const answerTo = (job: Project) =>
    answer(job, presets, { ...(state === undefined ? {} : { state }), ...(hilt === undefined ? {} : { hilt }) })
  const judged = answerTo(project)
  if (!judged.ok) return judged
  const { findings, notChecked } = judged.value
  const proven = withProven(findings, provenFixes({ project, presets, findings, notChecked, answerTo }))
  const report = reportOf({ ...judged.value, findings: proven }, { project, unknownFields: notices, state })
  return good({ project, answer: judged.value, report })
}

export async function check(path: string, options: CheckOptions, io: Io): Promise<number> {
  const judged = await judge(path, options, io)
  if (!judged.ok) return refuse(judged, path, options.json === true, io)
  const { report, project } = judged.value
  io.out(
    options.json
      ? `${JSON.stringify(report, null, 2)}\n`
      : reportText(report, {
          width: io.width,
          colour: io.colour,
          full: options.full === true,
          named: (p) => placeWords(project, p),
        }),
  )
  return exit[report.verdict]
}

/** Lists what is wrong: for a script on the output, for a person beside it. */
export function refuse(
  { problems }: Extract<Outcome<unknown>, { ok: false }>,
  path: string,
  json: boolean,
  io: Io,
): number {
  if (json) io.out(problemsJson(problems))
  else {
    const name = path === '-' ? 'the project on standard input' : path
    io.err(problemsText(problems, `${count(problems.length, 'problem')} in ${name}. Nothing was judged:`, io.width))
  }
  return problems.every(asked) ? exit.wrongUsage : exit.badProject
}

/** A state or hilt that there is not was named on the command line, not in the file. */
const asked = ({ code, path }: Problem): boolean =>
  (code === 'unknown-value' && path === 'state') || (code === 'unknown-reference' && path === 'hilts')
