import type { Project } from './schema/project.ts'

/** Whether anything of the job differs from one state to another; else a choice of state changes nothing. */
export const namesStates = ({ states, features, screws, parts, sections }: Project): boolean =>
  states.length > 0 || [...features, ...screws, ...parts].some((r) => r.states) || sections.some((s) => s.clamp)
