/** How often each corner's triangles run along an edge, looked up by the corner the edge starts at. */
export class EdgeList {
  readonly #triangles: ArrayLike<number>
  /** For each corner the last place in the list of triangles that starts an edge there, for each place the one before it; −1 ends. */
  readonly #last: Int32Array
  readonly #before: Int32Array

  /** `triangles`: three corner numbers each, all below `corners`. */
  constructor(triangles: ArrayLike<number>, corners: number) {
    this.#triangles = triangles
    this.#last = new Int32Array(corners).fill(-1)
    this.#before = new Int32Array(triangles.length)
    for (let i = 0; i < triangles.length; i++) {
      const corner = triangles[i] as number
      this.#before[i] = this.#last[corner] as number
      this.#last[corner] = i
    }
  }

  /** How many triangles run from corner a to corner b. */
  times(a: number, b: number): number {
    let found = 0
    for (let i = this.#last[a] as number; i >= 0; i = this.#before[i] as number)
      if (this.#triangles[endOf(i)] === b) found++
    return found
  }

  /** How many edges have not exactly one triangle along them and one against them. */
  unpaired(): number {
    const t = this.#triangles
    let found = 0
    for (let i = 0; i < t.length; i++) {
      const [a, b] = [t[i] as number, t[endOf(i)] as number]
      if (this.times(a, b) !== 1 || this.times(b, a) !== 1) found++
    }
    return found
  }
}

/** The place of the corner an edge ends at, by the place of the one it starts at. */
const endOf = (i: number): number => (i % 3 === 2 ? i - 2 : i + 1)
