/**
 * `npm run prove -- --jobs 5000`: random jobs, each judged by the product and by the truth of draw after draw, on every
 * core. What is judged is kept as it comes, so that a run that was stopped goes on where it stopped; a change of the
 * code or of the jobs begins anew. The last line is the counts; the exit code is 1 where one verdict was false.
 */
import { fork } from 'node:child_process'
import { createHash } from 'node:crypto'
import { appendFileSync, existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs'
import { availableParallelism } from 'node:os'
import { join, relative } from 'node:path'
import { parseArgs } from 'node:util'
import { countsLine, isBad, type Record } from './record.ts'

const root = join(import.meta.dirname, '..', '..')
const wrongUsage = 64

interface Options {
  readonly jobs: number
  readonly from: number
}

function options(): Options | undefined {
  try {
    const { values } = parseArgs({ options: { jobs: { type: 'string' }, from: { type: 'string' } } })
    const [jobs, from] = [Number(values.jobs ?? '500'), Number(values.from ?? '1')]
    return [jobs, from].every((n) => Number.isInteger(n) && n >= 1) ? { jobs, from } : undefined
  } catch {
    return undefined
  }
}

async function prove({ jobs, from }: Options): Promise<number> {
  const file = fileOfRun()
  const known = recordsIn(file)
  const wanted = Array.from({ length: jobs }, (_, i) => from + i)
  const open = wanted.filter((seed) => !known.has(seed))
  if (open.length < jobs) console.log(`${jobs - open.length} of ${jobs} jobs were judged before; going on.`)
  let left = open.length
  await judgeAll(open, (record) => {
    appendFileSync(file, `${JSON.stringify(record)}\n`)
    known.set(record.seed, record)
    if (isBad(record)) console.log(badText(record))
    left--
    if (left % 100 === 0 && left > 0) console.log(`${left} jobs to go`)
  })
  const records = wanted.map((seed) => known.get(seed) as Record)
  const bad = records.filter(isBad)
  for (const record of bad.filter((r) => !open.includes(r.seed))) console.log(badText(record))
  console.log(countsLine(records))
  return bad.length > 0 ? 1 : 0
}

/** Every seed goes to the first process that is free. */
function judgeAll(seeds: readonly number[], take: (record: Record) => void): Promise<void> {
  const queue = [...seeds]
  const one = (): Promise<void> =>
    new Promise((done, failed) => {
      const worker = fork(join(import.meta.dirname, 'job-worker.ts'), { execArgv: process.execArgv })
      let at: number | undefined
      worker.on('message', (said: Record | 'ready') => {
        if (said !== 'ready') take(said)
        at = queue.shift()
        if (at === undefined) worker.disconnect()
        else worker.send(at)
      })
      worker.on('error', failed)
      worker.on('exit', (code) => {
        if (at !== undefined) take({ seed: at, verdict: 'crashed', why: `the process ended with ${code}` })
        done(at === undefined || queue.length === 0 ? undefined : one())
      })
    })
  const workers = Math.min(availableParallelism(), seeds.length)
  return Promise.all(Array.from({ length: workers }, one)).then(() => undefined)
}

/** What a verdict comes from, and what judges it. */
const folders = [
  'body',
  'checks',
  'entry',
  'job',
  'presets',
  'problem',
  'project',
  'quantity',
  'resolve',
  'rules',
  'sled',
]
const proved = ['geometry', 'presets', 'tests/prove', ...folders.map((folder) => join('src', folder))]

/** Where this run is kept: named after the code it proves. */
function fileOfRun(): string {
  const hash = createHash('sha256')
  for (const folder of proved)
    for (const path of filesIn(folder)) hash.update(path).update(readFileSync(join(root, path)))
  const kept = join(root, 'out', 'prove')
  mkdirSync(kept, { recursive: true })
  return join(kept, `${hash.digest('hex').slice(0, 12)}.jsonl`)
}

function filesIn(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(root, join(entry.parentPath, entry.name)))
    .sort()
}

function recordsIn(file: string): Map<number, Record> {
  const lines = existsSync(file) ? readFileSync(file, 'utf8').split('\n') : []
  return new Map(
    lines.flatMap((line) => {
      const record = recordOf(line)
      return record ? [[record.seed, record] as const] : []
    }),
  )
}

/** A line that was cut off when the run was stopped is judged again. */
function recordOf(line: string): Record | undefined {
  try {
    return JSON.parse(line) as Record
  } catch {
    return undefined
  }
}

function badText(r: Record): string {
  const faults = (r.faults ?? []).map(
    (f) =>
      `  ${f.kind}: ${f.id} was said ${f.said}; the gap is ${f.gap.toFixed(4)}, ${f.limit} is needed, when ${JSON.stringify(f.draw)}`,
  )
  return [`job ${r.seed}: ${r.verdict}${r.why ? ` ${r.why}` : ''}`, ...faults].join('\n')
}

const asked = options()
if (asked === undefined) {
  console.error('Usage: npm run prove -- [--jobs N] [--from SEED]   N and SEED are whole numbers from 1 up.')
  process.exitCode = wrongUsage
} else process.exitCode = await prove(asked)
