import { EdgeList } from './edge-list.ts'
import { hasArea } from './flat-triangles.ts'
import { type Bounds, boundsOf, type Mesh, sixfoldCone, triangleCount, volume } from './mesh.ts'
import { type ThicknessReport, thickness } from './thickness.ts'

/** What a mesh must be before a file of it may leave. */
export interface Expected {
  /** Pieces of the printed body: 1, unless the plan says otherwise. */
  readonly shells: number
  /** Bounds of the plan, mm; met within 0.01. */
  readonly bounds?: Bounds
  /** Thinnest wall the process prints, mm; walls are not measured where left out. */
  readonly leastWall?: number
  /** Items whose faces are shallow engraving, which is no wall. */
  readonly relief?: ReadonlySet<number>
}

/** What a mesh was found to be; `faults` is empty where it may leave. */
export interface GateReport {
  readonly triangles: number
  readonly volume: number
  readonly bounds: Bounds
  readonly shells: number
  readonly openEdges: number
  readonly zeroArea: number
  readonly walls: ThicknessReport | undefined
  readonly faults: readonly string[]
}

/** Agreement of the mesh's bounds with the plan's, mm. */
const boundsWithin = 0.01

/** Judges a welded mesh: closed, consistently turned, nothing flat, the right number of pieces, the right size. */
export function gate(m: Mesh, expected: Expected): GateReport {
  const openEdges = new EdgeList(m.triangles, m.vertices.length / 3).unpaired()
  const zeroArea = countFlat(m)
  const volumes = sixfoldVolumes(m)
  const shells = volumes.length
  const hollows = volumes.filter((own) => own < 0).length
  const v = volume(m)
  const bounds = boundsOf(m)
  const faults: string[] = []
  if (triangleCount(m) === 0) faults.push('the solid is empty')
  if (openEdges > 0) faults.push(`${openEdges} edges are not shared by exactly two triangles in opposite order`)
  if (zeroArea > 0) faults.push(`${zeroArea} triangles have no area`)
  if (!(v > 0)) faults.push(`its volume is ${v.toFixed(3)} mm³`)
  if (hollows > 0) faults.push(`${hollows} ${hollows > 1 ? 'hollows are' : 'hollow is'} shut off inside it`)
  if (shells - hollows !== expected.shells)
    faults.push(`it falls into ${shells - hollows} pieces instead of ${expected.shells}`)
  const off = expected.bounds ? offBounds(bounds, expected.bounds) : 0
  if (!(off <= boundsWithin)) faults.push(`its size is ${off.toFixed(3)} mm off the plan`)
  const walls =
    expected.leastWall === undefined || faults.length > 0
      ? undefined
      : thickness(m, expected.leastWall, expected.relief)
  for (const w of walls?.thin.slice(0, 3) ?? [])
    faults.push(
      `a wall of ${w.thickness.toFixed(2)} mm at ${placeText(w.at)}; the process prints ${expected.leastWall} mm`,
    )
  return { triangles: triangleCount(m), volume: v, bounds, shells, openEdges, zeroArea, walls, faults }
}

function placeText([x, y, z]: readonly [number, number, number]): string {
  const theta = ((Math.atan2(y, x) * 180) / Math.PI + 360) % 360
  return `z ${z.toFixed(1)}, θ ${theta.toFixed(0)}°, r ${Math.hypot(x, y).toFixed(1)}`
}

function offBounds(a: Bounds, b: Bounds): number {
  return Math.max(
    ...[0, 1, 2].flatMap((i) => [
      Math.abs((a.min[i] as number) - (b.min[i] as number)),
      Math.abs((a.max[i] as number) - (b.max[i] as number)),
    ]),
  )
}

function forEachEdge(m: Mesh, visit: (a: number, b: number) => void): void {
  for (let t = 0; t < m.triangles.length; t += 3) {
    const [a, b, c] = [m.triangles[t] as number, m.triangles[t + 1] as number, m.triangles[t + 2] as number]
    visit(a, b)
    visit(b, c)
    visit(c, a)
  }
}

/** Triangles whose area is nothing in float32 terms: their corners lie on one line. */
function countFlat(m: Mesh): number {
  let flat = 0
  const t = m.triangles
  for (let i = 0; i < t.length; i += 3)
    if (!hasArea(m.vertices, t[i] as number, t[i + 1] as number, t[i + 2] as number)) flat++
  return flat
}

/** Six times the volumes of what hangs together by shared vertices, mm³: below 0 where it is a hollow. */
function sixfoldVolumes(m: Mesh): number[] {
  const parent = Uint32Array.from({ length: m.vertices.length / 3 }, (_, i) => i)
  const root = (i: number): number => {
    let r = i
    while (parent[r] !== r) {
      parent[r] = parent[parent[r] as number] as number
      r = parent[r] as number
    }
    return r
  }
  forEachEdge(m, (a, b) => {
    parent[root(a)] = root(b)
  })
  const volumes = new Map<number, number>()
  for (let t = 0; t < m.triangles.length; t += 3) {
    const r = root(m.triangles[t] as number)
    volumes.set(r, (volumes.get(r) ?? 0) + sixfoldCone(m, t))
  }
  return [...volumes.values()]
}
