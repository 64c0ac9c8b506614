import type { Project } from '../project/schema/project.ts'
import type { State } from './assembly.ts'
import { type Context, wrong } from './context.ts'

/** The moments of a hilt's life, where a project names none. Nothing is taken away in them until the builder says so. */
const usual: readonly (readonly [string, string])[] = [
  ['stripped', 'stripped'],
  ['bench', 'on the bench'],
  ['service', 'opened for service'],
  ['charging', 'charging'],
  ['sleeve-up', 'sleeve up'],
  ['closed', 'closed'],
  ['transit', 'in transit'],
]

/** Ids of the states that a part, feature or screw may name. */
export const stateIds = (p: Project): string[] =>
  p.states.length === 0 ? usual.map(([id]) => id) : p.states.map((s) => s.id)

export function statesOf(ctx: Context): State[] {
  if (ctx.project.states.length === 0) return usual.map(([id, name]) => ({ id, name, without: new Set<string>() }))
  return ctx.project.states.map((s) => {
    for (const ref of s.without ?? [])
      if (!exists(ctx, ref))
        wrong(
          ctx,
          'unknown-reference',
          `states/${s.id}/without`,
          ref,
          'something in the project',
          'Name a section, sleeve, screw, part or feature as "parts/cell".',
        )
    return { id: s.id, name: s.name ?? s.id, without: new Set(s.without ?? []) }
  })
}

function exists(ctx: Context, ref: string): boolean {
  const [list, id] = ref.split('/') as [string, string]
  const records = (ctx.project as unknown as Record<string, unknown>)[list]
  return Array.isArray(records) && records.some((r: { id?: unknown }) => r.id === id)
}
