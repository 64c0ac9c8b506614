import { good } from '../../problem/problem.ts'
import type { Rule } from '../rule.ts'
import { externalClasses, externalThread } from '../thread.ts'
import { classInput, readThread, threadInput } from './thread-inputs.ts'

export const threadOutsideRule: Rule = {
  name: 'thread-outside',
  title: 'Outside of a male thread',
  what: 'The crest that a tube drawn over a male thread must clear, and the root from which its wall is measured.',
  inputs: [threadInput, classInput(externalClasses, '6g or 2A')],
  outputs: [
    { name: 'thread', unit: '', what: 'The thread as understood.' },
    { name: 'majorLeast', unit: 'mm', what: 'Smallest major diameter of the class.' },
    { name: 'majorGreatest', unit: 'mm', what: 'Largest major diameter of the class.' },
    { name: 'minorLeast', unit: 'mm', what: 'Lowest root the class allows.' },
    { name: 'minorNominal', unit: 'mm', what: 'Rounded root d3.' },
    { name: 'minorGreatest', unit: 'mm', what: 'Highest root the class allows.' },
    { name: 'note', unit: '', what: 'What was assumed.' },
  ],
  formula:
    'd = D − es, Td = 180 P^(2/3) − 3.15/√P µm; d3 = d − 1.2269 P; lowest root = d − 0.6495 P − Td2 − 0.6160 P, Td2 = 90 P^0.4 D^0.1 µm; es(g) = 15 + 11 P µm',
  sources: [
    {
      text: 'ISO 965-1:1998 clause 13, in a public restatement; limits agree with published 6g rows within 0.02 mm',
      how: 'read',
    },
    { text: 'ASME B1.1-2003 clause 5.8.1 over nine pitches of engagement, in a public restatement', how: 'read' },
    { text: 'Lowest root: radius of P/8, as in ASME B1.13M', how: 'computed' },
  ],
  example: { thread: 'M33x1.5' },
  run: (values) => {
    const read = readThread(values, 'thread-outside')
    if (!read.ok) return read
    const { thread, given } = read.value
    const limits = externalThread(thread, given, 'thread-outside/class')
    if (!limits.ok) return limits
    const { major, minor } = limits.value
    return good({
      thread: thread.name,
      majorLeast: major.min,
      majorGreatest: major.max,
      minorLeast: minor.min,
      minorNominal: minor.nominal,
      minorGreatest: minor.max,
      note: thread.pitchAssumed ? 'Coarse pitch assumed: threads of this size in tubes are nearly always finer.' : '',
    })
  },
}
