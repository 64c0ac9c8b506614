import { bounds } from '../presets/bounds.ts'
import type { PartInput } from '../project/schema/part.ts'
import { add, exact, type Quantity, scale, sub } from '../quantity/quantity.ts'
import type { Contact } from './assembly.ts'
import { type Context, limitOf, wrong } from './context.ts'
import type { Ends, Heights } from './heights.ts'
import { bodyOf, type Local, localOf } from './part-body.ts'
import { quantityOf } from './quantity.ts'

/** Sizes of every part, found once. */
export class PartSizes {
  readonly #found = new Map<string, Local | undefined>()
  readonly #ctx: Context

  constructor(ctx: Context) {
    this.#ctx = ctx
  }

  of(p: PartInput): Local | undefined {
    if (!this.#found.has(p.id)) {
      const source = bodyOf(this.#ctx, p)
      this.#found.set(p.id, source && localOf(this.#ctx, p, source))
    }
    return this.#found.get(p.id)
  }
}

/** Tells every part where it lies along z: by its face at a height, or, for a contact, by the end it presses on. */
export function placeParts(ctx: Context, heights: Heights, sizes: PartSizes): void {
  for (const p of ctx.project.parts) {
    const path = `parts/${p.id}`
    heights.define(path, () => (p.presses ? contactEnds(ctx, heights, p, sizes) : ownEnds(ctx, heights, p, sizes)))
  }
}

function ownEnds(ctx: Context, heights: Heights, p: PartInput, sizes: PartSizes): Ends | undefined {
  const path = `parts/${p.id}/at/z`
  const local = sizes.of(p)
  if (!local) return undefined
  if (p.at?.z === undefined)
    return wrong(
      ctx,
      'missing',
      path,
      undefined,
      'a height in mm, or {of, end, by}',
      'Say where its rear face lies, for example {"of": "parts/cell", "end": "blade", "by": 2}.',
    )
  const placed = heights.place(p.at.z, path, onSled(p))
  const at = placed && onSled(p) ? drawnOnce(ctx, placed) : placed
  if (!at) return undefined
  const face = p.at.face ?? (isSpoke(local) ? 'middle' : 'rear')
  const rear = face === 'rear' ? at : sub(at, scale(local.length, face === 'blade' ? 1 : 0.5))
  return { rear, blade: add(rear, local.length) }
}

/**
 * A sled is drawn once, from the readings: what the hilt truly measures moves nothing in it. Only what a part itself
 * in it measures moves what is placed by it.
 */
const drawnOnce = (ctx: Context, q: Quantity): Quantity => ({
  nominal: q.nominal,
  terms: q.terms.filter((t) => isOfSledPart(ctx, t.spread.path)),
})

/** A face of the print, whatever it was drawn by: another part that turns out longer does not move it. */
const printed = (path: string, q: Quantity): Quantity => ({
  nominal: q.nominal,
  terms: q.terms.filter((t) => t.spread.path.startsWith(`${path}/`)),
})

/** Whether a path leads to something of a part that a sled carries. */
export function isOfSledPart(ctx: Context, path: string): boolean {
  const [list, id] = path.split('/')
  const part = list === 'parts' ? ctx.project.parts.find((p) => p.id === id) : undefined
  return part !== undefined && onSled(part)
}

/** A part on a sled lies where the sled is drawn to hold it; one in the wall lies where it was measured. */
const onSled = (p: PartInput): boolean => p.on === undefined || p.on.startsWith('sleds/')
const isSpoke = (local: Local): boolean => local.pieces[0]?.kind === 'spoke'

/** Between the face it stands on and the end it presses; where no face is given, at its working length. */
function contactEnds(ctx: Context, heights: Heights, p: PartInput, sizes: PartSizes): Ends | undefined {
  const path = `parts/${p.id}`
  const presses = p.presses as NonNullable<PartInput['presses']>
  const pressed = heights.ends(presses.part, `${path}/presses/part`)
  const local = sizes.of(p)
  if (!pressed || !local) return undefined
  const atRear = presses.end === 'rear'
  const face = atRear ? pressed.rear : pressed.blade
  const placed = p.at?.z === undefined ? undefined : heights.place(p.at.z, `${path}/at/z`, onSled(p))
  const base = placed && onSled(p) ? printed(path, placed) : placed
  if (p.at?.z !== undefined && !base) return undefined
  const away = exact((atRear ? -1 : 1) * workingLength(ctx, p, local))
  const stood = base ?? add(exact(face.nominal), away)
  return atRear ? { rear: stood, blade: face } : { rear: face, blade: stood }
}

/** The middle of what its preset calls working, else its body's length. */
function workingLength(ctx: Context, p: PartInput, local: Local): number {
  const preset = p.preset === undefined ? undefined : ctx.presets.byId(p.preset)
  if (preset?.kind === 'contact') return (preset.working.min + preset.working.max) / 2
  return local.length.nominal
}

export function contactOf(ctx: Context, p: PartInput, ends: Ends): Contact | undefined {
  if (!p.presses) return undefined
  const path = `parts/${p.id}`
  const preset = p.preset === undefined ? undefined : ctx.presets.byId(p.preset)
  const named = preset?.kind === 'contact' ? preset : undefined
  const size = (field: 'solid' | 'free'): Quantity | undefined => {
    const own = quantityOf(ctx, p[field], { path: `${path}/${field}`, as: 'length', min: 0 })
    if (own || !named) return own
    const b = bounds(named[field])
    return quantityOf(
      ctx,
      { min: b.min, max: b.max, nominal: b.nominal },
      { path: `${path}/${field}`, as: 'length', preset: `${named.name}: ${named.source}` },
    )
  }
  const preload =
    quantityOf(ctx, p.preload, { path: `${path}/preload`, as: 'length', min: 0 }) ?? exact(limitOf(ctx, 'preload'))
  const base = p.presses.end === 'rear' ? ends.rear : ends.blade
  return { presses: p.presses.part, end: p.presses.end, solid: size('solid'), free: size('free'), preload, base }
}
