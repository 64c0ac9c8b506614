/** Triangles by the numbers of their corners, and the item that made each. */
export interface Faces {
  readonly triangles: readonly number[]
  readonly made: readonly number[]
}

type Triangle = readonly [number, number, number]

/** Twice the area of a triangle as float32 corners give it, mm². */
export function twiceArea(v: ArrayLike<number>, [a, b, c]: Triangle): number {
  const at = (i: number, k: number) => v[3 * i + k] as number
  const u = [at(b, 0) - at(a, 0), at(b, 1) - at(a, 1), at(b, 2) - at(a, 2)] as const
  const w = [at(c, 0) - at(a, 0), at(c, 1) - at(a, 1), at(c, 2) - at(a, 2)] as const
  return Math.hypot(u[1] * w[2] - u[2] * w[1], u[2] * w[0] - u[0] * w[2], u[0] * w[1] - u[1] * w[0])
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
  const flat = list.flatMap((t, i) => (t && !(twiceArea(v, t) > 0) ? [i] : []))
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
      if (!(twiceArea(v, half) > 0)) flat.push(list.length - 1)
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
  const n = v.length
  const edges = new Set<number>()
  for (let i = 0; i < triangles.length; i += 3) {
    const t = [triangles[i], triangles[i + 1], triangles[i + 2]] as [number, number, number]
    if (!(twiceArea(v, t) > 0)) return false
    edges
      .add(t[0] * n + t[1])
      .add(t[1] * n + t[2])
      .add(t[2] * n + t[0])
  }
  return edges.size === triangles.length
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
