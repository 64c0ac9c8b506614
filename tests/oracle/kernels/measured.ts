import { boundsOf, type Mesh, volume } from '../../../geometry/mesh/mesh.ts'

/** What two kernels are compared by. */
export interface Measured {
  /** mm³. */
  readonly volume: number
  readonly min: readonly [number, number, number]
  readonly max: readonly [number, number, number]
  /** Pieces of material, and hollows shut off inside them. */
  readonly solids: number
  readonly hollows: number
}

type Corner = readonly [number, number, number]

/** Corners nearer to each other than this are one, mm: far above a kernel's own noise, far below any dimension. */
const same = 2e-4

/**
 * Pieces and hollows of a surface made of polygons, open seams between them allowed: polygons that share a corner hang
 * together, and a shell is a hollow where its own volume is negative.
 */
export function shellsOf(polygons: readonly (readonly Corner[])[]): { solids: number; hollows: number } {
  const ids = cornerIds(polygons.flat())
  const parent = Array.from({ length: Math.max(-1, ...ids) + 1 }, (_, i) => i)
  const root = (i: number): number => {
    let r = i
    while (parent[r] !== r) {
      parent[r] = parent[parent[r] as number] as number
      r = parent[r] as number
    }
    return r
  }
  let at = 0
  const firsts = polygons.map((p) => {
    const first = ids[at] as number
    for (let k = 1; k < p.length; k++) parent[root(ids[at + k] as number)] = root(first)
    at += p.length
    return first
  })
  const volumes = new Map<number, number>()
  for (const [i, p] of polygons.entries()) {
    const r = root(firsts[i] as number)
    volumes.set(r, (volumes.get(r) ?? 0) + coneVolume(p))
  }
  const all = [...volumes.values()]
  return { solids: all.filter((v) => v > 0).length, hollows: all.filter((v) => v < 0).length }
}

/** A number for each corner; corners in the same place get the same one. Cells are looked at with the ones they touch. */
function cornerIds(corners: readonly Corner[]): number[] {
  const cells = new Map<string, [Corner, number][]>()
  let next = 0
  return corners.map((c) => {
    for (const key of cellsAround(c))
      for (const [o, id] of cells.get(key) ?? [])
        if (Math.hypot(o[0] - c[0], o[1] - c[1], o[2] - c[2]) <= same) return id
    const own = c.map((v) => Math.floor(v / cell)).join()
    const there = cells.get(own)
    if (there) there.push([c, next])
    else cells.set(own, [[c, next]])
    return next++
  })
}

/** Wide against `same`, so that most corners lie in the middle of a cell, mm. */
const cell = 0.02

function cellsAround(c: Corner): string[] {
  const sides = c.map((v) => [...new Set([v, v - same, v + same].map((x) => Math.floor(x / cell)))])
  const [xs, ys, zs] = sides as [number[], number[], number[]]
  return xs.flatMap((x) => ys.flatMap((y) => zs.map((z) => `${x},${y},${z}`)))
}

/** Volume of the cone over a flat polygon from the origin: together they are the volume inside, mm³. */
export function coneVolume(p: readonly Corner[]): number {
  const [a] = p as [Corner]
  let six = 0
  for (let k = 2; k < p.length; k++) {
    const [b, c] = [p[k - 1] as Corner, p[k] as Corner]
    six += a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0])
  }
  return six / 6
}

/** The product's own mesh, as a reader of the file sees it. */
export function measureMesh(m: Mesh): Measured {
  const corner = (i: number): Corner => [0, 1, 2].map((k) => m.vertices[3 * i + k] as number) as unknown as Corner
  const polygons = Array.from({ length: m.triangles.length / 3 }, (_, t) =>
    [0, 1, 2].map((k) => corner(m.triangles[3 * t + k] as number)),
  )
  return { volume: volume(m), ...boundsOf(m), ...shellsOf(polygons) }
}
