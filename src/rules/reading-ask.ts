import { apart, type Direction } from './readings.ts'
import type { Tool } from './tool.ts'

/** A measurement that would tell more: what to do, and in which directions where that is the point. */
export interface Ask {
  readonly what: 'directions' | 'angle' | 'jaw-flat' | 'repeat'
  readonly text: string
  /** Angles to read at, degrees from the main switch line, in [0, 180). */
  readonly thetas: readonly number[]
}

/** What is missing before the oval of a bore or tube is known. */
export function askDirections(groups: readonly Direction[], fitted: boolean): readonly Ask[] {
  if (fitted) return []
  const known = groups.flatMap((g) => (g.theta === undefined ? [] : [g.theta]))
  if (known.length === 0) {
    const text = 'Read the diameter at 0°, 60° and 120°, and note each angle: one direction does not show an oval.'
    return [{ what: 'angle', text, thetas: [0, 60, 120] }]
  }
  const thetas = completing(known)
  const list = thetas.map((t) => `${t}°`).join(' and ')
  const text = `Read it at ${list} too: three directions about 60° apart fix the oval.`
  return [{ what: 'directions', text, thetas }]
}

/** Directions that, with those known, come nearest to three at 60°. */
function completing(known: readonly number[]): readonly number[] {
  const [only, second] = known
  if (only !== undefined && second === undefined) {
    return [60, 120].map((turn) => Math.round((only + turn) % 180)).toSorted((a, b) => a - b)
  }
  let best = 0
  for (let t = 0; t < 180; t += 5) {
    if (nearest(t, known) > nearest(best, known)) best = t
  }
  return [best]
}

const nearest = (t: number, known: readonly number[]): number => Math.min(...known.map((k) => apart(k, t)))

/** Flats that make inside jaws read short, and repeats that differ more than the tool explains. */
export function askTool(tool: Tool, jawFlat: number | undefined, s: number): readonly Ask[] {
  const asks: Ask[] = []
  if (tool.jaws && jawFlat === undefined) {
    const text =
      'Measure the flat on the tips of the inside jaws: with it the reading is corrected, without it it is short.'
    asks.push({ what: 'jaw-flat', text, thetas: [] })
  }
  if (!tool.jaws && jawFlat !== undefined) {
    asks.push({ what: 'jaw-flat', text: `No jaw flat is used: ${tool.name} has no flat jaws.`, thetas: [] })
  }
  if (s > tool.mpe + tool.resolution) {
    const text = `The readings scatter by ${Number(s.toPrecision(2))} mm, more than the tool explains: read it five times.`
    asks.push({ what: 'repeat', text, thetas: [] })
  }
  return asks
}
