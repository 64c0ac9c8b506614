import { isRelative } from '../project/forms.ts'
import type { ZPlaceInput } from '../project/schema/place.ts'
import type { QuantityInput } from '../project/schema/quantity.ts'
import { add, exact, type Quantity, scale } from '../quantity/quantity.ts'
import { type Context, wrong } from './context.ts'
import { quantityOf } from './quantity.ts'
import { isBare, oneNumber } from './typed-limit.ts'

/** The two ends of something along the hilt. */
export interface Ends {
  readonly rear: Quantity
  readonly blade: Quantity
}

/**
 * Where everything lies along z. Each thing says how to find its ends; they are found when first asked for, so that
 * places may refer to each other in any order. A ring of references is a problem, not a hang.
 */
export class Heights {
  readonly #makers = new Map<string, () => Ends | undefined>()
  readonly #found = new Map<string, Ends | undefined>()
  readonly #open = new Set<string>()
  readonly #ctx: Context

  constructor(ctx: Context) {
    this.#ctx = ctx
  }

  define(ref: string, make: () => Ends | undefined): void {
    this.#makers.set(ref, make)
  }

  has(ref: string): boolean {
    return this.#makers.has(ref)
  }

  /** undefined where it is unknown or wrong; `from` is the path that asks. */
  ends(ref: string, from: string): Ends | undefined {
    if (this.#found.has(ref)) return this.#found.get(ref)
    const make = this.#makers.get(ref)
    if (!make)
      return wrong(
        this.#ctx,
        'unknown-reference',
        from,
        ref,
        this.#nearby(ref),
        'Name something that is in the project.',
      )
    if (this.#open.has(ref))
      return wrong(
        this.#ctx,
        'circular',
        from,
        ref,
        'a place that does not lead back to itself',
        'Give one of these places as a number.',
      )
    this.#open.add(ref)
    const ends = make()
    this.#open.delete(ref)
    this.#found.set(ref, ends)
    return ends
  }

  /**
   * A place along z: a number from the datum, or measured from the end of something. `drawn`: a bare number is where
   * something will be made, not a reading, and has no error of its own.
   */
  place(input: ZPlaceInput, path: string, drawn = false): Quantity | undefined {
    const offset = (given: QuantityInput, at: string): Quantity | undefined => {
      const q = quantityOf(this.#ctx, given, { path: at, as: 'offset' })
      if (!q || !drawn) return q
      if (isBare(given)) return exact(q.nominal)
      // Where a part lies and where a sled begins is known no better than what it is placed by; all else is drawn there.
      return /^(parts\/|sleds\/[^/]+\/from\/by$)/.test(at) ? q : oneNumber(this.#ctx, given, q, at)
    }
    if (!isRelative(input)) return offset(input as QuantityInput, path)
    const ends = this.ends(input.of, `${path}/of`)
    const by = input.by === undefined ? exact(0) : offset(input.by, `${path}/by`)
    return ends && by && add(endOf(ends, input.end ?? 'blade'), by)
  }

  #nearby(ref: string): string {
    const list = ref.split('/')[0] ?? ''
    const same = [...this.#makers.keys()].filter((k) => k.startsWith(`${list}/`))
    return (same.length > 0 ? same : [...this.#makers.keys()]).slice(0, 8).join(', ') || 'something in the project'
  }
}

export function endOf(ends: Ends, end: 'rear' | 'middle' | 'blade'): Quantity {
  return end === 'rear' ? ends.rear : end === 'blade' ? ends.blade : scale(add(ends.rear, ends.blade), 0.5)
}
