import { EdgeList } from './edge-list.ts'

/** Triangles by the numbers of their corners, and the item that made each. */
export interface Faces {
  readonly triangles: readonly number[]
  readonly made: readonly number[]
}

type Triangle = readonly [number, number, number]

/** Whether a triangle has an area as its float32 corners a, b, c give it: they do not lie on one line. */
export function hasArea(v: ArrayLike<number>, a: number, b: number, c: number): boolean {
  const [ax, ay, az] = [v[3 * a] as number, v[3 * a + 1] as number, v[3 * a + 2] as number]
  const ux = (v[3 * b] as number) - ax
  const uy = (v[3 * b + 1] as number) - ay
  const uz = (v[3 * b + 2] as number) - az
  const wx = (v[3 * c] as number) - ax
  const wy = (v[3 * c + 1] as number) - ay
  const wz = (v[3 * c + 2] as number) - az
  return Math.abs(uy * wz - uz * wy) + Math.abs(uz * wx - ux * wz) + Math.abs(ux * wy - uy * wx) > 0
}

/**
 * The same surface without triangles that have no area. Rounding lays the three corners of a needle on one line; it is
 * then no more than a corner on an edge of its neighbour, and the neighbour is cut in two there. Two triangles that lie
 * on each other back to back hold nothing between them and both go. Where no neighbour is found the needle stays, and
 * whoever judges the mesh sees it.
 */
export function withoutFlat(v: ArrayLike<number>, faces: Faces): Faces {
  if (isClean(v, faces.triangles)) return faces
  const list: (Triangle | undefined)[] = []
  const made: number[] = []
  const byEdge = new Map<string, Set<number>>()
  const put = (t: Triangle, by: number) => {
    for (const key of edgesOf(t)) byEdge.set(key, (byEdge.get(key) ?? new Set()).add(list.length))
    list.push(t)
    made.push(by)
  }
  const take = (i: number) => {
    for (const key of edgesOf(list[i] as Triangle)) byEdge.get(key)?.delete(i)
    list[i] = undefined
  }
  for (let i = 0; i < faces.triangles.length; i += 3) {
    const [a, b, c] = [faces.triangles[i], faces.triangles[i + 1], faces.triangles[i + 2]] as [number, number, number]
    put([a, b, c], faces.made[i / 3] as number)
  }
  // A cut may leave another needle behind; each round makes one fewer, so a few rounds a needle are plenty.
  const flat = list.flatMap((t, i) => (t && !hasArea(v, ...t) ? [i] : []))
  for (let rounds = 20 * flat.length; flat.length > 0 && rounds > 0; rounds--) {
    const i = flat.pop() as number
    const needle = list[i]
    if (!needle) continue
    const [a, b, c] = longestFirst(v, needle)
    const [next] = byEdge.get(`${b},${a}`) ?? []
    if (next === undefined) continue
    const d = (list[next] as Triangle).find((x) => x !== a && x !== b) as number
    const by = made[next] as number
    take(i)
    take(next)
    if (d === c) continue
    for (const half of [[b, c, d] as const, [c, a, d] as const]) {
      put(half, by)
      if (!hasArea(v, ...half)) flat.push(list.length - 1)
    }
  }
  for (const [i, t] of list.entries()) {
    if (!t || list[i] === undefined) continue
    const back = [...(byEdge.get(`${t[1]},${t[0]}`) ?? [])].find((k) => list[k]?.includes(t[2]))
    if (back === undefined) continue
    take(i)
    take(back)
  }
  const left = list.flatMap((t, i) => (t ? [i] : []))
  return { triangles: left.flatMap((i) => list[i] as Triangle), made: left.map((i) => made[i] as number) }
}

/** As most meshes are: nothing flat, and no edge that several triangles run along the same way. */
function isClean(v: ArrayLike<number>, triangles: readonly number[]): boolean {
  const edges = new EdgeList(triangles, v.length / 3)
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [triangles[i] as number, triangles[i + 1] as number, triangles[i + 2] as number]
    if (!hasArea(v, a, b, c)) return false
    if (edges.times(a, b) > 1 || edges.times(b, c) > 1 || edges.times(c, a) > 1) return false
  }
  return true
}

const edgesOf = ([a, b, c]: Triangle): string[] => [`${a},${b}`, `${b},${c}`, `${c},${a}`]

/** Turned so that its longest edge comes first. */
function longestFirst(v: ArrayLike<number>, [a, b, c]: Triangle): Triangle {
  const length = (i: number, k: number) =>
    Math.hypot(...[0, 1, 2].map((n) => (v[3 * i + n] as number) - (v[3 * k + n] as number)))
  const [ab, bc, ca] = [length(a, b), length(b, c), length(c, a)]
  if (ab >= bc && ab >= ca) return [a, b, c]
  return bc >= ca ? [b, c, a] : [c, a, b]
}
