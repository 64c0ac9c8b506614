import vectorText from '@jscad/modeling/src/text/vectorText.js'
import type { Dimension, PlanItem } from '../../../geometry/plan/plan.ts'
import { remember } from '../../../geometry/remember.ts'
import { beyond } from '../job.ts'

/** A polyline of a text's letters: along the axis from 0, across about 0, mm. */
export type Line = readonly (readonly [number, number])[]

/** The font's capitals are 21 units high in a size of 14. */
const capital = 21 / 14

/** Text as polylines, from the single-line letters of the vector font. */
export const strokesOf = remember(
  64,
  ({ text, height }: { readonly text: string; readonly height: number }) => `${height} ${text}`,
  ({ text, height }): readonly Line[] => {
    const lines = vectorText({ height: height / capital, align: 'left' }, text) as [number, number][][]
    const points = lines.flat()
    const low = Math.min(...points.map(([a]) => a))
    const middle = (Math.min(...points.map(([, b]) => b)) + Math.max(...points.map(([, b]) => b))) / 2
    return lines.filter((l) => l.length > 1).map((l) => l.map(([a, b]): [number, number] => [a - low, b - middle]))
  },
)

export interface Written {
  readonly sled: string
  readonly mark: string
  readonly text: string
  /** Where the text begins. */
  readonly z: number
  /** Outer radius of the sled beside each piece of each stroke, mm. */
  readonly radii: readonly (readonly number[])[]
  /** How far the text reaches to either side of its middle, mm. */
  readonly half: number
  /** Letter height, depth, line width, clock angle. */
  readonly dimensions: readonly [Dimension, Dimension, Dimension, Dimension]
}

/** Each piece of each stroke as a shallow slot. What stays as it was is the same objects, plan after plan. */
export const strokeItems = remember(64, (w: Written) => JSON.stringify(w), cutIn)

function cutIn({ sled, mark, text, z, radii, half, dimensions }: Written): PlanItem[] {
  const [height, depth, stroke, theta] = dimensions
  const strokes = strokesOf({ text, height: height.value })
  // Flat on a round: the middle of a letter lies higher than its edges, so the depth is taken at the edges.
  const edge = (r: number) => Math.sqrt(Math.max(0, r * r - half ** 2))
  return strokes.flatMap((line, i) =>
    line.slice(1).map(([a1, b1], k): PlanItem => {
      const [a0, b0] = line[k] as [number, number]
      const outside = radii[i]?.[k] as number
      return {
        id: `sleds/${sled}/marks/${mark}/${i + 1}-${k + 1}`,
        op: 'cut',
        stage: 2,
        by: `sleds/${sled}`,
        nest: 'mark',
        dimensions,
        solid: {
          shape: 'plate',
          theta: theta.value,
          // Seen from outside with the blade to the right, θ grows downwards, so a letter's height runs against it.
          points: bar(-b0, z + a0, -b1, z + a1, stroke.value),
          rIn: edge(outside) - depth.value,
          rOut: outside + beyond,
        },
      }
    }),
  )
}

/** A bar of the stroke's width around a line from (t0, z0) to (t1, z1), a little longer at both ends; counter-clockwise. */
function bar(t0: number, z0: number, t1: number, z1: number, width: number): readonly (readonly [number, number])[] {
  const length = Math.hypot(t1 - t0, z1 - z0) || 1
  const [ut, uz] = [((t1 - t0) / length) * (width / 2), ((z1 - z0) / length) * (width / 2)]
  return [
    [t0 - ut + uz, z0 - uz - ut],
    [t1 + ut + uz, z1 + uz - ut],
    [t1 + ut - uz, z1 + uz + ut],
    [t0 - ut - uz, z0 - uz + ut],
  ]
}
