import { isStraight } from '../solid/slice.ts'
import { type Solid, type Span, span } from '../solid/solid.ts'
import type { Heading } from '../solid/sweep.ts'
import { type Grid, rowsOf } from './grid.ts'
import { type Layer, layerOf, lower, lowerTo, type Radii, radiiOf, raise } from './layer.ts'
import { profileOver, ringOver } from './profile.ts'

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
  const free = layerOf(grid, Number.POSITIVE_INFINITY)
  const filled = layerOf(grid, 0)
  for (const [k, o] of obstacles.entries()) drawObstacle(o, k, grid, options.clearance, free)
  for (const [k, b] of bodies.entries()) drawBody(b, k, grid, filled)
  if (options.way) throat(grid, options.way, free)
  return {
    grid,
    free: free.cells,
    filled: filled.cells,
    freeBy: free.by,
    filledBy: filled.by,
    leastLeft: leastOf(grid, free, filled),
  }
}

/** Least free radius of each cell, the obstacle grown by c: beside its ends it grows as a quarter round. */
function drawObstacle(o: Solid, k: number, grid: Grid, c: number, free: Layer): void {
  const s = span(o)
  const rows = rowsOf(grid, s.z0 - c, s.z1 + c)
  const across = crossing(o, grid.nTheta)
  for (let i = rows.from; i < rows.to; i++) {
    const over = { z0: grid.z0 + i * grid.dz, z1: grid.z0 + (i + 1) * grid.dz }
    const away = Math.max(0, over.z0 - s.z1, s.z0 - over.z1)
    lower(free, i, k, across(over, away > 0 ? Math.sqrt(Math.max(0, c * c - away * away)) : c).inner)
  }
}

interface Across {
  readonly inner: Radii
  readonly outer: Radii
}

/** A solid's radii over a row. What is round about the axis has one; a straight solid has the same for most rows. */
function crossing(s: Solid, nTheta: number): (over: Span, grow: number) => Across {
  const straight = isStraight(s)
  const made = new Map<number, Across>()
  return (over, grow) => {
    const known = straight ? made.get(grow) : undefined
    if (known) return known
    const stretch = straight ? span(s) : over
    const { inner, outer } = ringOver(s, stretch, grow) ?? profileOver(s, stretch, nTheta, grow)
    const across = { inner: radiiOf(inner), outer: radiiOf(outer) }
    if (straight) made.set(grow, across)
    return across
  }
}

function drawBody(b: Solid, k: number, grid: Grid, filled: Layer): void {
  const s = span(b)
  const rows = rowsOf(grid, s.z0, s.z1)
  const across = crossing(b, grid.nTheta)
  for (let i = rows.from; i < rows.to; i++) {
    const over = { z0: grid.z0 + i * grid.dz, z1: grid.z0 + (i + 1) * grid.dz }
    raise(filled, i, k, across(over, 0).outer)
  }
}

/** The free radius becomes the least one between the cell and the mouth. */
function throat({ nz }: Grid, way: Heading, free: Layer): void {
  for (let i = 1; i < nz; i++) {
    if (way === 'blade') lowerTo(free, i, i - 1)
    else lowerTo(free, nz - 1 - i, nz - i)
  }
}

/** What is left in each row where something is. */
function leastOf({ nz, nTheta: n }: Grid, free: Layer, filled: Layer): Float32Array {
  const least = new Float32Array(nz).fill(Number.POSITIVE_INFINITY)
  for (let i = 0; i < nz; i++) {
    if ((filled.high[i] as number) <= 0) continue
    let best = Number.POSITIVE_INFINITY
    for (let j = i * n; j < (i + 1) * n; j++) {
      const f = filled.cells[j] as number
      const left = (free.cells[j] as number) - f
      if (f > 0 && left < best) best = left
    }
    least[i] = best
  }
  return least
}
