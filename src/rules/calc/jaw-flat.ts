import { bad, good, problem } from '../../problem/problem.ts'
import { numberOf, type Rule } from '../rule.ts'
import { boreFromJaws } from '../tool.ts'

export const jawFlatRule: Rule = {
  name: 'jaw-flat',
  title: 'Flats of inside jaws',
  what: 'How much inside jaws with flat faces read short in a bore.',
  inputs: [
    {
      name: 'reading',
      unit: 'mm',
      what: 'What the calliper shows in the bore.',
      range: { exclusiveMin: 0, max: 1000 },
    },
    { name: 'jawFlat', unit: 'mm', what: 'Width of the flats on the jaw tips.', range: { min: 0, max: 10 } },
  ],
  outputs: [
    { name: 'bore', unit: 'mm', what: 'The diameter behind the reading.' },
    { name: 'short', unit: 'mm', what: 'How much the reading is short.' },
  ],
  formula: 'd = √(m² + w²)',
  sources: [{ text: 'Chord of a circle: the corners of the flats touch', how: 'computed' }],
  example: { reading: '25.00', jawFlat: '1' },
  run: (values) => {
    const [reading, jawFlat] = [numberOf(values, 'reading'), numberOf(values, 'jawFlat')]
    if (jawFlat > reading / 2) {
      const hint = 'Such jaws do not go into that bore; check both numbers.'
      return bad(
        problem('out-of-range', 'jaw-flat/jawFlat', jawFlat, `up to half the reading, ${reading / 2} mm`, hint),
      )
    }
    const bore = boreFromJaws(reading, jawFlat)
    return good({ bore, short: bore - reading })
  },
}
