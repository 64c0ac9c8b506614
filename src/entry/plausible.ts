/**
 * Sizes that a hilt's dimensions usually have, in mm. Outside them a value is questioned, never refused. Common
 * practice, no source: the smallest and largest tubes a builder meets, with room to spare.
 */
export interface Plausible {
  readonly min: number
  readonly max: number
  /** What it is, for the question: "a bore". */
  readonly what: string
}

export const plausible = {
  bore: { min: 8, max: 60, what: 'a bore' },
  outside: { min: 10, max: 90, what: 'an outside diameter' },
  depth: { min: 15, max: 450, what: 'a depth in a hilt' },
  hiltLength: { min: 80, max: 500, what: "a hilt's length" },
  cellDiameter: { min: 8, max: 35, what: "a cell's diameter" },
  cellLength: { min: 20, max: 110, what: "a cell's length" },
  speakerDiameter: { min: 10, max: 60, what: "a speaker's diameter" },
  boardWidth: { min: 8, max: 50, what: "a board's width" },
  boardLength: { min: 12, max: 150, what: "a board's length" },
  pitch: { min: 0.25, max: 4, what: 'a pitch' },
} as const satisfies Readonly<Record<string, Plausible>>

/** Thinner metal than this is more likely a slip than a tube, mm. Common practice, no source. */
export const thinnestWall = 0.3

/** What the sizes of a part usually are, by its kind, where a slip of the unit would pass for a very small part. */
const ofParts: Readonly<Record<string, Readonly<Record<string, Plausible>>>> = {
  cell: { diameter: plausible.cellDiameter, length: plausible.cellLength },
  speaker: { diameter: plausible.speakerDiameter },
  board: { width: plausible.boardWidth, length: plausible.boardLength },
}

/** What one size of a part's body usually is; undefined where anything may be. */
export const plausibleSize = (kind: string, field: string): Plausible | undefined => ofParts[kind]?.[field]
