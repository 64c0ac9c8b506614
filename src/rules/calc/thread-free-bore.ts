import { good } from '../../problem/problem.ts'
import type { Rule } from '../rule.ts'
import { freeBore, internalClasses } from '../thread.ts'
import { classInput, readThread, threadInput } from './thread-inputs.ts'

export const threadFreeBoreRule: Rule = {
  name: 'thread-free-bore',
  title: 'Free bore of an internal thread',
  what: 'What can pass an internal thread: its minor diameter, with the tolerance of its class.',
  inputs: [threadInput, classInput(internalClasses, '6H or 2B')],
  outputs: [
    { name: 'thread', unit: '', what: 'The thread as understood.' },
    { name: 'major', unit: 'mm', what: 'Major diameter D: the roots of an internal thread.' },
    { name: 'pitch', unit: 'mm', what: 'Pitch P.' },
    { name: 'least', unit: 'mm', what: 'Smallest minor diameter of the class.' },
    { name: 'nominal', unit: 'mm', what: 'Basic minor diameter, with the deviation of its position.' },
    { name: 'greatest', unit: 'mm', what: 'Largest minor diameter of the class.' },
    { name: 'formula', unit: '', what: 'The formula with its values.' },
    { name: 'note', unit: '', what: 'What was assumed.' },
  ],
  formula:
    'D1 = D − 1.0825 P; 6H: TD1 = 433 P − 190 P^1.22 µm up to P 0.8, 230 P^0.7 from P 1 (grades 4, 5, 7, 8: × 0.63, 0.8, 1.25, 1.6); 2B from 1/4 in: 0.25 p − 0.4 p² in',
  sources: [
    { text: 'ISO 724 basic dimensions', how: 'read' },
    {
      text: 'ISO 965-1:1998 clause 13, in a public restatement; its tables are these values rounded, within 7 %',
      how: 'read',
    },
    {
      text: 'ASME B1.1-2003 clause 5.8.2, in a public restatement; reproduces published limits to 0.0005 in',
      how: 'read',
    },
    { text: 'ISO 261 coarse pitches above M8', how: 'from memory' },
  ],
  example: { thread: 'M33x1.5' },
  run: (values) => {
    const read = readThread(values, 'thread-free-bore')
    if (!read.ok) return read
    const { thread, given } = read.value
    const bore = freeBore(thread, given, 'thread-free-bore/class')
    if (!bore.ok) return bore
    return good({
      thread: thread.name,
      major: thread.major,
      pitch: thread.pitch,
      least: bore.value.min,
      nominal: bore.value.nominal,
      greatest: bore.value.max,
      formula: bore.value.formula,
      note: thread.pitchAssumed ? 'Coarse pitch assumed: threads of this size in tubes are nearly always finer.' : '',
    })
  },
}
