import { isStraight } from '../solid/slice.ts'
import { type Solid, type Span, span } from '../solid/solid.ts'
import type { Heading } from '../solid/sweep.ts'
import { cellsOf, type Grid, rowsOf } from './grid.ts'
import { type Profile, profileOver, type Ring, ringOver } from './profile.ts'

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
  const n = grid.nTheta
  const rows = rowsOf(grid, s.z0 - c, s.z1 + c)
  const across = crossing(o, n)
  for (let i = rows.from; i < rows.to; i++) {
    const over = { z0: grid.z0 + i * grid.dz, z1: grid.z0 + (i + 1) * grid.dz }
    const away = Math.max(0, over.z0 - s.z1, s.z0 - over.z1)
    lower(free, by, i * n, k, across(over, away > 0 ? Math.sqrt(Math.max(0, c * c - away * away)) : c).inner, n)
  }
}

/** A radius for each cell of a row, or one for all of them. */
type Radii = number | Float64Array

function lower(cells: Float32Array, by: Uint16Array, row: number, k: number, radii: Radii, n: number): void {
  const one = typeof radii === 'number' ? radii : 0
  const each = typeof radii === 'number' ? undefined : radii
  for (let j = 0; j < n; j++) {
    const r = each ? (each[j] as number) : one
    if (r >= (cells[row + j] as number)) continue
    cells[row + j] = r
    by[row + j] = k
  }
}

function raise(cells: Float32Array, by: Uint16Array, row: number, k: number, radii: Radii, n: number): void {
  const one = typeof radii === 'number' ? radii : 0
  const each = typeof radii === 'number' ? undefined : radii
  for (let j = 0; j < n; j++) {
    const r = each ? (each[j] as number) : one
    if (r <= (cells[row + j] as number)) continue
    cells[row + j] = r
    by[row + j] = k
  }
}

/** A solid's radii over a row. What is round about the axis has one; a straight solid has the same for most rows. */
function crossing(s: Solid, nTheta: number): (over: Span, grow: number) => Ring | Profile {
  const straight = isStraight(s)
  const made = new Map<number, Ring | Profile>()
  return (over, grow) => {
    const known = straight ? made.get(grow) : undefined
    if (known) return known
    const stretch = straight ? span(s) : over
    const across = ringOver(s, stretch, grow) ?? profileOver(s, stretch, nTheta, grow)
    if (straight) made.set(grow, across)
    return across
  }
}

function drawBody(b: Solid, k: number, grid: Grid, filled: Float32Array, by: Uint16Array): void {
  const s = span(b)
  const n = grid.nTheta
  const rows = rowsOf(grid, s.z0, s.z1)
  const across = crossing(b, n)
  for (let i = rows.from; i < rows.to; i++) {
    const over = { z0: grid.z0 + i * grid.dz, z1: grid.z0 + (i + 1) * grid.dz }
    raise(filled, by, i * n, k, across(over, 0).outer, n)
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
      const left = (free[row + j] as number) - f
      if (f > 0 && left < best) best = left
    }
    least[i] = best
  }
  return least
}
