import type { Report, ReportFinding, ReportNotChecked, ReportTightest } from '../job/report.ts'
import { hanging, labelled, lines, wrap } from './columns.ts'
import type { Io } from './io.ts'
import { left, percent, plain, tenths } from './numbers.ts'
import { type Look, paint } from './paint.ts'
import { problemLines } from './problems-text.ts'

export interface ReportTextOptions extends Pick<Io, 'width' | 'colour'> {
  /** Reasons of what is clear, too. */
  readonly full: boolean
  /** A path of the project in words. */
  readonly named: (path: string) => string
}

/** Columns before a finding's title: status, three margins, place. */
const before = 53
/** Where the details of a finding begin, and how wide their labels are. */
const indent = 11
const label = 8
/** Contributors named one by one. */
const mostNamed = 3

/** The report for a person: verdict and tightest item first, then everything in order of margin. */
export function reportText(report: Report, options: ReportTextOptions): string {
  const { width, colour } = options
  const section = (title: string, body: readonly string[]) =>
    body.length === 0 ? [] : ['', paint(title, 'title', colour), ...body]
  return lines([
    ...verdictLines(report, options),
    ...wrap(subject(report), width),
    ...findingLines(report, options),
    ...section(
      'Not checked, so the verdict is unsure at best',
      report.notChecked.flatMap((n) => notCheckedLines(n, options)),
    ),
    ...section(
      'Questions: these look like slips of the pen; they were taken as they stand',
      report.questions.flatMap((q) => problemLines(q, width)),
    ),
    ...section(
      'Assumed',
      report.assumptions.flatMap((a) => hanging('  · ', a, width)),
    ),
    ...section(
      'Notices',
      report.notices.flatMap((n) => hanging('  · ', n, width)),
    ),
  ])
}

/** The verdict alone, for a command that does more than judge: what keeps it from being clear, and nothing else. */
export function summaryText(report: Report, options: Omit<ReportTextOptions, 'full' | 'named'>): string {
  const open = report.findings.filter((f) => f.status === 'clash' || f.status === 'unsure').slice(1)
  return lines([
    ...verdictLines(report, options),
    ...wrap(subject(report), options.width),
    ...open.flatMap((f) => hanging(`  ${f.status.padEnd(8)}`, f.title, options.width)),
    ...unbuildable(report, options.width),
  ])
}

/** Which dimension no solid can be made from, what was typed there and what would work. */
function unbuildable({ findings }: Report, width: number): string[] {
  return findings
    .filter((f) => f.check === 'buildable' && f.status === 'clash')
    .flatMap((f) =>
      f.fix.filter((x) => x.path !== '').flatMap((x) => hanging(`  ${x.path}: `, `${f.why} ${x.text}`, width)),
    )
}

function verdictLines(report: Report, { width, colour }: Omit<ReportTextOptions, 'full' | 'named'>): string[] {
  const word = report.verdict.toUpperCase()
  const [first = '', ...rest] = hanging(`${word}  `, verdictText(report), width)
  return [first.replace(word, paint(word, report.verdict, colour)), ...rest]
}

/** The tightest item; where only unmeasured things keep the job from being clear, the first of them. */
function verdictText(report: Report): string {
  const { tightest, verdict } = report
  const [open] = report.notChecked
  if (verdict === 'unsure' && open && tightest?.status !== 'unsure') return `${open.title}: ${open.hint}`
  if (!tightest) return 'Nothing could be checked.'
  const assumed = report.findings.find((f) => f.id === tightest.id)?.contributors.some((c) => c.source === 'assumed')
  const rests =
    tightest.status === 'unsure' && tightest.margin.worst >= 0 && assumed ? '; it rests on an assumed size' : ''
  return `${tightest.title}: ${leftText(tightest)}${placeText(tightest)}${rests}`
}

