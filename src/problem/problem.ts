/**
 * What may be wrong with what a person gave us, as values. The list of codes is closed: a new kind of failure is a
 * new line here. Exceptions are for bugs only.
 */
export const problemCodes = [
  'not-json',
  'too-large',
  'too-deep',
  'not-this-format',
  'newer-version',
  'wrong-type',
  'missing',
  'not-a-number',
  'out-of-range',
  'unknown-unit',
  'unknown-value',
  'unknown-reference',
  'unknown-preset',
  'duplicate-id',
  'forbidden-key',
  'overlap',
  'outside-hilt',
  'contradiction',
  'circular',
  'too-few-readings',
  'suspicious',
  'does-not-fit',
  'solid-failed',
  'file-not-readable',
  'file-not-writable',
] as const

export type ProblemCode = (typeof problemCodes)[number]

/** One thing that is wrong: where, what was found, what is allowed, and what would work. */
export interface Problem {
  readonly code: ProblemCode
  /** Where, as the parts of a path joined by "/": `sections/body/bore/0/diameter`. Empty for the whole file. */
  readonly path: string
  /** The value found, in the person's own words, cut to a readable length. */
  readonly got: string
  /** What is allowed there. */
  readonly limit: string
  /** What to do, with the nearest value that works where one is known. */
  readonly hint: string
}

export function problem(code: ProblemCode, path: string, got: unknown, limit: string, hint: string): Problem {
  return { code, path, got: show(got), limit, hint }
}

/** A value in at most 60 characters, so that a hostile file cannot flood a message. */
export function show(value: unknown): string {
  if (value === undefined) return 'nothing'
  if (typeof value === 'number') return String(value)
  let text: string
  try {
    text =
      typeof value === 'string'
        ? `"${value.slice(0, 80)}"`
        : Array.isArray(value)
          ? `a list of ${value.length}`
          : plain(value)
  } catch {
    text = typeof value
  }
  return text.length > 60 ? `${text.slice(0, 57)}…` : text
}

function plain(value: unknown): string {
  if (value === null || typeof value !== 'object') return String(value)
  const keys = Object.keys(value)
  return `a record with ${keys.slice(0, 3).join(', ') || 'no fields'}${keys.length > 3 ? ' …' : ''}`
}

/** One line for a terminal or a list: `sections/body/length: got 0, allowed above 0. Give the length …`. */
export function problemText(p: Problem): string {
  const where = p.path === '' ? 'file' : p.path
  return `${where}: got ${p.got}; allowed: ${p.limit}. ${p.hint}`
}

export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] }

export const good = <T>(value: T): Outcome<T> => ({ ok: true, value })
export const bad = (...problems: readonly Problem[]): Outcome<never> => ({ ok: false, problems })
