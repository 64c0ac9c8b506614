import { type Problem, problem } from '../problem/problem.ts'
import { presetFiles } from './files.ts'
import { howKnown } from './known.ts'
import { type Kind, type Preset, presetFile, schemas } from './schema/kinds.ts'

/** Every fault of every data file; empty when all is well. Path: file, entry, field. */
export function presetProblems(files: Readonly<Record<string, unknown>> = presetFiles): readonly Problem[] {
  const problems: Problem[] = []
  const owners = new Map<string, string>()
  for (const [name, content] of Object.entries(files)) {
    const file = presetFile.safeParse(content)
    if (!file.success) {
      problems.push(...issuesOf(name, content, file.error.issues))
      continue
    }
    for (const [i, raw] of file.data.entries.entries()) {
      const where = `${name}/entries/${typeof raw['id'] === 'string' ? raw['id'] : i}`
      const entry = schemas[raw.kind as Kind].safeParse(raw)
      if (!entry.success) {
        problems.push(...issuesOf(where, raw, entry.error.issues))
        continue
      }
      problems.push(...unsaid(where, entry.data), ...repeated(where, entry.data.id, owners))
    }
  }
  return problems
}

interface Issue {
  readonly path: readonly PropertyKey[]
  readonly message: string
}

function issuesOf(where: string, content: unknown, issues: readonly Issue[]): Problem[] {
  return issues.map((issue) => {
    const path = issue.path.map(String)
    const got = issue.path.reduce<unknown>((v, key) => (v as Record<PropertyKey, unknown> | undefined)?.[key], content)
    return problem(
      'wrong-type',
      [where, ...path].join('/'),
      got,
      issue.message,
      'Write the field in the form its schema gives.',
    )
  })
}

function repeated(where: string, id: string, owners: Map<string, string>): Problem[] {
  const first = owners.get(id)
  owners.set(id, first ?? where)
  return first === undefined
    ? []
    : [problem('duplicate-id', where, id, `one entry for each id, and ${first} has it`, 'Choose another id.')]
}

/** Fields with a number in them of which the entry does not say how it is known, and sayings about absent fields. */
function unsaid(where: string, entry: Preset): Problem[] {
  const problems: Problem[] = []
  const fields = numberPaths(entry)
  for (const path of fields) {
    if (howKnown(entry, path) === undefined) {
      problems.push(problem('missing', `${where}/how`, undefined, `how ${path} is known`, `Add "${path}" to how.`))
    }
  }
  if (typeof entry.how !== 'string') {
    for (const key of Object.keys(entry.how)) {
      if (fields.some((path) => path === key || path.startsWith(`${key}.`))) continue
      problems.push(
        problem(
          'unknown-reference',
          `${where}/how`,
          key,
          'a field of this entry that holds a number',
          'Mend the path.',
        ),
      )
    }
  }
  return problems
}

/** Dotted paths of all numbers, list places left out: `body.components.height.min`. */
function numberPaths(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return [path]
  if (value === null || typeof value !== 'object') return []
  return Object.entries(value).flatMap(([key, inner]) =>
    numberPaths(inner, Array.isArray(value) ? path : path === '' ? key : `${path}.${key}`),
  )
}
