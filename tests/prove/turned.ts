import type { Convex } from './convex.ts'
import type { Column } from './half-plane.ts'
import { type V2, type V3, v3 } from './vec.ts'

/** A point turned about the hilt's axis, degrees clockwise as seen from the rear. */
export function turnedAbout<P extends V2>(p: P, degrees: number): P {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)]
  return { ...p, x: c * p.x - s * p.y, y: s * p.x + c * p.y }
}

class Turned implements Convex {
  readonly core: V3
  readonly min: V3
  readonly max: V3
  readonly #of: Convex
  readonly #by: number

  constructor(of: Convex, by: number) {
    this.#of = of
    this.#by = by
    this.core = turnedAbout(of.core, by)
    const most = (x: number, y: number): V3 => this.support(v3(x, y, 0))
    this.min = v3(most(-1, 0).x, most(0, -1).y, of.min.z)
    this.max = v3(most(1, 0).x, most(0, 1).y, of.max.z)
  }

  support(d: V3): V3 {
    return turnedAbout(this.#of.support(turnedAbout(d, -this.#by)), this.#by)
  }

  get key(): string {
    return `${this.#of.key} turned ${this.#by.toFixed(7)}`
  }

  columns(axis: V2): readonly Column[] {
    return this.#of.columns(turnedAbout(axis, -this.#by))
  }
}

/** A solid turned about the hilt's axis. */
export const turned = (c: Convex, degrees: number): Convex => (degrees === 0 ? c : new Turned(c, degrees))
