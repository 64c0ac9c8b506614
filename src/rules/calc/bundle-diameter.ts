import { bad, good, problem } from '../../problem/problem.ts'
import { bundleDiameter } from '../bundle.ts'
import { listOf, optionalNumber, type Rule } from '../rule.ts'

export const bundleDiameterRule: Rule = {
  name: 'bundle-diameter',
  title: 'Diameter of a wire bundle',
  what: 'The round hole that a bundle of wires takes up, side by side as they come to lie.',
  inputs: [
    {
      name: 'wires',
      unit: 'mm',
      what: 'Outside diameters over the insulation: one a wire, or one for all of them with count.',
      range: { exclusiveMin: 0, max: 20 },
      list: true,
    },
    {
      name: 'count',
      unit: '',
      what: 'How many wires of the one diameter.',
      range: { min: 1, max: 200 },
      optional: true,
    },
  ],
  outputs: [
    { name: 'diameter', unit: 'mm', what: 'Envelope of the bundle.' },
    { name: 'count', unit: '', what: 'Number of wires.' },
    { name: 'fill', unit: '', what: 'Share of the envelope that is wire.' },
  ],
  formula:
    'equal wires 1 to 7: 1, 2, 2.155, 2.414, 2.701, 3, 3 × d; two that differ: d1 + d2; else √(Σd² / 0.6), never below d1 + d2 of the two largest',
  sources: [
    { text: 'Circles packed in a circle, closed forms', how: 'computed' },
    { text: 'Fill of 0.6 for a loose bundle', how: 'common practice, no source' },
  ],
  example: { wires: '1.3', count: '6' },
  run: (values) => {
    const given = listOf(values, 'wires')
    const count = optionalNumber(values, 'count')
    if (count !== undefined && !Number.isInteger(count))
      return bad(problem('out-of-range', 'bundle-diameter/count', count, 'a whole number', 'Count the wires.'))
    if (count !== undefined && given.length > 1)
      return bad(
        problem(
          'contradiction',
          'bundle-diameter/count',
          count,
          'one diameter in wires',
          'Give one diameter with count, or one for each wire without it.',
        ),
      )
    const wires = count === undefined ? given : Array.from({ length: count }, () => given[0] as number)
    const diameter = bundleDiameter(wires)
    return good({ diameter, count: wires.length, fill: wires.reduce((s, d) => s + d * d, 0) / diameter ** 2 })
  },
}
