import { plausibleSize } from '../entry/plausible.ts'
import type { Preset } from '../presets/schema/kinds.ts'
import type { BodyInput, PartInput } from '../project/schema/part.ts'
import { add, combine, exact, known, type Quantity, scale, shift } from '../quantity/quantity.ts'
import { type Context, limitOf, wrong } from './context.ts'
import { quantityOf } from './quantity.ts'
import { questionSize } from './suspicions.ts'

/**
 * A part in its own frame: z from its rear face, u across, v outwards (the way it faces). Its pieces are what stands
 * in the way: a cell is one, a board is its plate and every component on it.
 */
export interface Local {
  readonly length: Quantity
  readonly pieces: readonly Piece[]
}

export type Piece = RoundPiece | BlockPiece | SectorPiece | SpokePiece

interface Named {
  /** "" for the part itself, or the component's name. */
  readonly name: string
  readonly z0: Quantity
  /** The very length of the part where the piece is as long as it by nature. */
  readonly z1: Quantity
}

export interface RoundPiece extends Named {
  readonly kind: 'round'
  readonly radius: Quantity
}

export interface BlockPiece extends Named {
  readonly kind: 'block'
  readonly u: Quantity
  readonly v: Quantity
  readonly halfU: Quantity
  readonly halfV: Quantity
}

export interface SectorPiece extends Named {
  readonly kind: 'sector'
  readonly inner: Quantity
  readonly outer: Quantity
  readonly half: Quantity
}

/** Round about its own axis, which points at the hilt's: a switch body through the wall. */
export interface SpokePiece extends Named {
  readonly kind: 'spoke'
  readonly radius: Quantity
  readonly depth: Quantity
}

export interface Source {
  readonly body: BodyInput
  readonly path: string
  readonly preset: Preset | undefined
}

/** The body of a part: its own, else its preset's. */
export function bodyOf(ctx: Context, p: PartInput): Source | undefined {
  const path = `parts/${p.id}`
  const preset = p.preset === undefined ? undefined : ctx.presets.byId(p.preset)
  if (p.preset !== undefined && !preset) {
    const same = [...ctx.presets.kinds]
      .filter((k) => k === p.kind)
      .flatMap((k) => ctx.presets.ofKind(k).map((e) => e.id))
    return wrong(
      ctx,
      'unknown-preset',
      `${path}/preset`,
      p.preset,
      same.slice(0, 12).join(', ') || 'a preset',
      'List them with: sledwright presets.',
    )
  }
  if (preset && p.kind !== 'other' && preset.kind !== p.kind)
    return wrong(
      ctx,
      'contradiction',
      `${path}/preset`,
      p.preset,
      `a ${p.kind}; this is a ${preset.kind}`,
      `Choose another preset, or say "kind": "${preset.kind}".`,
    )
  if (p.body) return { body: p.body, path: `${path}/body`, preset }
  if (preset && 'body' in preset) return { body: preset.body as BodyInput, path: `${path}/preset`, preset }
  return wrong(
    ctx,
    'missing',
    `${path}/body`,
    undefined,
    'a preset or a body with its sizes',
    'Name a preset, or give shape and sizes.',
  )
}

export function localOf(ctx: Context, p: PartInput, source: Source): Local | undefined {
  const swapped = p.swapped ?? (source.preset !== undefined && 'swapped' in source.preset)
  const fromPreset =
    p.body === undefined && source.preset ? `${source.preset.name}: ${source.preset.source}` : undefined
  const size = (field: string, input: unknown, as: 'outside' | 'length' | 'offset' | 'angle' = 'outside') => {
    const path = `${source.path}/${field}`
    const q = quantityOf(ctx, input as never, { path, as, swapped, ...(fromPreset ? { preset: fromPreset } : {}) })
    if (p.body) questionSize(ctx, input as never, q, plausibleSize(p.kind, field), path)
    return q
  }
  const b = source.body
  if (b.shape === 'cylinder') {
    const [d, l] = [size('diameter', b.diameter), size('length', b.length)]
    if (!d || !l) return undefined
    const radius = scale(d, 0.5)
    const piece: Piece =
      b.axis === 'radial'
        ? { kind: 'spoke', name: '', radius, depth: l, z0: exact(0), z1: d }
        : { kind: 'round', name: '', radius, z0: exact(0), z1: l }
    return { length: b.axis === 'radial' ? d : l, pieces: [piece] }
  }
  if (b.shape === 'box') {
    const [w, h, l] = [size('width', b.width), size('height', b.height), size('length', b.length)]
    if (!w || !h || !l) return undefined
    return {
      length: l,
      pieces: [
        {
          kind: 'block',
          name: '',
          u: exact(0),
          v: exact(0),
          halfU: scale(w, 0.5),
          halfV: scale(h, 0.5),
          z0: exact(0),
          z1: l,
        },
      ],
    }
  }
  if (b.shape === 'ring-sector') {
    const [inner, outer, half, l] = [
      size('inner', b.inner, 'offset'),
      size('outer', b.outer),
      size('half', b.half, 'angle'),
      size('length', b.length),
    ]
    if (!inner || !outer || !half || !l) return undefined
    if (!(inner.nominal >= 0 && inner.nominal < outer.nominal))
      return wrong(
        ctx,
        'contradiction',
        `${source.path}/inner`,
        inner.nominal,
        `0 or more, and less than outer, ${outer.nominal}`,
        'Radii from the axis: inner is the smaller one.',
      )
    if (!(half.nominal > 0 && half.nominal <= 180))
      return wrong(
        ctx,
        'out-of-range',
        `${source.path}/half`,
        half.nominal,
        'above 0 and at most 180°',
        'Half of the angle it takes up; 180 is a whole ring.',
      )
    return {
      length: l,
      pieces: [{ kind: 'sector', name: '', inner: scale(inner, 1), outer, half, z0: exact(0), z1: l }],
    }
  }
  return board(ctx, b, source.path, size)
}

