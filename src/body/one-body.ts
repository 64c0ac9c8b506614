import { oneOf } from '../../geometry/one-of.ts'
import type { Body } from './body.ts'

/** A body is also seen from several sleds, and turned. */
const mostSeen = 8

/** Of all equal bodies always the same object: what was found out about a body or a pair is kept with it. */
export const oneBody = oneOf<Body>((b) => b.id, mostSeen)
