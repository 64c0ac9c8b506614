import { describe, expect, it } from 'vitest'
import { judgeAssembly } from '../../../src/checks/judge-assembly.ts'
import { assemblyOf } from '../resolve/project-of.ts'
import { about, findingsOf, sure } from './judged.ts'
import { made, part, rod, sled } from './small-parts.ts'
import { bore } from './smallest.ts'

/** Cells of 18 × 60 ± 1, one behind the other in a sled from 10 on; springs of 1 solid, 7 free, 0.5 preload. */

const cell = (id: string, z: number, d = 18) =>
  part(id, { shape: 'cylinder', diameter: sure(d), length: about(60, 1) }, { z }, { kind: 'cell' })
const spring = (id: string, of: string, end: string, z: number) =>
  part(
    id,
    rod(8, 4),
    { z },
    {
      kind: 'contact',
      presses: { part: `parts/${of}`, end },
      solid: sure(1),
      free: sure(7),
      preload: sure(0.5),
    },
  )
const job = (parts: object[], to: number, more: object = {}) =>
  made({
    sections: [{ ...bore(), length: sure(300) }],
    sleds: sled({ to, diameter: sure(26), ...more }),
    parts,
  })
const chain = (parts: object[], to = 290, more: object = {}) =>
  [...findingsOf(job(parts, to, more)).values()].filter((f) => f.check === 'axial-chain')
const worst = (parts: object[], id: string) =>
  chain(parts).find((f) => f.id === `axial-chain:parts/${id}`)?.margin.worst

describe('cells in line', () => {
  const two = [cell('a', 20), cell('b', 81.4)]

  it('that touch are as long and as short as all of them together', () => {
    // From 17 to 81.4 + 61 + 0.2 = 142.6 are 125.6. Shortest 2 × 59: 7.6 left, 7 − 0.5 free. Longest 2 × 61: 3.6, 1 solid.
    const parts = [...two, spring('c', 'a', 'rear', 17)]
    expect(worst(parts, 'a:b:shortest')).toBeCloseTo(6.5 - (125.6 - 118), 9)
    expect(worst(parts, 'a:b:longest')).toBeCloseTo(125.6 - 122 - 1, 9)
  })

  it('are pushed from either end', () => {
    // From 20 − 0.2 to 145 are 125.2.
    const parts = [...two, spring('c', 'b', 'blade', 145)]
    expect(worst(parts, 'a:b:shortest')).toBeCloseTo(6.5 - (125.2 - 118), 9)
  })

  it('three of them with contacts at both ends are one chain', () => {
    const parts = [...two, cell('d', 142.8), spring('c', 'a', 'rear', 17), spring('e', 'd', 'blade', 207)]
    // From 17 to 207 are 190.
    expect(chain(parts).map((f) => f.id)).toHaveLength(2)
    expect(worst(parts, 'a:b:d:shortest')).toBeCloseTo(13 - (190 - 177), 9)
    expect(worst(parts, 'a:b:d:longest')).toBeCloseTo(190 - 183 - 2, 9)
  })

  it('with a wall between them are chains of their own', () => {
    const parts = [cell('a', 20), cell('b', 84), spring('c', 'a', 'rear', 17), spring('e', 'b', 'blade', 147)]
    // From 17 to 81 + 0.2; and from 84 − 0.2 to 147.
    expect(worst(parts, 'a:shortest')).toBeCloseTo(6.5 - (64.2 - 59), 9)
    expect(worst(parts, 'b:shortest')).toBeCloseTo(6.5 - (63.2 - 59), 9)
  })

  it('with a ledge left before a narrower one: the wide one is stopped by it, the narrow one is not', () => {
    const parts = [cell('a', 20), cell('b', 81.4, 12), spring('c', 'a', 'rear', 17), spring('e', 'b', 'blade', 145)]
    expect(worst(parts, 'a:shortest')).toBeCloseTo(6.5 - (64.2 - 59), 9)
    expect(worst(parts, 'a:b:shortest')).toBeCloseTo(13 - (145 - 17 - 118), 9)
  })
})

describe('a cell whose pocket runs out of the sled', () => {
  const missing = (to: number, more: object = {}) =>
    judgeAssembly(assemblyOf(job([cell('a', 20), spring('c', 'a', 'rear', 17)], to, more))).notChecked.map(
      (n) => n.missing,
    )

  it('has nothing to be pressed against', () => {
    expect(missing(81)).toEqual(['what stops a'])
    expect(missing(83)).toEqual([])
  })

  it('nor has one that ends between two discs', () => {
    const disc = (id: string, z: number) => ({ id, z })
    const discs = { construction: 'discs-on-rods', rods: [{ id: 'r', theta: 0, r: 11, diameter: 2 }] }
    expect(missing(200, { ...discs, discs: [disc('a', 12), disc('b', 70)] })).toEqual(['what stops a'])
    expect(missing(200, { ...discs, discs: [disc('a', 12), disc('b', 79)] })).toEqual([])
  })
})
