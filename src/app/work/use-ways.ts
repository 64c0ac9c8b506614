import type { InsertionWay } from '../../papers/insertion-way.ts'
import type { Project } from '../../project/schema/project.ts'
import type { Far } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { type Asked, useAsked } from './use-asked.ts'

const ask = (calls: Far<WorkCalls>, project: Project) => calls.ways(project)

/** Every move of the insertion list with its gaps and touches, asked for while somebody wants them. */
export const useWays = (wanted: boolean, lane = 'ways'): Asked<readonly InsertionWay[]> => useAsked(lane, wanted, ask)
