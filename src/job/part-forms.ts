import { rectangle } from '../entry/corners.ts'
import type { PartPreset } from '../presets/preset-choices.ts'
import { type KnownBy, knownBy, nominalOf } from '../project/nominal.ts'
import type { BodyInput, PartInput } from '../project/schema/part.ts'
import type { QuantityInput } from '../project/schema/quantity.ts'
import { heightAlone, type PlaceOf, throughWall } from './place-forms.ts'

/** The shapes one chooses from: a cylinder lies along the hilt or comes through its wall. */
export const shapeForms = ['cylinder', 'radial', 'box', 'outline', 'ring-sector'] as const
export type ShapeForm = (typeof shapeForms)[number]

export function shapeForm(body: BodyInput): ShapeForm {
  return body.shape === 'cylinder' && body.axis === 'radial' ? 'radial' : body.shape
}

/** Fields of a part that a preset may say and that its own sizes take over. */
const taken = ['tags', 'wireBend', 'solid', 'free'] as const

/** The part by its own sizes: what its preset said stands in them, marked as the preset's until it is measured. */
export function withOwnSizes(part: PartInput, preset: PartPreset | undefined): PartInput {
  const { preset: _, ...rest } = part
  if (!preset) return { ...rest, body: part.body ?? emptyBody(part.kind) }
  const from = `${preset.name}: ${preset.source} (${preset.known})`.slice(0, 200)
  const marked = (q: QuantityInput): QuantityInput =>
    typeof q === 'object' ? { ...q, source: 'preset', from } : { value: q as number, source: 'preset', from }
  const own = Object.fromEntries(
    taken.flatMap((field) => {
      const q = part[field] ?? preset[field]
      return q === undefined ? [] : [[field, part[field] === undefined ? marked(q) : q]]
    }),
  )
  const swapped = part.swapped ?? (preset.swapped ? true : undefined)
  return {
    ...rest,
    body: part.body ?? mapSizes(preset.body, marked),
    ...own,
    ...(swapped === undefined ? {} : { swapped }),
  }
}

/**
 * The part by a preset: its own sizes go. A preset that comes through the wall takes its place in the wall, and one
 * that no longer does lies on the sled.
 */
export function withPreset(part: PartInput, preset: PartPreset, before: PartPreset | undefined, wall: Wall): PartInput {
  const { body, tags: _tags, wireBend: _bend, solid: _solid, free: _free, ...rest } = part
  const next = { ...rest, preset: preset.id }
  return seated(next, throughWall(body ?? before?.body), throughWall(preset.body), wall)
}

/** The metal that a part through the wall sits in. */
export interface Wall {
  /** The section at its height. */
  readonly section: string | undefined
  readonly placeOf: PlaceOf
}

/** The part in another shape, its sizes carried over as far as they mean the same. */
export function withShape(part: PartInput, form: ShapeForm, wall: Wall): PartInput {
  const body = reshaped(part.body ?? emptyBody(part.kind), form)
  return seated({ ...part, body }, throughWall(part.body), form === 'radial', wall)
}

/** In the wall from when it comes through the wall, and on the sled from when it does no more. */
function seated(part: PartInput, was: boolean, radial: boolean, { section, placeOf }: Wall): PartInput {
  if (was === radial || (radial && section === undefined)) return part
  const place = placeOf(`parts/${part.id}`)
  const { on: _on, goesIn: _goesIn, through: _through, at, ...rest } = part
  const { across: _across, theta, outer: _outer, face: _face, ...along } = at ?? {}
  if (!radial) return { ...rest, at: { ...along, ...(place && { z: heightAlone(place.rear) }) } }
  const z = place && { z: heightAlone((place.rear + place.blade) / 2) }
  return {
    ...rest,
    ...(section === undefined ? {} : { on: section }),
    goesIn: 'after',
    at: { ...along, ...z, theta: theta ?? part.at?.facing ?? 0 },
  }
}

function emptyBody(kind: PartInput['kind']): BodyInput {
  return kind === 'board' || kind === 'port' || kind === 'other'
    ? { shape: 'box', width: '', height: '', length: '' }
    : { shape: 'cylinder', diameter: '', length: '' }
}

