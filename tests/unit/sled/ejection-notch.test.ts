import { describe, expect, it } from 'vitest'
import {
  builder,
  cell,
  faultsOf,
  heightsOf,
  itemOf,
  itemsOf,
  job,
  nest,
  onlyFault,
  planned,
  prober,
  solidOf,
} from './planned.ts'

const build = builder()
const probe = prober()
const notched = (typed: object) =>
  job({ nests: [nest('cell', { gap: 0.2, opening: 0, ...typed })] }, { parts: [cell()] })
const path = (field: string) => `sleds/main/nests/parts/cell/${field}`

describe('an ejection notch', () => {
  it('lies on the middle of the can, 8 wide, half the pocket’s radius below the equator', () => {
    const notch = solidOf(notched({ notchWidth: 8 }), 'parts/cell/notch', 'box')
    expect([notch.z0, notch.z1]).toEqual([48.5, 56.5])
    expect(heightsOf(notch)[0]).toBeCloseTo(-4.6, 9)
  })

  it('lets a tool through one side wall, and leaves the other', () => {
    const project = notched({ notchWidth: 8 })
    const at = probe(project)
    expect([at(-2, 11.5, 52), at(-2, -11.5, 52), at(-2, 11.5, 40)]).toEqual([false, true, true])
    expect(build(project).problems).toEqual([])
  })

  it('is there only where one of its dimensions is typed, and for cells alone', () => {
    expect(itemsOf(planned(notched({})).plan).map((x) => x.nest)).not.toContain('ejection notch')
    expect(itemOf(notched({ notchAt: 45 }), 'parts/cell/notch').dimensions.map((d) => d.how)).toEqual([
      'default',
      'default',
      'typed',
    ])
    const other = job({ nests: [nest('cell', { notchWidth: 8 })] }, { parts: [cell({ kind: 'other' })] })
    expect(itemsOf(planned(other).plan).map((x) => x.id)).not.toContain('parts/cell/notch')
  })

  it('is in a cradle’s wall too', () => {
    const cradle = notched({ style: 'cradle', notchWidth: 8, notchDepth: 6, notchAt: 52 })
    expect(heightsOf(solidOf(cradle, 'parts/cell/notch', 'box'))[0]).toBeCloseTo(-6, 9)
  })

  it.each([
    ['too narrow for a tool', { notchWidth: 4 }, 'notchWidth', '4 mm', '6 mm'],
    ['too shallow to lift the cell', { notchDepth: 3 }, 'notchDepth', '3 mm', '4.60'],
    // 8 and half of 8 from the end at 85.
    ['across the positive rim', { notchAt: 80 }, 'notchAt', 'z 80.0', 'positive rim'],
    ['across the negative end', { notchAt: 25 }, 'notchAt', 'z 25.0', 'positive rim'],
  ])('cannot be %s', (_what, typed, field, got, hint) => {
    const fault = onlyFault(notched(typed))
    expect(fault.path).toBe(path(field))
    expect(fault.got).toContain(got)
    expect(fault.hint).toContain(hint)
  })

  it('says the stretch of the can it may lie on, whose ends work', () => {
    expect(onlyFault(notched({ notchAt: 80 })).limit).toContain('32.0 to 73.0')
    for (const notchAt of [32, 73]) expect(faultsOf(notched({ notchAt }))).toEqual([])
    expect(faultsOf(notched({ notchWidth: 6, notchDepth: 4.6 }))).toEqual([])
  })
})
