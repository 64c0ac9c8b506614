import { good } from '../../problem/problem.ts'
import { least, most } from '../../quantity/quantity.ts'
import { lengthFromReadings } from '../length.ts'
import { listOf, numberOf, type Rule } from '../rule.ts'
import { budgetOutputs, budgetValues, coverageInput, gum, readingsInput, toolInputs } from './reading-inputs.ts'

export const sizeFromReadingsRule: Rule = {
  name: 'size-from-readings',
  title: 'Size from readings',
  what: 'A length, depth, thickness or outside size from repeated readings of it, with its interval.',
  inputs: [readingsInput, ...toolInputs(0.03, 'calliper, outside jaws'), coverageInput],
  outputs: [
    { name: 'least', unit: 'mm', what: 'Smallest the size may be.' },
    { name: 'nominal', unit: 'mm', what: 'Mean of the readings.' },
    { name: 'greatest', unit: 'mm', what: 'Largest the size may be.' },
    { name: 'scatter', unit: 'mm', what: 'Standard deviation of one reading.' },
    ...budgetOutputs,
    { name: 'ask', unit: '', what: 'What to read next.' },
  ],
  formula: 'mean; u² = (mpe/√3)² + (q/√12)² + s²/n; interval ±k·u, or the plain sum of limits where that is smaller',
  sources: [gum, { text: 'Tool error', how: 'common practice, no source' }],
  example: { readings: '25.02, 25.03, 25.01, 25.02, 25.03', mpe: '0.02' },
  run: (values) => {
    const size = lengthFromReadings(
      listOf(values, 'readings').map((value) => ({ value })),
      {
        tool: { name: 'tool', mpe: numberOf(values, 'mpe'), resolution: numberOf(values, 'resolution'), jaws: false },
        coverage: numberOf(values, 'coverage'),
        path: 'size-from-readings',
      },
    )
    if (!size.ok) return size
    const { quantity, s, combined, ask } = size.value
    return good({
      least: least(quantity),
      nominal: quantity.nominal,
      greatest: most(quantity),
      scatter: s,
      ...budgetValues(combined),
      ask: ask.map((a) => a.text).join(' '),
    })
  },
}
