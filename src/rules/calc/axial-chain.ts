import { bad, good, problem } from '../../problem/problem.ts'
import { listOf, numberOf, type Rule } from '../rule.ts'
import { usual } from '../usual.ts'

const length = { exclusiveMin: 0, max: 500 } as const

export const axialChainRule: Rule = {
  name: 'axial-chain',
  title: 'Contacts along the axis',
  what: 'Whether the contacts are neither solid with the longest cell nor loose with the shortest, and the room that suits both.',
  inputs: [
    { name: 'cellMin', unit: 'mm', what: 'Length of the shortest cell.', range: length },
    { name: 'cellMax', unit: 'mm', what: 'Length of the longest cell.', range: length },
    { name: 'room', unit: 'mm', what: 'Between the faces the contacts stand on.', range: length },
    {
      name: 'roomSpread',
      unit: 'mm',
      what: 'How far that may be off, each way.',
      range: { min: 0, max: 50 },
      default: 0,
    },
    {
      name: 'solid',
      unit: 'mm',
      what: 'Length of each contact squeezed flat.',
      range: { min: 0, max: 100 },
      list: true,
    },
    {
      name: 'free',
      unit: 'mm',
      what: 'Length of each contact with nothing pressing.',
      range: { min: 0, max: 100 },
      list: true,
    },
    {
      name: 'preload',
      unit: 'mm',
      what: 'Least compression of each contact that still presses (common practice, no source).',
      range: { min: 0, max: 20 },
      default: usual.preload,
    },
  ],
  outputs: [
    {
      name: 'longest',
      unit: 'mm',
      what: 'Slack with the longest cell before the contacts are solid; negative: too short.',
    },
    { name: 'shortest', unit: 'mm', what: 'Slack with the shortest cell before they stop pressing; negative: loose.' },
    { name: 'roomLeast', unit: 'mm', what: 'Least room that suits every cell.' },
    { name: 'roomMost', unit: 'mm', what: 'Greatest room that suits every cell.' },
    { name: 'suits', unit: '', what: 'In words.' },
  ],
  formula:
    'longest = room − spread − cellMax − Σ solid; shortest = Σ (free − preload) − (room + spread − cellMin); room between cellMax + Σ solid + spread and cellMin + Σ (free − preload) − spread',
  sources: [
    { text: 'Sum of lengths', how: 'computed' },
    { text: 'Preload', how: 'common practice, no source' },
  ],
  example: { cellMin: '64.5', cellMax: '65.5', room: '70.5', solid: '3', free: '9' },
  run: (values) => {
    const n = (name: string) => numberOf(values, name)
    const [solid, free] = [listOf(values, 'solid'), listOf(values, 'free')]
    const wrong = mismatch(n('cellMin'), n('cellMax'), solid, free)
    if (wrong) return bad(wrong)
    const flat = sum(solid)
    const pressing = sum(free) - free.length * n('preload')
    const longest = n('room') - n('roomSpread') - n('cellMax') - flat
    const shortest = pressing - (n('room') + n('roomSpread') - n('cellMin'))
    const roomLeast = n('cellMax') + flat + n('roomSpread')
    const roomMost = n('cellMin') + pressing - n('roomSpread')
    return good({ longest, shortest, roomLeast, roomMost, suits: words(longest, shortest, roomLeast <= roomMost) })
  },
}

const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0)

function mismatch(cellMin: number, cellMax: number, solid: readonly number[], free: readonly number[]) {
  if (cellMin > cellMax)
    return problem('contradiction', 'axial-chain/cellMin', cellMin, `at most cellMax, ${cellMax} mm`, 'Swap them.')
  if (free.length !== solid.length)
    return problem(
      'contradiction',
      'axial-chain/free',
      `${free.length} for ${solid.length} of solid`,
      'one for each',
      'Give as many free as solid.',
    )
  const i = free.findIndex((f, k) => f < (solid[k] as number))
  return i < 0
    ? undefined
    : problem(
        'contradiction',
        `axial-chain/free/${i}`,
        free[i],
        `at least its solid length, ${solid[i]} mm`,
        'Swap them, or measure both again.',
      )
}

function words(longest: number, shortest: number, possible: boolean): string {
  if (longest >= 0 && shortest >= 0) return 'Suits every cell.'
  if (!possible) return 'No room suits every cell: take a contact with more way between solid and free.'
  return longest < 0 ? 'Too short for the longest cell.' : 'Too long for the shortest cell.'
}
