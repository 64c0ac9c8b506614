import type { Project } from '../project/schema/project.ts'
import { cellCaution } from './cell-caution.ts'

/**
 * What can hurt, in one sentence each, to be said once at the place where it matters. Usual practice; local codes and
 * licensed practice come first.
 */
export const cautions = {
  cell: cellCaution,
  drilling:
    'Take every cell out before you drill, clamp the hilt, and protect your eyes: chips are sharp and conduct; the rules of your workshop come first.',
  solder:
    'Do not solder to a cell itself; solder with fresh air and eye protection, and leave whatever is joined to the mains to a licensed electrician.',
  glue: 'Glue and solvents give off fumes: fresh air, gloves, and what their safety data sheets say.',
  filament: 'Hot plastic gives off fumes, some kinds more than others: print with fresh air in the room.',
  resin:
    'Liquid resin irritates skin and eyes: gloves, eye protection and fresh air, and cure the print through before you fill it.',
  strobe:
    'Flashing light can bring on seizures: warn whoever is near before you switch it on, and do not look into the emitter.',
} as const

/** What to say where a sled is handed over to be printed and filled. */
export function sledCautions(project: Pick<Project, 'parts'>): string[] {
  return project.parts.some((p) => p.kind === 'cell') ? [cautions.cell] : []
}
