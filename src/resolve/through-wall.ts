import type { Body } from '../body/body.ts'
import type { PartInput } from '../project/schema/part.ts'
import { add, exact, most, type Quantity, scale, sub } from '../quantity/quantity.ts'
import { alongTaper } from './along-taper.ts'
import type { Context } from './context.ts'
import type { Ends } from './heights.ts'
import type { Section } from './metal.ts'
import type { SpokePiece } from './part-body.ts'
import { quantityOf } from './quantity.ts'
import { turned } from './turned.ts'

/** Through the wall: from its outer end inwards, with tags and the bend of the wire behind it. */
export function throughWall(
  ctx: Context,
  sections: readonly Section[],
  p: PartInput,
  piece: SpokePiece,
  ends: Ends,
): Pick<Body, 'shape' | 'turn'> | undefined {
  const section = sections.find((s) => p.on === `sections/${s.id}`)
  const path = `parts/${p.id}`
  const theta =
    p.at?.theta === undefined ? exact(0) : quantityOf(ctx, p.at.theta, { path: `${path}/at/theta`, as: 'angle' })
  const middle = scale(add(ends.rear, ends.blade), 0.5)
  const outer =
    p.at?.outer === undefined
      ? section && outsideRadius(section, middle)
      : quantityOf(ctx, p.at.outer, { path: `${path}/at/outer`, as: 'offset', min: 0 })
  if (!theta) return undefined
  if (!outer) {
    if (p.at?.outer === undefined) ctx.missing.push({ ...lacking(path, section, middle), of: path })
    return undefined
  }
  const behind = [wireSpace(ctx, p, 'tags'), wireSpace(ctx, p, 'wireBend')].filter((q) => q !== undefined)
  const rIn = behind.reduce((r, q) => sub(r, q), sub(outer, piece.depth))
  const turn = turned(theta)
  // In a wall the metal hides its outer end; on a sled that is what may meet the bore.
  const rOut = section === undefined ? outer : exact(outer.nominal)
  return {
    shape: { kind: 'pin', z: middle, theta: theta.nominal, radius: piece.radius, rIn, rOut },
    ...(turn ? { turn } : {}),
  }
}

/**
 * Which way tags and wires lie behind a box, a board or a round body along the hilt, nobody has said. What was typed
 * counts as not checked; what a preset gives is usual, and told among what is taken for granted.
 */
export function tellWires(ctx: Context, p: PartInput): void {
  for (const field of ['tags', 'wireBend'] as const) {
    const space = wireSpace(ctx, p, field)
    if (!space || most(space) <= 0) continue
    const what = field === 'tags' ? 'room for its tags' : 'room for the bend of its wires'
    if (p[field] === undefined)
      ctx.assumptions.push(`"${p.name ?? p.id}" is taken to find ${what} behind it: that is not looked at.`)
    else
      ctx.missing.push({
        path: `parts/${p.id}/${field}`,
        what,
        hint: 'It counts only behind a round body that points at the axis. Add a part as large as that room where it lies, and type 0 here.',
        of: `parts/${p.id}`,
      })
  }
}

/** Tags and wire bend: as typed, else as the preset says. */
function wireSpace(ctx: Context, p: PartInput, field: 'tags' | 'wireBend'): Quantity | undefined {
  const path = `parts/${p.id}/${field}`
  if (p[field] !== undefined) return quantityOf(ctx, p[field], { path, as: 'offset', min: 0 })
  const preset = p.preset === undefined ? undefined : ctx.presets.byId(p.preset)
  const own = preset && (preset as unknown as Record<string, unknown>)[field]
  return own === undefined || !preset
    ? undefined
    : quantityOf(ctx, own as never, { path, as: 'offset', min: 0, preset: `${preset.name}: ${preset.source}` })
}

/** Outside radius of its section at a height, where it was given. */
/** What would tell how far out a part in the wall begins. */
function lacking(path: string, section: Section | undefined, { nominal: z }: Quantity) {
  const [rear, blade] = [section?.ends.rear.nominal ?? 0, section?.ends.blade.nominal ?? 0]
  if (section && section.outside.length > 0 && (z < rear || z > blade))
    return {
      path: `${path}/at/z`,
      what: `a place along ${section.name}`,
      hint: `Its middle lies at z ${z.toFixed(1)}; ${section.name} reaches from ${rear.toFixed(1)} to ${blade.toFixed(1)}: correct the height, or say which section it sits on.`,
    }
  return {
    path: `${path}/at/outer`,
    what: 'radius of its outer end',
    hint: 'Give the radius from the axis to its outer end, or the outside diameter of the section.',
  }
}

function outsideRadius(section: Section, z: Quantity): Quantity | undefined {
  const piece = section.outside.find((o) => z.nominal >= o.z0.nominal && z.nominal <= o.z1.nominal)
  return piece && scale(alongTaper(piece, piece.d0, piece.d1, z), 0.5)
}
