import { expect, it, vi } from 'vitest'
import { quickPresets } from '../presets/quick-presets.ts'

/*
 * The page's first verdict comes before what few sleds have is fetched. Here nobody has fetched it: anything in a quick
 * check that asks for it throws.
 */
vi.resetModules()
const { quickCheck } = await import('../../../src/job/quick.ts')
const { rare } = await import('../../../src/sled/rare.ts')
const presets = quickPresets()
const ids = (kind: 'cell' | 'speaker' | 'board') => presets.ofKind(kind).map((p) => p.id)
const bore = '40'
const depth = '200'

it('has nothing rare at hand', () => {
  expect(rare).toThrow(/was not awaited/)
})

it.each(ids('cell'))('does without for the cell %s', (cell) => {
  expect(quickCheck({ bore, depth, cell }, presets).ok).toBe(true)
})

it.each(ids('speaker'))('does without for the speaker %s', (speaker) => {
  expect(quickCheck({ bore, depth, cell: 'cell-18650-flat', speaker }, presets).ok).toBe(true)
})

it.each(ids('board'))('does without for the board %s', (board) => {
  expect(quickCheck({ bore, depth, cell: 'cell-18650-flat', board, thread: 'M42x1.5' }, presets).ok).toBe(true)
})

it('does without where every size is typed, also a sled that does not fit', () => {
  const cell = { diameter: '18.4', length: '65.1' }
  const speaker = { diameter: '28', length: '5.4' }
  const board = { width: '18', height: '5.8', length: '42' }
  for (const sledDiameter of ['31', '12', '60'])
    expect(quickCheck({ bore, depth, cell, speaker, board, wires: 9, sledDiameter }, presets).ok).toBe(true)
})
