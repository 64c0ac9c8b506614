import type { Assembly, Part } from '../resolve/assembly.ts'

/** What a part moves with: `sleds/main`, `sections/body`; itself where it goes in by its own way. */
export function ridesOf(p: Part): string {
  if (p.goesIn === 'after') return p.id
  if (p.sled !== undefined) return `sleds/${p.sled}`
  return p.section === undefined ? p.id : `sections/${p.section}`
}

/** References of all that moves where one thing is moved: itself, and what it carries. */
export function carriedBy(assembly: Assembly, moves: string): string[] {
  const parts = assembly.parts.filter((p) => ridesOf(p) === moves).map((p) => p.id)
  const stuckIn = assembly.intrusions.filter((x) => `sections/${x.section}` === moves).map((x) => x.body.of)
  return [...new Set([moves, ...parts, ...stuckIn])]
}
