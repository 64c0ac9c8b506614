import type { z } from 'zod'
import { bad, good, type Outcome, type Problem, problem } from '../problem/problem.ts'
import { repeatedKey } from './repeated-keys.ts'
import { formatName, formatVersion, listNames, type Project, project as schema } from './schema/project.ts'
import { tooMuch } from './too-much.ts'
import { unknownFields } from './unknown-fields.ts'

/** Largest file read, in characters: a project with every list full is far below it. */
export const mostCharacters = 4_000_000
/** Deepest nesting read. */
const mostDepth = 40

export interface Read {
  readonly project: Project
  /** Paths of fields that this version does not know. They are kept. */
  readonly notices: readonly string[]
}

/** A project from the text of a file, or the list of what is wrong with it. Nothing is repaired in silence. */
export function readProject(text: string): Outcome<Read> {
  if (text.length > mostCharacters)
    return bad(
      problem(
        'too-large',
        '',
        `${text.length} characters`,
        `at most ${mostCharacters}`,
        'A project holds numbers and short texts; keep photographs elsewhere.',
      ),
    )
  let data: unknown
  try {
    data = JSON.parse(text)
  } catch (error) {
    return bad(
      problem(
        'not-json',
        '',
        text.slice(0, 40),
        'JSON text',
        `${jsonReason(error)} Open the file as it was saved, whole.`,
      ),
    )
  }
  const twice = repeatedKey(text)
  if (twice !== undefined)
    return bad(
      problem(
        'duplicate-id',
        twice,
        'the field twice',
        'each field once in a record',
        'Remove one of them; JSON has no way to say which is meant.',
      ),
    )
  return checkProject(data)
}

/** A project from data that is already parsed. */
export function checkProject(data: unknown): Outcome<Read> {
  const hostile = forbidden(data, '', 0)
  if (hostile) return bad(hostile)
  const early = header(data)
  if (early) return bad(early)
  const parsed = schema.safeParse(data)
  if (!parsed.success)
    return { ok: false, problems: parsed.error.issues.slice(0, 50).map((issue) => fromIssue(issue, data)) }
  const twice = duplicates(parsed.data)
  if (twice.length > 0) return { ok: false, problems: twice }
  const much = tooMuch(parsed.data)
  if (much.length > 0) return { ok: false, problems: much }
  return good({ project: parsed.data, notices: unknownFields(parsed.data) })
}

/** Where it stops being JSON, from what the engines say of it in their different ways. */
function jsonReason(error: unknown): string {
  const text = error instanceof Error ? error.message : ''
  const at = /position (\d+)/.exec(text)?.[1]
  if (at) return `It stops being JSON at character ${at}.`
  const place = /line (\d+) column (\d+)/.exec(text)
  if (place) return `It stops being JSON in line ${place[1]}, column ${place[2]}.`
  if (/end of JSON|Unterminated/i.test(text)) return 'It ends too early.'
  const near = /\.\.\.(.{1,60}?)(?:\.\.\.)? is not valid JSON/s.exec(text)?.[1]
  return near ? `It stops being JSON near ${near.replace(/\s+/g, ' ')}.` : 'It is not JSON.'
}

function header(data: unknown): Problem | undefined {
  const record =
    data !== null && typeof data === 'object' && !Array.isArray(data) ? (data as Record<string, unknown>) : undefined
  if (!record)
    return problem(
      'not-this-format',
      '',
      data,
      `a record with "format": "${formatName}"`,
      'Open a Sledwright project file.',
    )
  if (record['format'] !== formatName)
    return problem('not-this-format', 'format', record['format'], `"${formatName}"`, 'Open a Sledwright project file.')
  const version = record['version']
  if (typeof version === 'number' && version > formatVersion)
    return problem(
      'newer-version',
      'version',
      version,
      `at most ${formatVersion}`,
      'It was saved by a newer release. Open it there, or update; the file has not been changed.',
    )
  return undefined
}

/** Keys that could reach an object's prototype, and nesting made to exhaust the reader. */
function forbidden(value: unknown, path: string, depth: number): Problem | undefined {
  if (value === null || typeof value !== 'object') return undefined
  if (depth > mostDepth)
    return problem(
      'too-deep',
      path.slice(0, 80),
      'deeper nesting',
      `at most ${mostDepth} levels`,
      'No field of a project nests so deep.',
    )
  for (const key of Object.keys(value)) {
    if (key === '__proto__' || key === 'constructor' || key === 'prototype')
      return problem(
        'forbidden-key',
        `${path}/${key}`.replace(/^\//, ''),
        key,
        'any other field name',
        'Remove this field.',
      )
    const found = forbidden((value as Record<string, unknown>)[key], path === '' ? key : `${path}/${key}`, depth + 1)
    if (found) return found
  }
  return undefined
}

function fromIssue(issue: z.core.$ZodIssue, data: unknown): Problem {
  const path = issue.path.map(String)
  const got = path.reduce<unknown>(
    (at, key) => (at !== null && typeof at === 'object' ? (at as Record<string, unknown>)[key] : undefined),
    data,
  )
  const [limit, hint] = issue.message.includes('§')
    ? issue.message.split('§')
    : [plainLimit(issue), 'Correct this field.']
  const code =
    got === undefined
      ? 'missing'
      : issue.code === 'invalid_value'
        ? 'unknown-value'
        : issue.code === 'too_small' || issue.code === 'too_big'
          ? 'out-of-range'
          : 'wrong-type'
  return problem(code, named(path, data), got, limit ?? '', hint ?? '')
}

function plainLimit(issue: z.core.$ZodIssue): string {
  if (issue.code === 'invalid_value') return issue.values.map((v) => `"${String(v)}"`).join(', ')
  if (issue.code === 'invalid_type')
    return issue.expected === 'array' ? 'a list' : issue.expected === 'object' ? 'a record' : `a ${issue.expected}`
  if (issue.code === 'too_big') return `at most ${issue.maximum}`
  if (issue.code === 'too_small') return `at least ${issue.minimum}`
  return issue.message
}

/** `parts/0/body` reads better as `parts/cell/body`. */
function named(path: readonly string[], data: unknown): string {
  const [listName, index, ...rest] = path
  const entry = (data as Record<string, unknown[]>)[listName ?? '']?.[Number(index)] as { id?: unknown } | undefined
  return typeof entry?.id === 'string' ? [listName, entry.id, ...rest].join('/') : path.join('/')
}

function duplicates(p: Project): Problem[] {
  return listNames.flatMap((name) => {
    const seen = new Set<string>()
    return p[name].flatMap((record) => {
      const again = seen.has(record.id)
      seen.add(record.id)
      return again
        ? [
            problem(
              'duplicate-id',
              `${name}/${record.id}`,
              record.id,
              `an id used once in ${name}`,
              `Rename one of them, for example "${record.id}-2".`,
            ),
          ]
        : []
    })
  })
}
