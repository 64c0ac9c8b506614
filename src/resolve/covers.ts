import { add, exact, type Quantity, scale } from '../quantity/quantity.ts'
import type { Context } from './context.ts'
import type { Ends, Heights } from './heights.ts'
import type { Section } from './metal.ts'
import { quantityOf } from './quantity.ts'

/** A cover over the outside: grip sleeve, clamp band, ring, strip. `half` is left out where it goes all around. */
export interface Cover {
  /** `sleeves/grip`. */
  readonly id: string
  readonly name: string
  readonly kind: 'grip-sleeve' | 'clamp' | 'ring' | 'strip' | 'cover'
  readonly ends: Ends
  readonly theta: Quantity
  readonly half: Quantity | undefined
  /** Its inside diameter, where it was given. */
  readonly inside: Quantity | undefined
}

/** A round hole or recess in the wall. */
export interface RoundHole {
  /** `features/port-hole`. */
  readonly id: string
  readonly name: string
  readonly kind: 'hole' | 'slot' | 'window' | 'recess'
  readonly section: string
  readonly ends: Ends
  readonly theta: Quantity
  readonly radius: Quantity
  readonly through: boolean
}

/** Covers as they lie along the hilt. One whose place or length is wrong is left out; what is wrong is in the problems. */
export function coversOf(ctx: Context, heights: Heights): Cover[] {
  return ctx.project.sleeves.flatMap((s): Cover[] => {
    const path = `sleeves/${s.id}`
    const rear = heights.place(s.z, `${path}/z`)
    const length = quantityOf(ctx, s.length, { path: `${path}/length`, as: 'length' })
    const theta = angle(ctx, s.theta, `${path}/theta`)
    const half =
      s.half === undefined ? undefined : quantityOf(ctx, s.half, { path: `${path}/half`, as: 'angle', min: 0 })
    const inside =
      s.inside === undefined ? undefined : quantityOf(ctx, s.inside, { path: `${path}/inside`, as: 'bore' })
    if (!rear || !length || !theta) return []
    const ends = { rear, blade: add(rear, length) }
    return [{ id: path, name: s.name ?? s.id, kind: s.kind ?? 'cover', ends, theta, half, inside }]
  })
}

/** Round holes in the wall. They stay metal for the clearance checks; the drawings show them. */
export function roundHolesOf(ctx: Context, heights: Heights, sections: readonly Section[]): RoundHole[] {
  return ctx.project.features.flatMap((f): RoundHole[] => {
    if (f.kind === 'intrusion' || f.shape.form !== 'round') return []
    const path = `features/${f.id}`
    const ends = heights.ends(path, path)
    const section = sections.find((s) => f.on === `sections/${s.id}`)
    const diameter = quantityOf(ctx, f.shape.diameter, { path: `${path}/shape/diameter`, as: 'outside' })
    const theta = angle(ctx, f.at.theta, `${path}/at/theta`)
    if (!ends || !section || !diameter || !theta) return []
    return [
      {
        id: path,
        name: f.name ?? f.id,
        kind: f.kind,
        section: section.id,
        ends,
        theta,
        radius: scale(diameter, 0.5),
        through: f.shape.depth === undefined,
      },
    ]
  })
}

const angle = (ctx: Context, input: Parameters<typeof quantityOf>[1], path: string): Quantity | undefined =>
  input === undefined ? exact(0) : quantityOf(ctx, input, { path, as: 'angle' })
