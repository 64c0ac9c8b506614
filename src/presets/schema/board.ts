import { body } from './body.ts'
import { entryOf } from './entry.ts'

/** A circuit board: outline, thickness and what stands on either side, mm. */
export const board = entryOf('board', { body })
