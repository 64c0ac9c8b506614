import { type GateReport, gate } from '../../geometry/mesh/gate.ts'
import type { Bounds, Mesh } from '../../geometry/mesh/mesh.ts'
import { weld } from '../../geometry/mesh/weld.ts'
import type { PrintedBody } from './build-sled.ts'

/** A body where the printer makes it. */
export interface Placed {
  readonly mesh: Mesh
  readonly report: GateReport
  /** What was added to its heights in the hilt, mm. */
  readonly raised: number
}

/**
 * A body as printed: standing on its rear end, seated on z = 0. Moving it rounds it anew, so it passes the gate again
 * as the file will hold it.
 */
export function asPrinted(body: PrintedBody): Placed {
  const { min, max } = body.report.bounds
  const raised = -min[2]
  const vertices = body.mesh.vertices.map((v, i) => (i % 3 === 2 ? v + raised : v))
  const mesh = weld({ ...body.mesh, vertices })
  const bounds: Bounds = { min: [min[0], min[1], 0], max: [max[0], max[1], max[2] + raised] }
  return { mesh, report: gate(mesh, { shells: 1, bounds }), raised }
}
