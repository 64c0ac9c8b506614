import { pack } from '../../../geometry/packing/packing.ts'
import { good } from '../../problem/problem.ts'
import { numberOf, type Rule, type RuleInput } from '../rule.ts'
import { usual } from '../usual.ts'
import { loadInputs, loadOf } from './load-inputs.ts'

export const clearanceInput: RuleInput = {
  name: 'clearance',
  unit: 'mm',
  what: 'One-sided gap to the bore (common practice, no source).',
  range: { min: 0, max: 5 },
  default: usual.clearance,
}

export const smallestBoreRule: Rule = {
  name: 'smallest-bore',
  title: 'Smallest bore for a packing',
  what: 'The smallest round bore that holds the contents of one cross-section as they lie, and what stands in the way.',
  inputs: [...loadInputs, clearanceInput],
  outputs: [
    { name: 'bore', unit: 'mm', what: 'Smallest bore, where everything may be shifted together.' },
    { name: 'shiftX', unit: 'mm', what: 'The shift towards θ = 0 that brings it to the middle.' },
    { name: 'shiftY', unit: 'mm', what: 'The shift towards θ = 90° that brings it to the middle.' },
    { name: 'boreOnAxis', unit: 'mm', what: 'Smallest bore with everything where it was given.' },
    { name: 'touches', unit: '', what: 'What touches that bore on the axis first.' },
    { name: 'leastGap', unit: 'mm', what: 'Least gap of two things to each other; negative where they overlap.' },
    { name: 'between', unit: '', what: 'Which two.' },
  ],
  formula:
    'least R with |c − pᵢ| + rᵢ ≤ R for every disc and corner (smallest enclosing circle; on the axis c = 0); bore = 2 (R + clearance)',
  sources: [
    { text: 'Smallest enclosing circle of discs: Fischer and Gärtner 2003', how: 'from memory' },
    { text: 'Clearance', how: 'common practice, no source' },
  ],
  example: { discs: '18.5', discX: '-4', boxWidth: '16', boxHeight: '4.5', boxX: '8.7' },
  run: (values) => {
    const load = loadOf(values, 'smallest-bore')
    if (!load.ok) return load
    const clearance = numberOf(values, 'clearance')
    const { free, onAxis, pairs } = pack(load.value)
    const [closest] = pairs
    return good({
      bore: 2 * (free.r + clearance),
      shiftX: 0 - free.c.x,
      shiftY: 0 - free.c.y,
      boreOnAxis: 2 * (onAxis.r + clearance),
      touches: [...new Set(onAxis.touched.map((t) => t.of))].join(' and '),
      leastGap: closest ? closest.gap : '',
      between: closest ? `${closest.a} and ${closest.b}` : '',
    })
  },
}
