/** A measuring tool as the rules see it: numbers and words, wherever they came from. All lengths in mm. */
export interface Tool {
  /** In the trade's words: "calliper, inside jaws". */
  readonly name: string
  /** Largest error of an indication, as a half-width: the true size lies within ±mpe of it. */
  readonly mpe: number
  /** Step of the display or scale. */
  readonly resolution: number
  /** Flat-faced inside jaws: in a bore they read a chord, so a known flat width corrects the reading. */
  readonly jaws: boolean
}

/**
 * The diameter behind a reading of inside jaws with flats of width w: d = √(m² + w²). All in mm; w < m.
 * The corners of the flats touch, not their middle.
 */
export const boreFromJaws = (reading: number, flat: number): number => Math.hypot(reading, flat)
