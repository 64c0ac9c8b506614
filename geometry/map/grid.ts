/** The unrolled hilt as cells: nz along the axis from z0, nTheta around from θ = 0. Row by row, θ fastest. */
export interface Grid {
  readonly z0: number
  readonly dz: number
  readonly nz: number
  readonly nTheta: number
}

/** A grid over a stretch of the axis; the last cell may reach past its end. mm and degrees, both steps above 0. */
export function gridOver(z0: number, z1: number, dz = 0.25, dTheta = 1): Grid {
  return { z0, dz, nz: Math.max(1, Math.ceil((z1 - z0) / dz - 1e-9)), nTheta: Math.max(4, Math.round(360 / dTheta)) }
}

export const cellsOf = (g: Grid): number => g.nz * g.nTheta
export const middleOf = (g: Grid, i: number): number => g.z0 + (i + 0.5) * g.dz
export const thetaStep = (g: Grid): number => 360 / g.nTheta

/** The rows that a stretch touches, from and to (exclusive), kept inside the grid. */
export function rowsOf(g: Grid, z0: number, z1: number): { from: number; to: number } {
  const from = Math.max(0, Math.floor((z0 - g.z0) / g.dz + 1e-9))
  const to = Math.min(g.nz, Math.ceil((z1 - g.z0) / g.dz - 1e-9))
  return { from, to: Math.max(from, to) }
}