type Sizer = (field: string, input: unknown, as?: 'outside' | 'length' | 'offset' | 'angle') => Quantity | undefined

/** The plate as slabs between the heights of its corners, each as wide as the outline gets there, and its components. */
function board(
  ctx: Context,
  b: Extract<BodyInput, { shape: 'outline' }>,
  path: string,
  size: Sizer,
): Local | undefined {
  const t = size('thickness', b.thickness)
  if (!t) return undefined
  const half = limitOf(ctx, 'outline')
  const edge: Quantity = known(0, {
    path: `${path}/outline`,
    kind: 'unknown',
    minus: half,
    plus: half,
    distribution: 'rectangular',
    source: 'preset',
    from: 'routed board edge',
  })
  const zs = [...new Set(b.outline.map(([z]) => z))].sort((x, y) => x - y)
  const [first, last] = [zs[0] as number, zs.at(-1) as number]
  if (!(last > first))
    return wrong(
      ctx,
      'contradiction',
      `${path}/outline`,
      'corners at one height',
      'an outline with a length',
      'Give corners as [z, x], z along the hilt.',
    )
  const length = combine([
    [exact(last - first), 1],
    [edge, 2],
  ])
  const pieces: Piece[] = zs.slice(1).map((z, i): BlockPiece => {
    const [lo, hi] = widthBetween(b.outline, zs[i] as number, z)
    // Counted from the true rear edge. An edge that stands out makes every slab longer, one that stands in can shorten
    // only the ends: what lies between follows the two in a straight line that is right at both.
    const [rear, blade] = [(zs[i] as number) - first, z - first]
    const z0 =
      i === 0
        ? exact(0)
        : combine([
            [exact(rear - half / 2), 1],
            [edge, 0.5],
          ])
    const z1 =
      z === last
        ? length
        : combine([
            [exact(blade + half / 2), 1],
            [edge, 1.5],
          ])
    return {
      kind: 'block',
      name: '',
      u: exact((lo + hi) / 2),
      v: exact(0),
      halfU: add(exact((hi - lo) / 2), edge),
      halfV: scale(t, 0.5),
      z0,
      z1,
    }
  })
  for (const [i, c] of (b.components ?? []).entries()) {
    const field = `components/${i}`
    const [z, x] = [size(`${field}/z`, c.z, 'offset'), size(`${field}/x`, c.x, 'offset')]
    const [l, w, h] = [
      size(`${field}/length`, c.length),
      size(`${field}/width`, c.width),
      size(`${field}/height`, c.height),
    ]
    if (!z || !x || !l || !w || !h) return undefined
    const side = c.side === 'bottom' ? -1 : 1
    pieces.push({
      kind: 'block',
      name: c.name ?? `component ${i + 1}`,
      u: x,
      v: scale(add(t, h), side / 2),
      halfU: scale(w, 0.5),
      halfV: scale(h, 0.5),
      z0: shift(z, -first),
      z1: add(shift(z, -first), l),
    })
  }
  return { length, pieces }
}

/** Least and most x of a polygon between two neighbouring heights of its corners. */
function widthBetween(outline: readonly (readonly [number, number])[], za: number, zb: number): [number, number] {
  let [lo, hi] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  const take = (x: number) => {
    lo = Math.min(lo, x)
    hi = Math.max(hi, x)
  }
  for (const [i, [z0, x0]] of outline.entries()) {
    const [z1, x1] = outline[(i + 1) % outline.length] as readonly [number, number]
    // Between two neighbouring heights an edge runs from one to the other or is not there at all.
    if (Math.max(z0, z1) <= za || Math.min(z0, z1) >= zb) continue
    for (const z of [za, zb]) take(x0 + ((z - z0) / (z1 - z0)) * (x1 - x0))
  }
  return [lo, hi]
}
