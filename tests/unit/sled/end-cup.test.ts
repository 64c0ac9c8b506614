import { describe, expect, it } from 'vitest'
import {
  builder,
  cell,
  dimensionOf,
  faultsOf,
  itemOf,
  itemsOf,
  job,
  nest,
  onlyFault,
  planned,
  round,
  roundArea,
  solidOf,
} from './planned.ts'

const build = builder()
const cupped = (kind: string, typed: object = {}, part: object = {}) =>
  job({ nests: [nest(kind, { gap: 0.2, ...typed })] }, { parts: [cell(), round(kind, part)] })
const path = (field: string) => `sleds/main/nests/parts/speaker/${field}`

describe('a speaker ring', () => {
  it('is open to the blade end, with a step behind the rim and room behind the step', () => {
    const cup = solidOf(cupped('speaker'), 'parts/speaker/cup', 'cylinder')
    // Speaker ⌀ 20 from 92: half the axial gap behind it; 1 beyond the end at 100.
    expect([cup.r0, cup.z0, cup.z1]).toEqual([10.2, 91.8, 101])
    const behind = solidOf(cupped('speaker'), 'parts/speaker/behind', 'cylinder')
    expect([behind.r0, behind.z0, behind.z1]).toEqual([9, 90.8, expect.closeTo(91.85, 9)])
  })

  it('at the rear is its mirror', () => {
    const front = job(
      { nests: [nest('speaker', { gap: 0.2 })] },
      { parts: [round('speaker', { at: { z: 12 } }), cell()] },
    )
    const cup = solidOf(front, 'parts/speaker/cup', 'cylinder')
    expect([cup.z0, cup.z1]).toEqual([9, expect.closeTo(17.2, 9)])
    expect(solidOf(front, 'parts/speaker/behind', 'cylinder').z1).toBeCloseTo(18.2, 9)
  })

  it('follows a speaker that is shifted', () => {
    const shifted = cupped('speaker', {}, { at: { z: 92, across: { r: 1.5, theta: 90 } } })
    const cup = solidOf(shifted, 'parts/speaker/cup', 'cylinder')
    expect([cup.x, cup.y]).toEqual([expect.closeTo(0, 9), expect.closeTo(1.5, 9)])
  })

  it('leaves a gasket its thickness squeezed by 30 %', () => {
    expect(solidOf(cupped('speaker', { gasket: 1 }), 'parts/speaker/cup', 'cylinder').z0).toBeCloseTo(91.1, 9)
  })

  it('every dimension of it can be typed, and says so', () => {
    const typed = cupped('speaker', { step: 2, behind: 3, gasket: 0.5 })
    const item = itemOf(typed, 'parts/speaker/behind')
    expect(item.dimensions.map((d) => [d.name, d.how])).toEqual([
      ['gap', 'typed'],
      ['cup radius', 'derived'],
      ['step', 'typed'],
      ['room behind', 'typed'],
      ['gasket', 'typed'],
    ])
    const behind = solidOf(typed, 'parts/speaker/behind', 'cylinder')
    expect([behind.r0, behind.z1 - behind.z0]).toEqual([expect.closeTo(8.2, 9), expect.closeTo(3.05, 9)])
    const plain = itemOf(cupped('speaker'), 'parts/speaker/cup')
    expect(['step', 'room behind', 'gasket'].map((n) => dimensionOf(plain, n).how)).toEqual([
      'default',
      'default',
      'default',
    ])
  })

  it('takes exactly its own volume out of the body', () => {
    const alone = (parts: Parameters<typeof job>[1]) =>
      build(job({ from: 86, to: 100, chamfer: 0, nests: [nest('speaker', { gap: 0.2 })] }, parts))
    const { volume, problems } = alone({ parts: [round('speaker')] })
    expect(problems).toEqual([])
    // With nothing else in the sled it looks out of neither end more than the other: a plain pocket.
    expect(itemsOf(planned(cupped('speaker')).plan).map((x) => x.nest)).toContain('speaker ring')
    expect(volume).toBeLessThan(roundArea(14) * 14 - roundArea(10.2, 'cut') * 5.4 + 0.1)
  })
})

describe('a blade connector’s seat', () => {
  it('is a cup with 6 mm for the wires to bend behind it', () => {
    const behind = solidOf(cupped('connector'), 'parts/connector/behind', 'cylinder')
    expect(behind.z1 - behind.z0).toBeCloseTo(6.05, 9)
    expect(itemOf(cupped('connector'), 'parts/connector/cup').nest).toBe('blade connector seat')
  })
})

describe('a cup that cannot be', () => {
  it('larger than the body: says the largest', () => {
    const wide = { body: { shape: 'cylinder', diameter: { value: 26, plus: 0, minus: 0 }, length: 5 } }
    const fault = onlyFault(cupped('speaker', {}, wide))
    expect(fault.path).toBe(path('gap'))
    expect(fault.got).toContain('26.40')
    expect(fault.limit).toContain('25.60')
  })

  it('shifted so far that no wall is left', () => {
    const fault = onlyFault(cupped('speaker', {}, { at: { z: 92, across: { r: 3, theta: 0 } } }))
    expect(fault.limit).toContain('19.60')
  })

  it('with a step wider than its rim', () => {
    const fault = onlyFault(cupped('speaker', { step: 9.5 }))
    expect([fault.path, fault.got]).toEqual([path('step'), '"9.5 mm"'])
    expect(fault.hint).toContain('9.20')
    expect(faultsOf(cupped('speaker', { step: 9.2 }))).toEqual([])
  })
})
