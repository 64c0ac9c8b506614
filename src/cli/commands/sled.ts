import { existsSync } from 'node:fs'
import { basename, join } from 'node:path'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import { sledCautions } from '../../job/cautions.ts'
import { type BodyReport, type SledFiles, sledFiles } from '../../job/sled-files.ts'
import type { Problem } from '../../problem/problem.ts'
import { hanging, lines } from '../columns.ts'
import { exit } from '../exit.ts'
import type { Io } from '../io.ts'
import { plain } from '../numbers.ts'
import { problemsText } from '../problems-text.ts'
import { summaryText } from '../report-text.ts'
import { usageText } from '../usage.ts'
import { writeFiles } from '../write-files.ts'
import { type JobOptions, type Judged, judge, refuse } from './check.ts'

export interface SledOptions extends Pick<JobOptions, 'hilt'> {
  readonly out: string
  readonly force?: boolean
}

/** Judges the project, builds every sled, and writes what may leave. */
export async function sled(path: string, options: SledOptions, io: Io): Promise<number> {
  if (options.out.trim() === '') {
    io.err(usageText('--out names no folder.', 'Give the folder to write to, for example --out prints.', io.width))
    return exit.wrongUsage
  }
  const judged = await judge(path, options, io)
  if (!judged.ok) return refuse(judged, path, false, io)
  const { answer, report } = judged.value
  const clash = report.verdict === 'clash'
  const base = baseName(path, judged.value)
  io.out(summaryText(report, { width: io.width, colour: io.colour }))
  if (clash && !options.force) return hold([], options.out, base, judged.value, io)
  const made = sledFiles(await loadKernel(), { answer, report, base })
  if (!made.ok) {
    io.err(problemsText(made.problems, 'No sled could be made:', io.width))
    return made.problems.every((p) => p.code === 'missing') ? exit.badProject : exit.clash
  }
  if (made.value.problems.length > 0 && !options.force)
    return hold(made.value.problems, options.out, base, judged.value, io)
  const written = writeFiles(options.out, made.value.files)
  if (!written.ok) {
    io.err(problemsText(written.problems, 'The sled was not written:', io.width))
    return exit.badProject
  }
  io.out(writtenText(made.value, written.value, judged.value, io.width))
  return exit.done
}

/** Says why nothing was written, and warns of a file that an earlier run left under the same name. */
function hold(problems: readonly Problem[], out: string, base: string, { answer }: Judged, io: Io): number {
  if (problems.length > 0) io.err(problemsText(problems, 'The solid did not pass its gate:', io.width))
  const old = answer.assembly.sleds.map((s) => join(out, `${base}-${s.id}.stl`)).filter((file) => existsSync(file))
  io.err(
    lines([
      ...hanging('', 'No sled was written. --force writes it all the same, with UNPROVEN in its name.', io.width),
      ...old.flatMap((file) => hanging('', `${file} is from an earlier run: do not print it.`, io.width)),
    ]),
  )
  return exit.clash
}

function writtenText(made: SledFiles, paths: readonly string[], { project }: Judged, width: number): string {
  const { report } = made
  const row = (text: string) => hanging('  ', text, width)
  return lines([
    '',
    report.proven ? 'Written:' : 'Written although it is not proven to fit or to print:',
    ...paths.flatMap((path, i) => {
      const body = report.bodies[i]
      return [...row(path), ...hanging('    ', body ? bodyText(body) : 'dimensions, findings, sizes', width)]
    }),
    ...hanging('', `Millimetres; ${report.layout}.`, width),
    ...sledCautions(project).flatMap((text) => hanging('Caution: ', text, width)),
  ])
}

function bodyText(body: BodyReport): string {
  const { min, max } = body.bounds
  const size = [0, 1, 2].map((i) => plain((max[i] as number) - (min[i] as number), 2)).join(' × ')
  const closed = body.faults.length === 0 ? 'closed' : body.faults.join('; ')
  return `${size} mm, ${plain(body.volume / 1000, 2)} cm³, ${body.triangles} triangles, ${closed}`
}

/** What the files are called after: the project's own file, or its job where it came through standard input. */
function baseName(path: string, { project }: Judged): string {
  const own = path === '-' ? (project.job[0]?.id ?? 'project') : basename(path).replace(/(\.sledwright)?\.json$/i, '')
  return own.replace(/[\p{Cc}<>:"|?*\\/]/gu, '-') || 'project'
}
