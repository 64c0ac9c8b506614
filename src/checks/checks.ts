import { axialChain } from './axial-chain.ts'
import { buildable } from './buildable.ts'
import { clearance } from './clearance.ts'
import { fittedAfter } from './fitted-after.ts'
import { inTheWall } from './in-the-wall.ts'
import { nestFit } from './nest-fit.ts'
import { packing } from './packing.ts'
import { seat } from './seat.ts'
import { sledWall } from './sled-wall.ts'
import { wayIn } from './way-in.ts'
import { wireChannel } from './wire-channel.ts'
import type { Check } from './world.ts'

/** Every check, in the order of the job. A new one is a file beside these and a line here. */
export const checks: readonly Check[] = [
  wayIn,
  clearance,
  seat,
  packing,
  nestFit,
  axialChain,
  fittedAfter,
  inTheWall,
  wireChannel,
  sledWall,
  buildable,
]
