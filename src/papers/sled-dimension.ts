/** One number that a sled is made from, in mm or degrees: how it is known, and where another is typed. */
export interface SledDimension {
  readonly sled: string
  /** Where another value is typed; for what only follows from others, where to change what it follows from. */
  readonly path: string
  readonly name: string
  readonly value: number
  /** Nothing where it is a count. */
  readonly unit: 'mm' | '°' | ''
  readonly kind: 'typed' | 'default' | 'derived'
  readonly source: string
  /** The nest or feature it belongs to: "cell pocket", "window", "body". */
  readonly nest: string
  /** The part whose nest it is: `parts/cell`; undefined for what belongs to the sled itself. */
  readonly part: string | undefined
  /** Whether a number typed at its path takes its place. */
  readonly typeable: boolean
}
