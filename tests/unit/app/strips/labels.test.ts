import { describe, expect, it } from 'vitest'
import { type Box, boxOf, placeLabel } from '../../../../src/app/strips/label-room.ts'
import { markNames } from '../../../../src/app/strips/mark-names.ts'
import { seamNames } from '../../../../src/app/strips/seam-names.ts'
import { layoutOf } from '../../../../src/app/strips/strip-frame.ts'
import type { UnrolledMark } from '../../../../src/papers/unrolled-marks.ts'

const layout = layoutOf({
  whole: { z0: 0, z1: 200 },
  reach: 20,
  range: undefined,
  width: 390,
  viewHeight: 844,
  dimensions: false,
  middle: 0,
})
const { unrolled, left, width } = layout
const sheet: Box = { x0: left, x1: width - 16, y0: unrolled.y, y1: unrolled.y + unrolled.height }
const mark = (id: string, z: number, theta: number): UnrolledMark => ({
  id,
  name: `a mark called ${id}`,
  kind: 'hole',
  form: 'round',
  z,
  theta,
  halfZ: 2,
  halfTheta: 10,
})
const apart = (a: Box, b: Box) => a.x1 <= b.x0 || b.x1 <= a.x0 || a.y1 <= b.y0 || b.y1 <= a.y0

describe('labels on the strips', () => {
  it('take the first free place, and none where there is none', () => {
    const taken: Box[] = []
    const places = [{ box: boxOf('needed', 100, 250) }, { box: boxOf('needed', 160, 250) }]
    const wide = { x0: 0, x1: 400, y0: 0, y1: 400 }
    expect([0, 1, 2].map(() => placeLabel(places, wide, taken))).toEqual([...places, undefined])
  })

  it('name marks side by side, never over each other or over the edge', () => {
    const marks = [20, 24, 28, 150, 199].flatMap((z) => [mark(`m${z}`, z, 90), mark(`n${z}`, z, 100)])
    const boxes = [...markNames(marks, layout, sheet)].map(([id, { x, y, anchor }]) =>
      boxOf(`a mark called ${id}`, x, y, anchor),
    )
    expect(boxes.length).toBeGreaterThan(3)
    for (const [i, a] of boxes.entries()) {
      expect(a.x0 >= sheet.x0 && a.x1 <= sheet.x1).toBe(true)
      for (const b of boxes.slice(i + 1)) expect(apart(a, b)).toBe(true)
    }
  })

  it('say nothing of a mark or a joint that is out of view', () => {
    expect([...markNames([mark('far', 400, 90)], layout, sheet)]).toEqual([])
    const seam = { id: 'j', name: 'mouth', sections: ['a', 'b'] as const, z0: 400, z1: 404, engaged: 4 }
    expect(seamNames([seam as never], layout.frame.x, sheet, [])).toEqual([])
  })

  it('leave a second joint beside the first without words', () => {
    const seam = (z0: number) => ({ z0, z1: z0 + 4, name: 'mouth', sections: ['a', 'b'], engaged: 4 }) as never
    expect(seamNames([seam(60), seam(70), seam(150)], layout.frame.x, sheet, []).map((s) => s.seam.z0)).toEqual([
      60, 150,
    ])
  })
})
