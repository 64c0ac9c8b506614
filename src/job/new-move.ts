import { freshId } from '../project/path.ts'
import type { Project } from '../project/schema/project.ts'
import type { InsertionInput } from '../project/schema/sled.ts'

/** References of all that can move: sleds, parts that sit in a wall, sections that are drawn over what stands still. */
export function movable({ sleds, parts, sections }: Project): string[] {
  return [
    ...sleds.map((s) => `sleds/${s.id}`),
    ...parts.filter((p) => p.on?.startsWith('sections/')).map((p) => `parts/${p.id}`),
    ...sections.map((s) => `sections/${s.id}`),
  ]
}

/**
 * The first sled or part in a wall that no move brings in yet; undefined where all of them are in. Sections are no
 * guess: most of them are only screwed on.
 */
export const notYetMoved = (project: Project): string | undefined =>
  movable(project).find((ref) => !ref.startsWith('sections/') && !project.insertions.some((i) => i.moves === ref))

/** One more move for the list, through the rear end of the section that it belongs to, or of the first. */
export function newMove({ insertions, parts, sections }: Project, moves: string): InsertionInput {
  const home = parts.find((p) => `parts/${p.id}` === moves)?.on
  return {
    id: freshId(insertions, 'move'),
    moves,
    through: { of: home ?? `sections/${sections[0]?.id}`, end: 'rear' },
  }
}
