import type { Moving } from '../checks/moving.ts'
import type { Assembly, Insertion } from '../resolve/assembly.ts'
import { sectionsDuring } from '../resolve/insertions.ts'

/** References of what is not there yet while one move of the insertion list is made. */
export function absentDuring(assembly: Assembly, i: Insertion, moving: Moving): string[] {
  const tube = i.moves.startsWith('sections/')
  const sections = new Set(sectionsDuring(i, assembly.sections).map((s) => s.id))
  // A section behind the mouth is passed, also where its own move is listed later: then it stands there as it is judged.
  const stands = (moves: string) => !tube && sections.has(moves.replace('sections/', ''))
  const later = assembly.insertions.filter((o) => o.order > i.order && !stands(o.moves)).map((o) => o.moves)
  // A tube is brought to what stands there already; its own obstacles tell nothing of the rest.
  const here = new Set(moving.obstacles.intrusions.map((b) => b.of))
  const gone = (section: string | undefined) => !tube && section !== undefined && !sections.has(section)
  return [
    ...new Set([
      ...later,
      ...assembly.sections.filter((s) => gone(s.id)).map((s) => `sections/${s.id}`),
      ...assembly.intrusions.filter((x) => (tube ? x.fitted === 'after' : !here.has(x.body.of))).map((x) => x.body.of),
      ...assembly.parts
        .filter((p) => p.section !== undefined && p.id !== i.moves && (tube ? p.goesIn === 'after' : !here.has(p.id)))
        .map((p) => p.id),
    ]),
  ]
}
