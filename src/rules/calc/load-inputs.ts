import type { Item } from '../../../geometry/packing/packing.ts'
import { disc, rectangle } from '../../../geometry/region/region.ts'
import { bad, good, type Outcome, type Problem, problem } from '../../problem/problem.ts'
import { listOf, type RuleInput, type RuleValues } from '../rule.ts'

/** What lies in one cross-section, as lists of numbers: discs (cells, speakers, rods) and boxes (boards, switches). */

const size = { exclusiveMin: 0, max: 200 } as const
const place = { min: -200, max: 200 } as const
const list = (name: string, unit: 'mm' | 'deg', what: string, range: RuleInput['range']): RuleInput => ({
  name,
  unit,
  what,
  ...(range ? { range } : {}),
  list: true,
  optional: true,
})

export const loadInputs: readonly RuleInput[] = [
  list('discs', 'mm', 'Diameters of what is round.', size),
  list('discX', 'mm', 'Their middles towards θ = 0; on the axis where left out.', place),
  list('discY', 'mm', 'Their middles towards θ = 90°; on the axis where left out.', place),
  list('boxWidth', 'mm', 'Widths of what is square, across the angle it faces.', size),
  list('boxHeight', 'mm', 'Their heights, along the angle they face.', size),
  list('boxX', 'mm', 'Their middles towards θ = 0; on the axis where left out.', place),
  list('boxY', 'mm', 'Their middles towards θ = 90°; on the axis where left out.', place),
  list('boxFacing', 'deg', 'The clock angles they face; 0 where left out.', { min: -720, max: 720 }),
]

/** The things of a cross-section, named disc 1 … and box 1 …; fails where the lists do not belong together. */
export function loadOf(values: RuleValues, rule: string): Outcome<readonly Item[]> {
  const [discs, widths] = [listOf(values, 'discs'), listOf(values, 'boxWidth')]
  const problems = [
    ...['discX', 'discY'].flatMap((name) => unequal(values, rule, name, 'discs', discs.length, true)),
    ...unequal(values, rule, 'boxHeight', 'boxWidth', widths.length, false),
    ...['boxX', 'boxY', 'boxFacing'].flatMap((name) => unequal(values, rule, name, 'boxWidth', widths.length, true)),
  ]
  if (discs.length + widths.length === 0 && problems.length === 0)
    problems.push(
      problem('missing', rule, undefined, 'at least one disc or box', 'Give discs=… or boxWidth=… and boxHeight=….'),
    )
  if (problems.length > 0) return bad(...problems)
  const at = (name: string, i: number) => listOf(values, name)[i] ?? 0
  return good([
    ...discs.map(
      (d, i): Item => ({ id: `disc ${i + 1}`, region: disc({ x: at('discX', i), y: at('discY', i) }, d / 2) }),
    ),
    ...widths.map((w, i): Item => {
      const middle = { x: at('boxX', i), y: at('boxY', i) }
      return { id: `box ${i + 1}`, region: rectangle(middle, w / 2, at('boxHeight', i) / 2, at('boxFacing', i)) }
    }),
  ])
}

function unequal(
  values: RuleValues,
  rule: string,
  name: string,
  of: string,
  wanted: number,
  mayLack: boolean,
): Problem[] {
  const got = listOf(values, name).length
  if (got === wanted || (got === 0 && mayLack)) return []
  return [
    problem(
      'contradiction',
      `${rule}/${name}`,
      `${got} for ${wanted} of ${of}`,
      'one for each',
      `Give as many ${name} as ${of}.`,
    ),
  ]
}
