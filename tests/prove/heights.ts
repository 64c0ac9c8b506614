import { isRelative } from '../../src/project/forms.ts'
import type { SectionInput } from '../../src/project/schema/hilt.ts'
import type { PartInput } from '../../src/project/schema/part.ts'
import type { ZPlaceInput } from '../../src/project/schema/place.ts'
import type { QuantityInput } from '../../src/project/schema/quantity.ts'
import { localOf } from './bodies.ts'
import { type Reality, sizeAt } from './sizes.ts'

export interface Ends {
  readonly rear: number
  readonly blade: number
}

/** Where a sled is drawn: the numbers of its plan. */
export interface DrawnSled extends Ends {
  readonly pieces: readonly (Ends & { readonly radius: number })[]
  readonly rings: readonly (Ends & { readonly id: string })[]
}

/**
 * Where everything truly lies along z in one draw. A sled is printed once: what it carries lies where it was drawn
 * to lie from the nominal hilt, only that a part's own size moves what is placed by it.
 */
export class Heights {
  readonly #r: Reality
  readonly #nominal: Heights
  readonly #sleds: ReadonlyMap<string, DrawnSled>
  readonly #found = new Map<string, Ends>()

  constructor(r: Reality, nominal: Heights | undefined, sleds: ReadonlyMap<string, DrawnSled>) {
    this.#r = r
    this.#nominal = nominal ?? this
    this.#sleds = sleds
  }

  /** Ends of a section, bore step, feature or part; of a sled as drawn. Parts on a sled are in the drawn frame. */
  ends(ref: string): Ends {
    const known = this.#found.get(ref)
    if (known) return known
    const [list, id, step] = ref.split('/') as [string, string, string | undefined]
    const found =
      list === 'sections'
        ? step === undefined
          ? this.#section(id)
          : this.#step(id, step)
        : list === 'features'
          ? this.#feature(id)
          : list === 'sleds'
            ? (this.#sleds.get(id) as Ends)
            : this.#part(id)
    this.#found.set(ref, found)
    return found
  }

  /** A height; `drawn` for what is made to it. */
  at(place: ZPlaceInput, path: string, drawn = false): number {
    if (!isRelative(place)) return sizeAt(this.#r, place, { path, as: 'offset', drawn })
    const by = place.by === undefined ? 0 : sizeAt(this.#r, place.by, { path: `${path}/by`, as: 'offset', drawn })
    const { rear, blade } = this.ends(place.of)
    return by + (place.end === 'rear' ? rear : place.end === 'middle' ? (rear + blade) / 2 : blade)
  }

  #section(id: string): Ends {
    const { sections, joints } = this.#r.project
    const i = sections.findIndex((s) => s.id === id)
    const s = sections[i] as SectionInput
    const length = sizeAt(this.#r, s.length, { path: `sections/${id}/length`, as: 'length' })
    const before = sections[i - 1]
    let rear = 0
    if (s.z !== undefined) rear = this.at(s.z, `sections/${id}/z`)
    else if (before) {
      const joint = joints.find((j) => j.rear === before.id && j.blade === id)
      const engaged =
        joint?.engagement === undefined
          ? 0
          : sizeAt(this.#r, joint.engagement, { path: `joints/${joint.id}/engagement`, as: 'length' })
      rear = this.ends(`sections/${before.id}`).blade - engaged
    }
    return { rear, blade: rear + length }
  }

  #step(id: string, step: string): Ends {
    const s = this.#r.project.sections.find((o) => o.id === id) as SectionInput
    const stations = this.stations(s)
    const i = s.bore.findIndex((b, k) => (b.id ?? String(k)) === step)
    return { rear: stations[i] as number, blade: stations[i + 1] as number }
  }

  /** Where the steps of a bore begin and end. */
  stations(s: SectionInput): number[] {
    const { rear, blade } = this.ends(`sections/${s.id}`)
    const lengths = s.bore.map((b, i) =>
      b.length === undefined
        ? undefined
        : sizeAt(this.#r, b.length, { path: `sections/${s.id}/bore/${b.id ?? i}/length`, as: 'length' }),
    )
    const rest = blade - rear - lengths.reduce((sum: number, l) => sum + (l ?? 0), 0)
    const stations = [rear]
    for (const l of lengths.slice(0, -1)) stations.push((stations.at(-1) as number) + (l ?? rest))
    return [...stations, blade]
  }

  #feature(id: string): Ends {
    const f = this.#r.project.features.find((o) => o.id === id) as Reality['project']['features'][number]
    const path = `features/${id}`
    const round = f.shape.form === 'pin' || f.shape.form === 'round'
    const length = sizeAt(this.#r, (round ? f.shape.diameter : f.shape.length) as QuantityInput, {
      path: `${path}/shape/${round ? 'diameter' : 'length'}`,
      as: 'outside',
    })
    const at = this.at(f.at.z, `${path}/at/z`)
    const face = f.at.face ?? 'middle'
    const rear = at - (face === 'rear' ? 0 : face === 'blade' ? length : length / 2)
    return { rear, blade: rear + length }
  }

  #part(id: string): Ends {
    const p = this.#r.project.parts.find((o) => o.id === id) as PartInput
    const local = localOf(this.#r, p)
    if (p.presses) return this.#contact(p)
    const at = this.#placeOf(p)
    const face = p.at?.face ?? (local.spoke ? 'middle' : 'rear')
    const rear = at - (face === 'rear' ? 0 : face === 'blade' ? local.length : local.length / 2)
    return { rear, blade: rear + local.length }
  }

  #placeOf(p: PartInput): number {
    const z = p.at?.z as ZPlaceInput
    const path = `parts/${p.id}/at/z`
    if (!onSled(p)) return this.at(z, path)
    const other = isRelative(z) ? this.#r.project.parts.find((o) => z.of === `parts/${o.id}`) : undefined
    const byPart = other !== undefined && onSled(other)
    return byPart || !isRelative(z) ? this.at(z, path, true) : this.#nominal.at(z, path, true)
  }

  /**
   * A contact fills the room between the face it stands on and the end it presses. Where no face is given, the sled is
   * drawn with one as far off as the contact is long on paper: what it truly is makes no other pocket.
   */
  #contact(p: PartInput): Ends {
    const { length } = localOf(this.#nominal.#r, p)
    const pressed = this.ends(p.presses?.part as string)
    const rearEnd = p.presses?.end === 'rear'
    const face = rearEnd ? pressed.rear : pressed.blade
    const nominal = this.#nominal.ends(p.presses?.part as string)
    const base =
      p.at?.z === undefined ? (rearEnd ? nominal.rear - length : nominal.blade + length) : this.#faceOf(p, p.at.z)
    return rearEnd ? { rear: base, blade: face } : { rear: face, blade: base }
  }

  /** The face a contact stands on is one of the print: it lies where it is drawn by what the others are on paper. */
  #faceOf(p: PartInput, z: ZPlaceInput): number {
    const path = `parts/${p.id}/at/z`
    const relative = isRelative(z) && onSled(p)
    if (!relative) return this.at(z, path, true)
    const own = this.at(z, path, true) - this.at({ of: z.of, end: z.end ?? 'blade' }, path, true)
    return this.#nominal.at({ of: z.of, end: z.end ?? 'blade' }, path, true) + own
  }
}

export const onSled = (p: PartInput): boolean => p.on === undefined || p.on.startsWith('sleds/')
