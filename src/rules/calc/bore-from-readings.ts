import { bad, good, problem } from '../../problem/problem.ts'
import { least, most } from '../../quantity/quantity.ts'
import { boreFromReadings } from '../round.ts'
import { listOf, numberOf, optionalNumber, type Rule } from '../rule.ts'
import { budgetOutputs, budgetValues, coverageInput, gum, readingsInput, toolInputs } from './reading-inputs.ts'

/** Usual where nothing better is known; a project sets its own threshold. */
const usualOvality = 0.1

export const boreFromReadingsRule: Rule = {
  name: 'bore-from-readings',
  title: 'Bore from readings',
  what: 'The bore behind several readings: repeats averaged, an oval found from three directions, with its interval.',
  inputs: [
    readingsInput,
    {
      name: 'angles',
      unit: 'deg',
      what: 'The direction of each reading from the main switch line; one for each reading.',
      range: { min: -720, max: 720 },
      list: true,
      optional: true,
    },
    {
      name: 'depths',
      unit: 'mm',
      what: 'The place of each reading along the axis; one for each reading. The least station governs.',
      range: { min: -10_000, max: 10_000 },
      list: true,
      optional: true,
    },
    ...toolInputs(0.1, 'inside jaws'),
    {
      name: 'jawFlat',
      unit: 'mm',
      what: 'Width of the flats on the tips of inside jaws; corrects the reading. Leave out for other tools.',
      range: { min: 0, max: 10 },
      optional: true,
    },
    {
      name: 'ovalityAllowance',
      unit: 'mm',
      what: `How far unread diameters may lie from those read (${usualOvality}: common practice, no source).`,
      range: { min: 0, max: 10 },
      default: usualOvality,
    },
    coverageInput,
  ],
  outputs: [
    { name: 'least', unit: 'mm', what: 'Smallest the bore may be: what has to pass is judged by it.' },
    { name: 'nominal', unit: 'mm', what: 'Best estimate of the least diameter.' },
    { name: 'greatest', unit: 'mm', what: 'Largest any diameter of the bore may be.' },
    { name: 'mean', unit: 'mm', what: 'Best estimate of the mean diameter.' },
    { name: 'ovality', unit: 'mm', what: 'Greatest less least diameter, as read.' },
    { name: 'directions', unit: '', what: 'How many directions the readings show.' },
    ...budgetOutputs,
    { name: 'stationDepths', unit: 'mm', what: 'The stations along the axis.' },
    { name: 'stationLeast', unit: 'mm', what: 'Smallest the bore may be at each station.' },
    { name: 'ask', unit: '', what: 'What to read next.' },
  ],
  formula:
    'd = √(m² + w²); three directions at 60°: least = mean − √(⅔ Σ(d − mean)²), more: least squares of mean + a·cos 2θ + b·sin 2θ; u² = (mpe/√3)² + (q/√12)² + s²/n; interval ±k·u',
  sources: [
    gum,
    { text: 'Oval from three directions: least squares of a second harmonic', how: 'computed' },
    { text: 'Jaw flat: chord of a circle', how: 'computed' },
    { text: 'Ovality allowance and tool error', how: 'common practice, no source' },
  ],
  example: { readings: '28.02, 27.96, 28.05', angles: '0, 60, 120', jawFlat: '0.8' },
  run: (values) => {
    const readings = listOf(values, 'readings')
    const angles = listOf(values, 'angles')
    const depths = listOf(values, 'depths')
    for (const [name, list] of [['angles', angles] as const, ['depths', depths] as const]) {
      if (list.length === 0 || list.length === readings.length) continue
      const got = `${list.length} for ${readings.length} readings`
      return bad(
        problem(
          'contradiction',
          `bore-from-readings/${name}`,
          got,
          'one for each reading',
          `Give as many ${name} as readings.`,
        ),
      )
    }
    const jawFlat = optionalNumber(values, 'jawFlat')
    const round = boreFromReadings(
      readings.map((value, i) => ({ value, theta: angles[i], z: depths[i] })),
      {
        tool: {
          name: jawFlat === undefined ? 'tool' : 'inside jaws',
          mpe: numberOf(values, 'mpe'),
          resolution: numberOf(values, 'resolution'),
          jaws: jawFlat !== undefined,
        },
        jawFlat,
        ovalityAllowance: numberOf(values, 'ovalityAllowance'),
        coverage: numberOf(values, 'coverage'),
        path: 'bore-from-readings',
      },
    )
    if (!round.ok) return round
    const { governing, quantity, stations } = round.value
    return good({
      least: least(quantity),
      nominal: quantity.nominal,
      greatest: most(quantity),
      mean: governing.mean,
      ovality: governing.greatest - governing.least,
      directions: governing.directions,
      ...budgetValues(governing.combined),
      stationDepths: stations.flatMap((s) => s.z ?? []),
      stationLeast: stations.map((s) => least(s.quantity)),
      ask: governing.ask.map((a) => a.text).join(' '),
    })
  },
}
