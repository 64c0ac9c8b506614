import type { Problem } from '../problem/problem.ts'
import { type Named, placeWords } from '../project/place-words.ts'

/** A problem as one reads it: where in the project's own names, what was got, what is allowed, what would help. */
export function problemWords(project: Named, { path, got, limit, hint, code }: Problem): string {
  const where = path === '' ? '' : `${capital(placeWords(project, path))}: `
  const missing = code === 'missing' || got === ''
  const what = missing
    ? limit === ''
      ? ''
      : `${limit} is missing. `
    : limit === ''
      ? `${got}. `
      : `${got}; allowed is ${limit}. `
  return `${where}${what}${hint}`
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
