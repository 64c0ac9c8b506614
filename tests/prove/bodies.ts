import type { BodyInput, PartInput } from '../../src/project/schema/part.ts'
import { type Ask, type Reality, setting, sizeAt } from './sizes.ts'

/** A straight piece of a flat part in its own frame: u across, v outwards; its width may run from one end to the other. */
export interface Slab {
  readonly z0: number
  readonly z1: number
  readonly rear: readonly [number, number]
  readonly blade: readonly [number, number]
  readonly v0: number
  readonly v1: number
}

/** A part in its own frame at its true sizes, z from its rear face. */
export interface Local {
  readonly length: number
  readonly round?: number
  readonly spoke?: { readonly radius: number; readonly depth: number }
  readonly sector?: { readonly inner: number; readonly outer: number; readonly half: number }
  readonly slabs: readonly Slab[]
}

export function localOf(r: Reality, p: PartInput): Local {
  const preset = p.preset === undefined ? undefined : r.presets.byId(p.preset)
  const b = (p.body ?? (preset && 'body' in preset ? preset.body : undefined)) as BodyInput
  const path = `parts/${p.id}/${p.body ? 'body' : 'preset'}`
  const swapped = p.swapped ?? (preset !== undefined && 'swapped' in preset)
  const size = (field: string, input: Parameters<typeof sizeAt>[1], as: Ask['as'] = 'outside') =>
    sizeAt(r, input, { path: `${path}/${field}`, as, swapped, preset: p.body === undefined })
  if (b.shape === 'cylinder') {
    const [d, length] = [size('diameter', b.diameter), size('length', b.length)]
    return b.axis === 'radial'
      ? { length: d, spoke: { radius: d / 2, depth: length }, slabs: [] }
      : { length, round: d / 2, slabs: [] }
  }
  if (b.shape === 'box') {
    const [w, h, length] = [size('width', b.width), size('height', b.height), size('length', b.length)]
    return { length, slabs: [block(0, 0, w, h, 0, length)] }
  }
  if (b.shape === 'ring-sector') {
    const sector = {
      inner: size('inner', b.inner, 'offset'),
      outer: size('outer', b.outer),
      half: size('half', b.half, 'angle'),
    }
    return { length: size('length', b.length), sector, slabs: [] }
  }
  return board(r, b, path, size)
}

function block(u: number, v: number, width: number, height: number, z0: number, z1: number): Slab {
  const across: [number, number] = [u - width / 2, u + width / 2]
  return { z0, z1, rear: across, blade: across, v0: v - height / 2, v1: v + height / 2 }
}

type Size = (field: string, input: Parameters<typeof sizeAt>[1], as?: Ask['as']) => number

/** The plate cut at every corner's height into straight pieces, each edge out by as much as edges are off; components on it. */
function board(r: Reality, b: Extract<BodyInput, { shape: 'outline' }>, path: string, size: Size): Local {
  const t = size('thickness', b.thickness)
  const doubt = setting(r.project, 'outline')
  const edge = r.draw.off(`${path}/outline`, 'unknown', doubt, doubt)
  const zs = [...new Set(b.outline.map(([z]) => z))].sort((x, y) => x - y)
  const [first, last] = [zs[0] as number, zs.at(-1) as number]
  const plate = zs.slice(1).flatMap((zb, i) => {
    const za = zs[i] as number
    // Counted from its true rear edge. An edge that stands out makes every piece longer; one that stands in can
    // shorten only the ends.
    const z0 = za - first + edge - (edge > 0 || za === first ? edge : 0)
    const z1 = zb - first + edge + (edge > 0 || zb === last ? edge : 0)
    return spans(b.outline, za, zb).map(([rear, blade]): Slab => {
      const out = ([lo, hi]: readonly [number, number]): [number, number] => [lo - edge, hi + edge]
      return { z0, z1, rear: out(rear), blade: out(blade), v0: -t / 2, v1: t / 2 }
    })
  })
  const components = (b.components ?? []).map((c, i) => {
    const field = `components/${i}`
    const [z, x] = [size(`${field}/z`, c.z, 'offset'), size(`${field}/x`, c.x, 'offset')]
    const [l, w, h] = [
      size(`${field}/length`, c.length),
      size(`${field}/width`, c.width),
      size(`${field}/height`, c.height),
    ]
    const v = ((t + h) / 2) * (c.side === 'bottom' ? -1 : 1)
    return block(x, v, w, h, z - first, z - first + l)
  })
  return { length: last - first + 2 * edge, slabs: [...plate, ...components] }
}

/** What a polygon covers between two heights: pairs of edges, from x to x at each end. */
function spans(
  outline: readonly (readonly [number, number])[],
  za: number,
  zb: number,
): (readonly [[number, number], [number, number]])[] {
  const crossing = outline.flatMap(([z0, x0], i) => {
    const [z1, x1] = outline[(i + 1) % outline.length] as readonly [number, number]
    if (Math.min(z0, z1) > za || Math.max(z0, z1) < zb || z0 === z1) return []
    const at = (z: number): number => x0 + ((z - z0) / (z1 - z0)) * (x1 - x0)
    return [{ a: at(za), b: at(zb) }]
  })
  crossing.sort((p, q) => p.a + p.b - q.a - q.b)
  const found: (readonly [[number, number], [number, number]])[] = []
  for (let i = 0; i + 1 < crossing.length; i += 2) {
    const [p, q] = [crossing[i], crossing[i + 1]] as [{ a: number; b: number }, { a: number; b: number }]
    found.push([
      [p.a, q.a],
      [p.b, q.b],
    ])
  }
  return found
}

/** The box around a flat part, in its own frame. */
export function boundsOf(l: Local): {
  readonly u: number
  readonly v: number
  readonly halfU: number
  readonly halfV: number
} {
  if (l.round !== undefined) return { u: 0, v: 0, halfU: l.round, halfV: l.round }
  if (l.slabs.length === 0) return { u: 0, v: 0, halfU: 0, halfV: 0 }
  const us = l.slabs.flatMap((s) => [...s.rear, ...s.blade])
  const vs = l.slabs.flatMap((s) => [s.v0, s.v1])
  const [u0, u1, v0, v1] = [Math.min(...us), Math.max(...us), Math.min(...vs), Math.max(...vs)]
  return { u: (u0 + u1) / 2, v: (v0 + v1) / 2, halfU: (u1 - u0) / 2, halfV: (v1 - v0) / 2 }
}
