import { describe, expect, it } from 'vitest'
import { type QuickInput, quickCheck, quickProject } from '../../../src/job/quick.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import { checkProject } from '../../../src/project/read.ts'
import { quickPresets } from '../presets/quick-presets.ts'

const inputs: readonly (readonly [string, QuickInput])[] = [
  ['the least one can ask', { bore: '30', depth: '120', cell: 'cell-18650-flat' }],
  [
    'everything from presets',
    {
      bore: '1 1/4"',
      depth: '150',
      thread: '1 5/16-18',
      cell: 'cell-18650-flat',
      speaker: 'speaker-24',
      board: 'board-sound-small',
    },
  ],
  [
    'everything measured',
    {
      bore: '33.2 ±0.05',
      depth: '148',
      thread: 'M35x1.5',
      threadLength: '9',
      cell: { diameter: '18.4', length: '65.1' },
      speaker: { diameter: '28', length: '5.4' },
      board: { width: '18', height: '5.8', length: '42' },
      wires: 0,
      sledDiameter: '31',
    },
  ],
]

describe('the quick check', () => {
  it.each(inputs)('makes a project that the reader of files would take: %s', (_, input) => {
    for (const layout of ['over the cell', 'in line'] as const) {
      const project = quickProject(input, layout)
      expect(checkProject(project)).toEqual({ ok: true, value: { project, notices: [] } })
    }
  })

  it.each(inputs)('needs no presets but its own few: %s', (_, input) => {
    expect(quickCheck(input, quickPresets())).toEqual(quickCheck(input, loadPresets()))
  })

  it('finds the arrangement that holds where the first does not', () => {
    const narrow: QuickInput = {
      bore: '27',
      depth: '160',
      cell: 'cell-18650-flat',
      board: 'board-sound-small',
      speaker: 'speaker-20',
    }
    const wide: QuickInput = { ...narrow, bore: '36' }
    expect(layoutOf(narrow)).toBe('in line')
    expect(layoutOf(wide)).toBe('over the cell')
  })

  it.each([
    ['a wall beside the board', 'cell-18650-protected', 34.05],
    ['a way for the wires', 'cell-21700-protected', 30.05],
  ])('gives what it has laid too close more room: %s', (_, cell, bore) => {
    const input = {
      bore: { value: bore, plus: 0.05, minus: 0.05 },
      depth: 300,
      cell,
      speaker: 'speaker-20',
      board: 'board-sound-small',
    }
    const checked = quickCheck(input, loadPresets())
    expect(checked.ok && checked.value.answer.findings.filter((f) => f.status === 'clash')).toEqual([])
    const usual = checked.ok && quickProject(input, checked.value.layout)
    expect(checked.ok && checked.value.project).not.toEqual(usual)
  })

  it.each([
    ['9', 9],
    ['1/2"', 12.7],
  ])('begins behind the thread of the mouth, which is for what screws in: %s', (threadLength, mm) => {
    const tube: QuickInput = { bore: '33.2', depth: '148', cell: 'cell-18650-flat' }
    const rear = (input: QuickInput) => {
      const checked = quickCheck(input, loadPresets())
      return checked.ok ? checked.value.answer.assembly.sleds[0]?.ends.rear.nominal : undefined
    }
    const threaded = rear({ ...tube, thread: 'M35x1.5', threadLength }) ?? 0
    expect(threaded).toBeGreaterThanOrEqual(mm)
    expect(threaded - mm).toBeCloseTo(rear(tube) ?? 0, 9)
  })

  it('tells what is wrong by the layout in which least is', () => {
    const input: QuickInput = {
      bore: { value: 30.05, plus: 0.05, minus: 0.05 },
      depth: 148,
      cell: 'cell-18650-flat',
      speaker: 'speaker-28-thin',
      board: { width: 18, height: 5.8, length: 42 },
    }
    const checked = quickCheck(input, loadPresets())
    const clashes = checked.ok ? checked.value.answer.findings.filter((f) => f.status === 'clash') : []
    expect(clashes.length).toBeGreaterThan(0)
    expect(clashes.flatMap((f) => f.parts)).not.toContain('parts/board')
  })

  it('takes a typed diameter of the sled for the computed one', () => {
    const typed = quickCheck({ bore: '33', depth: '120', cell: 'cell-18650-flat', sledDiameter: '30.5' }, loadPresets())
    expect(typed.ok && typed.value.answer.assembly.sleds[0]?.pieces[0]).toMatchObject({ radius: 15.25, how: 'typed' })
  })
})

function layoutOf(input: QuickInput): string | undefined {
  const checked = quickCheck(input, loadPresets())
  return checked.ok ? checked.value.layout : undefined
}
