import { describe, expect, it } from 'vitest'
import type { SledInput } from '../../../src/project/schema/sled.ts'
import { sure } from '../checks/judged.ts'
import { builder, cell, itemOf, itemsOf, job, nest, onlyFault, planned, solidOf } from './planned.ts'

const build = builder()
type Channel = NonNullable<SledInput['channels']>[number]
const wires = [{ id: 'w', diameter: sure(1.2), count: 4 }]
const own = 'sleds/main/channels/wires'
const wired = (diameter: number) =>
  job(
    { nests: [nest('cell', { gap: 0.2, opening: 180 })] },
    { wires, parts: [cell({ body: { shape: 'cylinder', diameter: sure(diameter), length: sure(65) } })] },
  )

describe('the wires’ own channel', () => {
  it('holds the four wires side by side with 0.3 of play, rounded up to 0.05', () => {
    // Four rounds in a round: 1.2 · (1 + √2) = 2.897, and 0.3: 3.2.
    const item = itemOf(wired(14), own)
    expect(item.dimensions.map((d) => [d.name, d.how])).toEqual([
      ['channel width', 'derived'],
      ['channel angle', 'derived'],
    ])
    expect(item.dimensions[0]?.value).toBeCloseTo(3.2, 9)
    expect(solidOf(wired(14), own, 'cylinder')).toMatchObject({ r0: expect.closeTo(1.6, 9), z0: 9, z1: 101 })
  })

  it('is round with a wall on both sides where there is room', () => {
    // Pocket to 7.2, body to 14: 6.8 for 3.2 and two walls of 1.2.
    const bore = solidOf(wired(14), own, 'cylinder')
    const r = Math.hypot(bore.x, bore.y)
    expect(r - 1.6 - 7.2).toBeGreaterThanOrEqual(1.2 - 1e-3)
    expect(14 - r - 1.6).toBeGreaterThanOrEqual(1.2 - 1e-3)
    expect(build(wired(14)).problems).toEqual([])
  })

  it('is a groove open to the outside where there is room for one wall only', () => {
    // Pocket to 9.2: 4.8.
    const bore = solidOf(wired(18), own, 'cylinder')
    expect(Math.hypot(bore.x, bore.y)).toBeCloseTo(14 - 1.6, 9)
    expect(itemsOf(planned(wired(18)).plan).map((x) => x.id)).toContain(`${own}/mouth`)
    expect(build(wired(18)).problems).toEqual([])
  })

  it('is merged into the nests where there is room for neither', () => {
    // Pocket to 11.2: 2.8. No wall is left on either side.
    const bore = solidOf(wired(22), own, 'cylinder')
    const r = Math.hypot(bore.x, bore.y)
    expect(r - bore.r0).toBeLessThan(11.2)
    expect(14 - r - bore.r0).toBeLessThan(1.2)
    expect(itemsOf(planned(wired(22)).plan).map((x) => x.id)).toContain(`${own}/mouth`)
  })

  it('is not there without wires', () => {
    expect(itemsOf(planned(job({}, { parts: [cell()] })).plan).map((x) => x.nest)).not.toContain('wire channel')
  })
})

describe('a typed channel', () => {
  const typed = (channel: Partial<Channel>) => job({ channels: [{ id: 'c', theta: 90, ...channel }] })
  const path = 'sleds/main/channels/c'

  it('lies as far out as the wall allows, or in the outside where it is open', () => {
    const round = solidOf(typed({ width: 3 }), path, 'cylinder')
    expect([round.x, round.y, round.r0]).toEqual([expect.closeTo(0, 9), expect.closeTo(14 - 1.2 - 1.5, 9), 1.5])
    expect(solidOf(typed({ width: 3, open: true }), path, 'cylinder').y).toBeCloseTo(12.5, 9)
    expect(itemsOf(planned(typed({ open: true })).plan).map((x) => x.id)).toContain(`${path}/mouth`)
    expect(build(typed({ open: true })).problems).toEqual([])
  })

  it('runs where it is typed to run, and says what is typed', () => {
    const item = itemOf(typed({ width: 3, r: 6, from: 30, to: 60 }), path)
    expect(item.solid).toMatchObject({ z0: 30, z1: 60 })
    expect(item.dimensions.map((d) => [d.name, d.value, d.how])).toEqual([
      ['channel width', 3, 'typed'],
      ['channel angle', 90, 'typed'],
      ['channel radius', 6, 'typed'],
    ])
    expect(itemOf(typed({}), path).dimensions.map((d) => d.how)).toEqual(['default', 'typed', 'derived'])
  })

  it('cannot run the wrong way round', () => {
    expect(onlyFault(typed({ from: 60, to: 30 }))).toMatchObject({ path: `${path}/to`, got: '"z 30"' })
  })

  it('of no width is refused by name', () => {
    const found = build(typed({ width: 0 })).problems.map((p) => [p.code, p.path])
    expect([...new Set(found.map((f) => f.join()))]).toEqual([`solid-failed,${path}/width`])
  })
})
