import { describe, expect, it } from 'vitest'
import type { PlanItem } from '../../../geometry/plan/plan.ts'
import type { SledInput } from '../../../src/project/schema/sled.ts'
import { builder, cell, faultsOf, itemsOf, job, onlyFault, planned } from './planned.ts'

const build = builder()
type Mark = NonNullable<SledInput['marks']>[number]
const marked = (mark: Partial<Mark>, sled: Partial<SledInput> = {}) =>
  job({ marks: [{ id: 'm', text: 'R2', z: 50, ...mark } as Mark], ...sled })
const strokes = (project: ReturnType<typeof job>): PlanItem[] =>
  itemsOf(planned(project).plan).filter((x) => x.nest === 'mark')
const corners = (items: readonly PlanItem[]) =>
  items.flatMap(({ solid }) => (solid.shape === 'plate' ? solid.points.map(([t, z]) => ({ t, z })) : []))

describe('an engraved text', () => {
  it('lies along the axis from its height on, as high as its letters, half of a line past them', () => {
    const all = corners(strokes(marked({ theta: 90 })))
    const [ts, zs] = [all.map((p) => p.t), all.map((p) => p.z)]
    expect(Math.min(...zs)).toBeGreaterThan(49.5)
    expect(Math.max(...ts)).toBeGreaterThan(3.5 / 2 - 0.01)
    expect(Math.max(...ts.map(Math.abs))).toBeLessThan(3.5 / 2 + 0.6)
    expect(Math.max(...zs)).toBeGreaterThan(53)
  })

  it('is at least its depth deep at the letters’ edges, on the round', () => {
    const [first] = strokes(marked({ theta: 90, depth: 0.5 }))
    const solid = first?.solid
    const half = 3.5 / 2 + 0.3
    if (solid?.shape !== 'plate') throw new Error('no stroke')
    expect(solid.rIn).toBeCloseTo(Math.sqrt(196 - half ** 2) - 0.5, 6)
    expect([solid.theta, solid.rOut]).toEqual([90, 15])
  })

  it('takes only crumbs away, and passes the gate', () => {
    const [plain, engraved] = [build(job({})), build(marked({}))]
    expect(engraved.problems).toEqual([])
    expect(plain.volume - engraved.volume).toBeGreaterThan(3)
    expect(plain.volume - engraved.volume).toBeLessThan(30)
  })

  it('stands where it is typed, negative angles too, or where the outside is plain', () => {
    expect(strokes(marked({ theta: -90 })).length).toBeGreaterThan(0)
    const found = strokes(marked({}))[0]?.dimensions.find((d) => d.name === 'clock angle')
    expect(found).toMatchObject({ value: 180, how: 'default' })
    const open = job(
      { marks: [{ id: 'm', text: 'R2', z: 50 }], nests: [{ part: 'parts/cell', opening: 180 }] },
      { parts: [cell()] },
    )
    const aside = strokes(open)[0]?.dimensions.find((d) => d.name === 'clock angle')?.value ?? 180
    expect(Math.abs(aside - 180)).toBeGreaterThan(45)
  })

  it('does not run into another beside it, and has the same place to itself farther along', () => {
    const at = (other: number) => {
      const marks = [50, other].map((z, i) => ({ id: `m${i}`, text: 'R2', z }) as Mark)
      const all = strokes(job({ marks }))
      return marks.map((m) => all.find((x) => x.id.includes(`/${m.id}/`))?.dimensions.at(-1)?.value ?? Number.NaN)
    }
    const [one, beside] = at(52) as [number, number]
    // Two texts 3.5 high with lines of 0.6 and 1 mm of plain outside between them, on a radius of 14 mm.
    expect((Math.abs(beside - one) * Math.PI * 14) / 180).toBeGreaterThanOrEqual(3.5 + 0.6 + 1)
    expect(at(70)).toEqual([one, one])
  })

  it('every dimension of it can be typed, and says so', () => {
    const typed = strokes(marked({ theta: 30, height: 5, depth: 0.4, stroke: 0.8 }))[0]?.dimensions
    expect(typed?.map((d) => [d.name, d.value, d.how])).toEqual([
      ['letter height', 5, 'typed'],
      ['engraving depth', 0.4, 'typed'],
      ['line width', 0.8, 'typed'],
      ['clock angle', 30, 'typed'],
    ])
  })
})

describe('the program’s own marks', () => {
  const own = (sled: Partial<SledInput> = {}) =>
    job({ standardMarks: true, nests: [{ part: 'parts/cell', opening: 0 }], ...sled }, { parts: [cell()] })

  it('are + and − at the ends of the cell, and the revision with an arrow', () => {
    const ids = new Set(strokes(own()).map((x) => x.id.split('/')[3]))
    expect(ids).toEqual(new Set(['plus-cell', 'minus-cell', 'up']))
    const plus = corners(strokes(own()).filter((x) => x.id.includes('plus')))
    expect(Math.min(...plus.map((p) => p.z))).toBeGreaterThan(78)
    expect(strokes(own({ revision: 'R12' })).length).toBeGreaterThan(strokes(own()).length)
  })

  it('cannot be written in letters the font lacks', () => {
    expect(onlyFault(own({ revision: 'Rä' }))).toMatchObject({ path: 'sleds/main/revision', got: '"the letter ä"' })
  })
})

describe('a text that cannot be', () => {
  const gash = { windows: [{ id: 'w', theta: 0, width: 29, floor: -14.5, from: 40, to: 70 }] }
  it.each<[string, Partial<Mark>, Partial<SledInput>, string, string, string]>([
    ['in letters the font lacks', { text: 'Größe' }, {}, 'text', 'the letter ö', 'without this letter'],
    ['of nothing but spaces', { text: '  ' }, {}, 'text', 'only spaces', 'without'],
    ['past the blade end', { z: 99 }, {}, 'z', 'z 99', 'nearest is z'],
    ['before the rear end', { z: 5 }, {}, 'z', 'z 5', 'z 10.0'],
    ['larger than the body', { height: 20 }, {}, 'height', '20 mm', '14.0'],
    ['too small to be read', { height: 0 }, {}, 'height', '0 mm', '2.0'],
    ['to the axis', { depth: 14 }, {}, 'depth', '14 mm', '7.0'],
    ['in lines thicker than its letters', { stroke: 3 }, {}, 'stroke', '3 mm', '1.2'],
    ['where no outside is left', { z: 50 }, gash, 'z', 'z 50', 'another height'],
  ])('%s', (_what, mark, sled, field, got, hint) => {
    const faults = faultsOf(marked(mark, sled))
    const fault = faults.find((f) => f.path === `sleds/main/marks/m/${field}`)
    expect(fault?.got).toContain(got)
    expect(fault?.hint).toContain(hint)
    expect(strokes(marked(mark, sled))).toEqual([])
  })
})
