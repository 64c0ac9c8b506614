import { isStraight } from '../solid/slice.ts'
import { type Solid, span } from '../solid/solid.ts'
import type { Heading } from '../solid/sweep.ts'
import { cellsOf, type Grid, rowsOf } from './grid.ts'
import { type Profile, profileOver } from './profile.ts'

/**
 * Free and filled radius over the unrolled hilt. Cells are conservative: the least free radius and the greatest
 * filled one inside the cell, obstacles grown by the clearance in r, along z and around. So a margin of 0 or more in
 * every cell proves clear; a cell below 0 proves nothing and is looked at exactly (`gap`).
 */
export interface ClearanceMap {
  readonly grid: Grid
  /** Free radius, obstacles grown by the clearance; Infinity where nothing is around. */
  readonly free: Float32Array
  /** Filled radius; 0 where nothing is. */
  readonly filled: Float32Array
  /** Index of the obstacle and of the body that set them; `nobody` where none. */
  readonly freeBy: Uint16Array
  readonly filledBy: Uint16Array
  /** free − filled of the tightest cell of each row: what is left over the clearance. */
  readonly leastLeft: Float32Array
}

export const nobody = 0xffff

export interface MapOptions {
  readonly clearance: number
  /** On the way in: the free radius is the throat, the least between a place and the mouth. */
  readonly way?: Heading
}

export function clearanceMap(
  bodies: readonly Solid[],
  obstacles: readonly Solid[],
  grid: Grid,
  options: MapOptions,
): ClearanceMap {
  const n = cellsOf(grid)
  const free = new Float32Array(n).fill(Number.POSITIVE_INFINITY)
  const filled = new Float32Array(n)
  const freeBy = new Uint16Array(n).fill(nobody)
  const filledBy = new Uint16Array(n).fill(nobody)
  for (const [k, o] of obstacles.entries()) drawObstacle(o, k, grid, options.clearance, free, freeBy)
  for (const [k, b] of bodies.entries()) drawBody(b, k, grid, filled, filledBy)
  if (options.way) throat(grid, options.way, free, freeBy)
  return { grid, free, filled, freeBy, filledBy, leastLeft: leastOf(grid, free, filled) }
}

/** Least free radius of each cell, the obstacle grown by c: beside its ends it grows as a quarter round. */
function drawObstacle(o: Solid, k: number, grid: Grid, c: number, free: Float32Array, by: Uint16Array): void {
  const s = span(o)
  const rows = rowsOf(grid, s.z0 - c, s.z1 + c)
  const straight = isStraight(o) ? profiles(o) : undefined
  for (let i = rows.from; i < rows.to; i++) {
    const [z0, z1] = [grid.z0 + i * grid.dz, grid.z0 + (i + 1) * grid.dz]
    const away = Math.max(0, z0 - s.z1, s.z0 - z1)
    const grow = away > 0 ? Math.sqrt(Math.max(0, c * c - away * away)) : c
    const profile = straight ? straight(grow, grid.nTheta) : profileOver(o, { z0, z1 }, grid.nTheta, grow)
    const row = i * grid.nTheta
    for (let j = 0; j < grid.nTheta; j++) {
      const r = profile.inner[j] as number
      if (r < (free[row + j] as number)) {
        free[row + j] = r
        by[row + j] = k
      }
    }
  }
}

/** A straight solid has one profile for each growth; most rows share one. */
function profiles(s: Solid): (grow: number, nTheta: number) => Profile {
  const made = new Map<number, Profile>()
  return (grow, nTheta) => {
    let p = made.get(grow)
    if (!p) {
      p = profileOver(s, span(s), nTheta, grow)
      made.set(grow, p)
    }
    return p
  }
}

function drawBody(b: Solid, k: number, grid: Grid, filled: Float32Array, by: Uint16Array): void {
  const s = span(b)
  const rows = rowsOf(grid, s.z0, s.z1)
  const straight = isStraight(b) ? profiles(b) : undefined
  for (let i = rows.from; i < rows.to; i++) {
    const over = { z0: grid.z0 + i * grid.dz, z1: grid.z0 + (i + 1) * grid.dz }
    const profile = straight ? straight(0, grid.nTheta) : profileOver(b, over, grid.nTheta, 0)
    const row = i * grid.nTheta
    for (let j = 0; j < grid.nTheta; j++) {
      const r = profile.outer[j] as number
      if (r > (filled[row + j] as number)) {
        filled[row + j] = r
        by[row + j] = k
      }
    }
  }
}

/** The free radius becomes the least one between the cell and the mouth. */
function throat(grid: Grid, way: Heading, free: Float32Array, by: Uint16Array): void {
  const { nz, nTheta } = grid
  const rows = Array.from({ length: nz - 1 }, (_, i) => (way === 'blade' ? i + 1 : nz - 2 - i))
  for (const i of rows) {
    const [row, before] = [i * nTheta, (way === 'blade' ? i - 1 : i + 1) * nTheta]
    for (let j = 0; j < nTheta; j++) {
      if ((free[before + j] as number) < (free[row + j] as number)) {
        free[row + j] = free[before + j] as number
        by[row + j] = by[before + j] as number
      }
    }
  }
}

function leastOf(grid: Grid, free: Float32Array, filled: Float32Array): Float32Array {
  const least = new Float32Array(grid.nz).fill(Number.POSITIVE_INFINITY)
  for (let i = 0; i < grid.nz; i++) {
    const row = i * grid.nTheta
    let best = Number.POSITIVE_INFINITY
    for (let j = 0; j < grid.nTheta; j++) {
      const f = filled[row + j] as number
      if (f > 0) best = Math.min(best, (free[row + j] as number) - f)
    }
    least[i] = best
  }
  return least
}