function leftText({ margin: { worst, nominal, best }, unit, status }: ReportTightest): string {
  const amount = (n: number) => `${left(Math.abs(n), unit && 'mm')} ${unit}`.trim()
  if (status === 'clash' || worst < 0) {
    if (best - worst < 0.005) return `${amount(worst)} too little`
    const lacking = `${amount(worst)} too little at the worst`
    if (best < 0) return `${lacking}, ${amount(best)} at best`
    return nominal < 0
      ? `${lacking}, ${amount(nominal)} as measured`
      : `${lacking}, ${amount(nominal)} spare as measured`
  }
  return `${amount(worst)} to spare at the worst`
}

const placeText = ({ at }: ReportTightest): string =>
  at === null ? '' : `, at z ${plain(at.z, 1)}, θ ${plain(at.theta, 0)}°, r ${plain(at.r, 1)}`

function subject({ job, hilt, state, findings, notChecked }: Report): string {
  const of = (status: string) => findings.filter((f) => f.status === status).length
  const counts = [
    ...(['clash', 'unsure', 'clear', 'advice'] as const).flatMap((s) => (of(s) > 0 ? [`${of(s)} ${s}`] : [])),
    ...(notChecked.length > 0 ? [`${notChecked.length} not checked`] : []),
  ]
  return [...new Set([job, hilt].filter((s) => s !== '')), state, counts.join(', ')].filter((s) => s !== '').join(' · ')
}

function findingLines(report: Report, options: ReportTextOptions): string[] {
  const { findings } = report
  if (findings.length === 0) return []
  const hidden = !options.full && findings.some((f) => f.status === 'clear')
  return [
    '',
    '  status      worst nominal    best       z     θ     r  what',
    ...findings.flatMap((f) => [
      ...headLines(f, options),
      ...(options.full || f.status !== 'clear' ? detailLines(f, options) : []),
    ]),
    ...(hidden ? ['', ...wrap('Reasons, limits and shares of what is clear: --full.', options.width)] : []),
    ...wrap('Margins: mm left over what is needed, unless a unit stands beside them.', options.width),
  ]
}

function headLines(f: ReportFinding, { width, colour }: ReportTextOptions): string[] {
  const { worst, nominal, best } = f.margin
  const status = f.status.padEnd(8)
  const margins = [worst, nominal, best].map((n) => left(n, f.unit).padStart(8)).join('')
  const at = f.at
    ? `${tenths(f.at.z).padStart(8)}${`${plain(f.at.theta, 0)}°`.padStart(6)}${tenths(f.at.r).padStart(6)}`
    : ''.padStart(20)
  const row = `  ${status}${margins}${at}`.padEnd(before)
  const [first = '', ...rest] = hanging(`${row} `, f.title, width)
  return [first.replace(status, paint(status, f.status as Look, colour)), ...rest]
}

function detailLines(f: ReportFinding, { width, named }: ReportTextOptions): string[] {
  const row = (name: string, text: string | undefined) =>
    text === undefined || text === '' ? [] : labelled(name, text, indent, label, width)
  return [
    ...row('why', f.why),
    ...f.fix.flatMap((fix, i) => row(i === 0 ? 'fix' : 'or', fix.text)),
    ...row(
      'chance',
      f.probability === null || f.margin.worst >= 0 ? undefined : `${percent(f.probability)} that it holds`,
    ),
    ...row('doubt', doubtText(f, named)),
    ...row('limit', f.source),
    ...row('state', f.state === 'every state' ? undefined : f.state),
    '',
  ]
}

/** Where the spread comes from, largest share first, and whether measuring settles it. */
function doubtText(f: ReportFinding, inWords: ReportTextOptions['named']): string | undefined {
  const named = f.contributors.filter((c) => c.share >= 0.005).slice(0, mostNamed)
  if (named.length === 0) return undefined
  const kinds = { unknown: 'a reading settles it', varies: 'varies by itself' }
  return named
    .map((c) => {
      const assumed = c.source === 'assumed' ? ', assumed' : ''
      return `${percent(c.share)} ${inWords(c.path)} (${kinds[c.kind]}${assumed})`
    })
    .join('; ')
}

function notCheckedLines(n: ReportNotChecked, { width, named }: ReportTextOptions): string[] {
  return [...hanging('  · ', n.title, width), ...labelled('', `${named(n.path)}: ${n.hint}`, 4, 0, width)]
}
