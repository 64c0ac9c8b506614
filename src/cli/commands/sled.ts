import { basename } from 'node:path'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import { sledCautions } from '../../job/cautions.ts'
import { type FileLayout, fileLayouts } from '../../job/lay-out.ts'
import { type SledFormat, sledFiles, sledFormats, sledSet } from '../../job/sled-files.ts'
import { reportFile, type SledReport, sledReport } from '../../job/sled-report.ts'
import type { Problem } from '../../problem/problem.ts'
import { hanging, lines } from '../columns.ts'
import { exit } from '../exit.ts'
import type { Io } from '../io.ts'
import { leftOver, type Place } from '../left-over.ts'
import { count, problemsText } from '../problems-text.ts'
import { summaryText } from '../report-text.ts'
import { bodyLines } from '../sled-text.ts'
import { usageText } from '../usage.ts'
import { writeFiles } from '../write-files.ts'
import { type JobOptions, type Judged, judge, refuse } from './check.ts'

export interface SledOptions extends Pick<JobOptions, 'hilt'> {
  readonly out: string
  readonly force?: boolean
  readonly layout?: string
  readonly stl?: boolean
  readonly '3mf'?: boolean
}

/** Judges the project, builds every sled, and writes what may leave. */
export async function sled(path: string, options: SledOptions, io: Io): Promise<number> {
  const { layout = 'printed' } = options
  if (options.out.trim() === '') {
    io.err(usageText('--out names no folder.', 'Give the folder to write to, for example --out prints.', io.width))
    return exit.wrongUsage
  }
  if (!isLayout(layout)) {
    io.err(usageText(`There is no layout "${layout}".`, `There are: ${fileLayouts.join(', ')}.`, io.width))
    return exit.wrongUsage
  }
  const judged = await judge(path, options, io)
  if (!judged.ok) return refuse(judged, path, false, io)
  const { answer, project, report } = judged.value
  const clash = report.verdict === 'clash'
  const base = baseName(path, judged.value)
  const place: Place = { folder: options.out, base, layout, sleds: answer.assembly.sleds.map((s) => s.id) }
  io.out(summaryText(report, { width: io.width, colour: io.colour }))
  if (clash && !options.force) return hold([], place, io)
  const made = sledSet(await loadKernel(), answer, layout)
  if (!made.ok) {
    io.err(problemsText(made.problems, 'No sled could be made:', io.width))
    return made.problems.every((p) => p.code === 'missing') ? exit.badProject : exit.clash
  }
  const set = made.value
  if (set.problems.length > 0 && !options.force) return hold(set.problems, place, io)
  const files = await sledFiles(set, { base, job: report.job, formats: formatsOf(options) })
  const full = await sledReport(set, files, report)
  const written = writeFiles(options.out, [...files, reportFile(full, base)])
  if (!written.ok) {
    io.err(problemsText(written.problems, 'The sled was not written:', io.width))
    return exit.badProject
  }
  io.out(writtenText(full, written.value, sledCautions(project), io.width))
  const old = leftOver(place, written.value)
  io.err(lines(old.flatMap((f) => hanging('', `${f} is from an earlier run and was not written anew.`, io.width))))
  return exit.done
}

const isLayout = (text: string): text is FileLayout => fileLayouts.some((l) => l === text)

/** Both where neither is asked for. */
function formatsOf(options: SledOptions): readonly SledFormat[] {
  const asked = sledFormats.filter((f) => options[f] === true)
  return asked.length > 0 ? asked : sledFormats
}

/** Says why nothing was written, and warns of files that an earlier run left under the same names. */
function hold(problems: readonly Problem[], place: Place, io: Io): number {
  if (problems.length > 0) io.err(problemsText(problems, 'The solid did not pass its gate:', io.width))
  io.err(
    lines([
      ...hanging('', 'No sled was written. --force writes it all the same, with UNPROVEN in its name.', io.width),
      ...leftOver(place, []).flatMap((file) =>
        hanging('', `${file} is from an earlier run: do not print it.`, io.width),
      ),
    ]),
  )
  return exit.clash
}

function writtenText(report: SledReport, paths: readonly string[], cautions: readonly string[], width: number): string {
  return lines([
    '',
    report.proven ? 'Written:' : 'Written although it is not proven to fit or to print:',
    ...paths.flatMap((path) => hanging('  ', path, width)),
    ...report.sleds.flatMap((s) => [
      ...hanging('', `${s.name || s.id}, ${count(s.bodies.length, 'printed body', 'printed bodies')}:`, width),
      ...s.bodies.flatMap((b) => bodyLines(b, s, width)),
    ]),
    ...hanging('', `Millimetres; ${report.frame}.`, width),
    ...cautions.flatMap((text) => hanging('Caution: ', text, width)),
  ])
}

/** What the files are called after: the project's own file, or its job where it came through standard input. */
function baseName(path: string, { project }: Judged): string {
  const own = path === '-' ? (project.job[0]?.id ?? 'project') : basename(path).replace(/(\.sledwright)?\.json$/i, '')
  return own.replace(/[\p{Cc}<>:"|?*\\/]/gu, '-') || 'project'
}
