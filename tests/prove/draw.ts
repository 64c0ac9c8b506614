export type Kind = 'unknown' | 'varies'

/** One thing that is not known or does not stay: a dimension's error, or the direction of something that may go any way. */
export interface Doubt {
  readonly path: string
  readonly kind: Kind
  readonly minus: number
  readonly plus: number
  /** A direction in degrees: any, with nothing special about its nominal 0. */
  readonly turns: boolean
}

/** Directions tried for something that may go any way. */
const directions = Array.from({ length: 16 }, (_, i) => i * 22.5)

/** Values of a doubt that are tried when a corner is looked for. */
export function endsOf(d: Doubt): readonly number[] {
  if (d.turns) return directions
  return d.minus > 0 && d.plus > 0 ? [-d.minus, d.plus] : d.plus > 0 ? [0, d.plus] : [-d.minus, 0]
}

/**
 * One way things may truly be: for every doubt by how much it is off its nominal. What is not named is nominal.
 * Every doubt that is asked for is noted, so that a draw at nominal tells what there is to draw.
 */
export class Draw {
  readonly seen = new Map<string, Doubt>()
  readonly #values: ReadonlyMap<string, number>

  constructor(values: ReadonlyMap<string, number> = new Map()) {
    this.#values = values
  }

  off(path: string, kind: Kind, minus: number, plus: number): number {
    if (!(minus > 0 || plus > 0)) return 0
    this.seen.set(path, { path, kind, minus, plus, turns: false })
    return this.#values.get(path) ?? 0
  }

  direction(path: string, kind: Kind): number {
    this.seen.set(path, { path, kind, minus: 0, plus: 360, turns: true })
    return this.#values.get(path) ?? 0
  }
}
