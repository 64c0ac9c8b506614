import { type QuickInput, quickCheck } from '../../../src/job/quick.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import type { Assembly } from '../../../src/resolve/assembly.ts'

/** Invented numbers: a lantern with a threaded mouth, the board over the cell. */
export const lantern: QuickInput = {
  bore: '33.2',
  depth: '148',
  thread: 'M35x1.5',
  threadLength: '9',
  cell: { diameter: '18.4', length: '65' },
  speaker: { diameter: '28', length: '5.4' },
  board: { width: '18', height: '5.8', length: '42' },
}

export function assemblyOf(input: QuickInput): Assembly {
  const checked = quickCheck(input, loadPresets())
  if (!checked.ok) throw new Error(checked.problems.map((p) => p.hint).join(' '))
  return checked.value.answer.assembly
}
