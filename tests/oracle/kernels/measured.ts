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
export function shellsOf(polygons: readonly (readonly Corner[])[]): Shells {
  return shellsBy(polygons, cornerIds(polygons.flat()))
}

interface Shells {
  readonly solids: number
  readonly hollows: number
}

/** `ids`: a number for each corner of each polygon, in order. */
function shellsBy(polygons: readonly (readonly Corner[])[], ids: ArrayLike<number> & Iterable<number>): Shells {
  let most = -1
  for (const id of ids) most = Math.max(most, id)
  const parent = Array.from({ length: most + 1 }, (_, i) => i)
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
  const cells = new Map<number, number[]>()
  const kept: Corner[] = []
  const known = (c: Corner, key: number): number | undefined =>
    cells.get(key)?.find((id) => {
      const o = kept[id] as Corner
      return Math.hypot(o[0] - c[0], o[1] - c[1], o[2] - c[2]) <= same
    })
  return corners.map((c) => {
    for (const key of cellsAround(c)) {
      const id = known(c, key)
      if (id !== undefined) return id
    }
    const own = keyOf(Math.floor(c[0] / cell), Math.floor(c[1] / cell), Math.floor(c[2] / cell))
    const there = cells.get(own)
    if (there) there.push(kept.length)
    else cells.set(own, [kept.length])
    return kept.push(c) - 1
  })
}

/** Wide against `same`, so that most corners lie in the middle of a cell, mm. */
const cell = 0.02

/** Cells that share a number by chance only make the search a little longer. */
const keyOf = (i: number, k: number, n: number): number => (i * 131_071 + k) * 131_071 + n

/** Numbers of the cells that hold the places around a corner: one as a rule, up to eight. */
function cellsAround(c: Corner): number[] {
  const low = c.map((v) => Math.floor((v - same) / cell)) as [number, number, number]
  const high = c.map((v) => Math.floor((v + same) / cell)) as [number, number, number]
  const keys: number[] = []
  for (let i = low[0]; i <= high[0]; i++)
    for (let k = low[1]; k <= high[1]; k++) for (let n = low[2]; n <= high[2]; n++) keys.push(keyOf(i, k, n))
  return keys
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
  const corners = Array.from({ length: m.vertices.length / 3 }, (_, i) =>
    [0, 1, 2].map((k) => m.vertices[3 * i + k] as number),
  ) as unknown as Corner[]
  const own = cornerIds(corners)
  const polygons = Array.from({ length: m.triangles.length / 3 }, (_, t) =>
    [0, 1, 2].map((k) => corners[m.triangles[3 * t + k] as number] as Corner),
  )
  const ids = Array.from(m.triangles, (i) => own[i] as number)
  return { volume: volume(m), ...boundsOf(m), ...shellsBy(polygons, ids) }
}
