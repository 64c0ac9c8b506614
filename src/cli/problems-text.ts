import type { Problem } from '../problem/problem.ts'
import { labelled, lines, wrap } from './columns.ts'

/** Problems told one by one; whoever has more mends these first, for many follow from one. */
const mostTold = 20

/** What is wrong, one block a problem: where, what was found, what is allowed, what to do. */
export function problemsText(problems: readonly Problem[], heading: string, width: number): string {
  const more = problems.length - mostTold
  return lines([
    ...wrap(heading, width),
    ...problems.slice(0, mostTold).flatMap((p) => ['', ...problemLines(p, width)]),
    ...(more > 0 ? ['', `… and ${count(more, 'more problem')}.`] : []),
  ])
}

export function problemLines(p: Problem, width: number, indent = 2): string[] {
  const row = (label: string, text: string) => labelled(label, text, indent + 2, 9, width)
  return [
    ...labelled('', placeOf(p), indent, 0, width),
    ...row('got', p.got),
    ...row('allowed', p.limit),
    ...row('hint', p.hint),
  ]
}

const placeOf = ({ code, path }: Problem): string =>
  path !== '' ? path : code === 'file-not-writable' ? 'the folder' : 'the whole file'

/** The list for a script: each with code, path, got, limit and hint. */
export const problemsJson = (problems: readonly Problem[]): string => `${JSON.stringify({ problems }, null, 2)}\n`

export const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`
