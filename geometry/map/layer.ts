import { cellsOf, type Grid } from './grid.ts'

export const nobody = 0xffff

/**
 * A radius for each cell and who set it. Of each row the least and the greatest radius are known, so that a row that
 * cannot change is passed over, and one that changes as a whole is filled at once: most of a hilt is round.
 */
export interface Layer {
  readonly cells: Float32Array
  readonly by: Uint16Array
  readonly low: Float32Array
  readonly high: Float32Array
}

/** The same radius in every cell, set by nobody. */
export function layerOf(grid: Grid, radius: number): Layer {
  const all = (n: number) => new Float32Array(n).fill(radius)
  const n = cellsOf(grid)
  return { cells: all(n), by: new Uint16Array(n).fill(nobody), low: all(grid.nz), high: all(grid.nz) }
}

/** What a solid has in the cells of a row: one radius all around, or each its own. */
export interface Radii {
  readonly each: Float64Array | undefined
  readonly least: number
  readonly most: number
}

export function radiiOf(radii: number | Float64Array): Radii {
  if (typeof radii === 'number') return { each: undefined, least: radii, most: radii }
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const r of radii) {
    if (r < least) least = r
    if (r > most) most = r
  }
  return { each: radii, least, most }
}

/** Cells of row i that are above what k has there come down to it. */
export function lower(l: Layer, i: number, k: number, { each, least, most }: Radii): void {
  if (least >= (l.high[i] as number)) return
  if (!each && most < (l.low[i] as number)) {
    fill(l, i, k, most)
    return
  }
  const n = l.cells.length / l.low.length
  const row = i * n
  for (let j = 0; j < n; j++) {
    const r = each ? (each[j] as number) : most
    if (r >= (l.cells[row + j] as number)) continue
    l.cells[row + j] = r
    l.by[row + j] = k
  }
  bounds(l, i)
}

/** Cells of row i that are below what k has there come up to it. */
export function raise(l: Layer, i: number, k: number, { each, least, most }: Radii): void {
  if (most <= (l.low[i] as number)) return
  if (!each && least > (l.high[i] as number)) {
    fill(l, i, k, least)
    return
  }
  const n = l.cells.length / l.low.length
  const row = i * n
  for (let j = 0; j < n; j++) {
    const r = each ? (each[j] as number) : least
    if (r <= (l.cells[row + j] as number)) continue
    l.cells[row + j] = r
    l.by[row + j] = k
  }
  bounds(l, i)
}

/** Each cell of row i comes down to that of another row. */
export function lowerTo(l: Layer, i: number, other: number): void {
  if ((l.low[other] as number) >= (l.high[i] as number)) return
  const n = l.cells.length / l.low.length
  const [row, from] = [i * n, other * n]
  if ((l.high[other] as number) < (l.low[i] as number)) {
    l.cells.copyWithin(row, from, from + n)
    l.by.copyWithin(row, from, from + n)
    l.low[i] = l.low[other] as number
    l.high[i] = l.high[other] as number
    return
  }
  for (let j = 0; j < n; j++) {
    const r = l.cells[from + j] as number
    if (r >= (l.cells[row + j] as number)) continue
    l.cells[row + j] = r
    l.by[row + j] = l.by[from + j] as number
  }
  bounds(l, i)
}

function fill(l: Layer, i: number, k: number, radius: number): void {
  const n = l.cells.length / l.low.length
  l.cells.fill(radius, i * n, (i + 1) * n)
  l.by.fill(k, i * n, (i + 1) * n)
  l.low[i] = radius
  l.high[i] = radius
}

function bounds(l: Layer, i: number): void {
  const n = l.cells.length / l.low.length
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (let j = i * n; j < (i + 1) * n; j++) {
    const r = l.cells[j] as number
    if (r < low) low = r
    if (r > high) high = r
  }
  l.low[i] = low
  l.high[i] = high
}
