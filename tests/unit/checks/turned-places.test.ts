import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { planarGap } from '../../../geometry/region/planar-gap.ts'
import { polar } from '../../../geometry/region/point.ts'
import { disc, type Region, rectangle } from '../../../geometry/region/region.ts'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { evenly } from '../../evenly.ts'
import { about, findingOf, findingsOf, sure } from './judged.ts'
import { bore, job } from './smallest.ts'

/** Places by a clock angle that is not known for sure: what stands there stands turned as well. */

const seed = 20261126

const bar = (across: object, width: number, height: number) => ({
  id: 'bar',
  kind: 'other',
  body: { shape: 'box', width: sure(width), height: sure(height), length: sure(10) },
  at: { z: 30, across },
})
const post = (x: number, y: number, d: number) => ({
  id: 'post',
  kind: 'other',
  body: { shape: 'cylinder', diameter: sure(d), length: sure(10) },
  at: { z: 30, across: { x, y } },
})
const packed = (...parts: object[]): ProjectInput => job({ parts: parts as ProjectInput['parts'] })

/** Least gap of a region over all turns within ± half. */
function leastOver(half: number, other: Region, at: (off: number) => Region): number {
  const offs = Array.from({ length: 41 }, (_, i) => half * (i / 20 - 1))
  return Math.min(...offs.map((off) => planarGap(at(off), other).d))
}

const toPost = (project: ProjectInput) =>
  [...findingsOf(project).values()].find((f) => f.id === 'packing:parts/bar:parts/post')

describe('a part placed by a clock angle in doubt', () => {
  const box = fc.record({ width: evenly(2, 8), height: evenly(1, 4), theta: evenly(0, 360), half: evenly(0.5, 5) })
  const round = fc.record({ x: evenly(-7, 7), y: evenly(-7, 7), d: evenly(1, 3) })

  it(`leaves no less than is told wherever in its doubt it stands (seed ${seed})`, () => {
    fc.assert(
      fc.property(box, evenly(0, 5), round, ({ width, height, theta, half }, r, { x, y, d }) => {
        const told = toPost(packed(bar({ r, theta: about(theta, half) }, width, height), post(x, y, d)))
        const true_ = leastOver(half, disc({ x, y }, d / 2), (off) =>
          rectangle(polar(r, theta + off), width / 2, height / 2, theta + off),
        )
        if (told && true_ > 0) expect(told.margin.worst + told.limit).toBeLessThanOrEqual(true_ + 1e-6)
      }),
      { seed, numRuns: 150 },
    )
  })

  it(`leaves no less than is told beside another part (seed ${seed})`, () => {
    fc.assert(
      fc.property(box, box, round, ({ width, height, theta, half }, other, { x, y, d }) => {
        const cell = {
          ...bar({ x: 0, y: 0 }, other.width, other.height),
          id: 'block',
        }
        const across = { beside: 'parts/block', theta: about(theta, half), gap: sure(0.5) }
        const told = toPost(packed(cell, bar(across, width, height), post(x, y, d)))
        const reach = (turn: number) => {
          const t = (turn * Math.PI) / 180
          return (Math.abs(Math.cos(t)) * other.height + Math.abs(Math.sin(t)) * other.width) / 2
        }
        const true_ = leastOver(half, disc({ x, y }, d / 2), (off) => {
          const there = polar(reach(theta + off) + 0.5 + height / 2, theta + off)
          return rectangle(there, width / 2, height / 2, theta + off)
        })
        if (told && true_ > 0) expect(told.margin.worst + told.limit).toBeLessThanOrEqual(true_ + 1e-6)
      }),
      { seed, numRuns: 150 },
    )
  })

  it('a slotted bore aside by an offset in doubt comes nearer by the largest offset, turned as far as it may be', () => {
    const slot = {
      id: 'slot',
      kind: 'slot',
      on: 'sections/tube',
      at: { z: sure(-1), face: 'rear', theta: sure(45) },
      shape: { form: 'slot', length: sure(110), width: sure(2), depth: sure(1) },
    }
    const project = job({
      sections: [{ ...bore(), eccentricity: { offset: { value: 0.1, plus: 0.3, minus: 0.1 }, theta: about(90, 5) } }],
      features: [slot] as ProjectInput['features'],
      parts: [post(-13, 0, 3)] as ProjectInput['parts'],
      sleds: [{ id: 'main', from: 10, to: 60, diameter: sure(29) }],
    })
    const shift = polar(0.4, 85)
    const true_ = 15 - Math.hypot(-13 - shift.x, shift.y) - 1.5
    expect(findingOf(project, 'clearance:parts/post:stripped').margin.worst + 0.15).toBeLessThanOrEqual(true_ + 1e-3)
  })
})