/** Sizes by what they mean: across, outwards, along. */
function sizesOf(body: BodyInput): { across: QuantityInput; out: QuantityInput; along: QuantityInput } {
  switch (body.shape) {
    case 'cylinder':
      return body.axis === 'radial'
        ? { across: body.diameter, out: body.length, along: body.diameter }
        : { across: body.diameter, out: body.diameter, along: body.length }
    case 'box':
      return { across: body.width, out: body.height, along: body.length }
    case 'ring-sector':
      return { across: body.outer, out: body.outer, along: body.length }
    case 'outline': {
      const [z, x] = [body.outline.map((c) => c[0]), body.outline.map((c) => c[1])]
      return {
        across: Math.max(...x) - Math.min(...x),
        out: overComponents(body) ?? body.thickness,
        along: Math.max(...z) - Math.min(...z),
      }
    }
  }
}

/** How long a body is along the hilt, mm; undefined where that cannot be read. */
export const lengthAlong = (body: BodyInput): number | undefined => nominalOf(sizesOf(body).along)

/** Height of a board over all that stands on it; undefined where nothing does. */
function overComponents(body: Extract<BodyInput, { shape: 'outline' }>): number | undefined {
  if (!body.components || body.components.length === 0) return undefined
  const tallest = (side: 'top' | 'bottom') =>
    Math.max(
      0,
      ...(body.components ?? []).filter((c) => (c.side ?? 'top') === side).map((c) => nominalOf(c.height) ?? 0),
    )
  return Number(((nominalOf(body.thickness) ?? 0) + tallest('top') + tallest('bottom')).toFixed(3))
}

function reshaped(body: BodyInput, form: ShapeForm): BodyInput {
  if (shapeForm(body) === form) return body
  const { across, out, along } = sizesOf(body)
  switch (form) {
    case 'cylinder':
      return { shape: 'cylinder', diameter: across, length: along }
    case 'radial':
      return { shape: 'cylinder', axis: 'radial', diameter: across, length: out }
    case 'box':
      return { shape: 'box', width: across, height: out, length: along }
    case 'ring-sector':
      return { shape: 'ring-sector', inner: '', outer: '', half: 180, length: along }
    case 'outline':
      return { shape: 'outline', outline: rectangle(nominalOf(along) ?? 40, nominalOf(across) ?? 18), thickness: 1.6 }
  }
}

/** Every size of a body, changed; corners of an outline have no spread of their own and stay. */
function mapSizes(body: BodyInput, change: (q: QuantityInput) => QuantityInput): BodyInput {
  switch (body.shape) {
    case 'cylinder':
      return { ...body, diameter: change(body.diameter), length: change(body.length) }
    case 'box':
      return { ...body, width: change(body.width), height: change(body.height), length: change(body.length) }
    case 'ring-sector':
      return { ...body, inner: change(body.inner), outer: change(body.outer), length: change(body.length) }
    case 'outline':
      return {
        ...body,
        thickness: change(body.thickness),
        ...(body.components && {
          components: body.components.map((c) => ({
            ...c,
            length: change(c.length),
            width: change(c.width),
            height: change(c.height),
          })),
        }),
      }
  }
}

const weakest: readonly KnownBy[] = ['assumed', 'preset', 'computed', 'measured']

/** How the sizes of a part are known: by the weakest of them. */
export function partKnownBy(part: PartInput): KnownBy {
  if (!part.body) return 'preset'
  const found = new Set<KnownBy>()
  mapSizes(part.body, (q) => {
    found.add(knownBy(q))
    return q
  })
  return weakest.find((by) => found.has(by)) ?? 'measured'
}

/** Sizes of a body in few characters, nominal, mm: `⌀18.4 × 65`, `18 × 6.2 × 34`. */
export function shortSize(body: BodyInput): string {
  const n = (q: QuantityInput) => {
    const value = nominalOf(q)
    return value === undefined ? '?' : String(Number(value.toFixed(1)))
  }
  if (body.shape === 'cylinder') return `⌀${n(body.diameter)} × ${n(body.length)}`
  if (body.shape === 'ring-sector') return `r ${n(body.inner)} to ${n(body.outer)} × ${n(body.length)}`
  const { across, out, along } = sizesOf(body)
  return `${n(across)} × ${n(out)} × ${n(along)}`
}
