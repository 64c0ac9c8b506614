import { oneOf } from '../../geometry/one-of.ts'
import type { Body } from './body.ts'

/** Of all equal bodies always the same object: what was found out about a body or a pair is kept with it. */
export const oneBody = oneOf<Body>((b) => b.id)
