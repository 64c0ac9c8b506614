import { describe, expect, it } from 'vitest'
import { builder, itemOf, job, nest, solidOf } from './planned.ts'

const build = builder()
const sure = (value: number) => ({ value, plus: 0, minus: 0 })
/** A ring sector from radius 10 to 13, ± 30°, 20 long from 40. */
const recessed = (gap?: number) =>
  job(gap === undefined ? {} : { nests: [nest('tower', { gap })] }, {
    parts: [
      {
        id: 'tower',
        name: 'tower',
        kind: 'switch',
        body: { shape: 'ring-sector', inner: sure(10), outer: sure(13), half: sure(30), length: sure(20) },
        at: { z: sure(40), facing: 50 },
      } as never,
    ],
  })

describe('a recess for a ring sector', () => {
  it('has its gap under the floor, at both ends and at both sides, least at the floor', () => {
    const s = solidOf(recessed(0.2), 'parts/tower/recess', 'ring-sector')
    expect([s.rIn, s.rOut, s.z0, s.z1, s.theta]).toEqual([9.8, 15, 39.8, 60.2, 50])
    // The corner at radius 10 stands 0.2 from the side: asin(0.2 / 10).
    expect(s.half).toBeCloseTo(30 + (Math.asin(0.02) * 180) / Math.PI, 9)
    expect(10 * Math.sin(((s.half - 30) * Math.PI) / 180)).toBeCloseTo(0.2, 9)
  })

  it('says what is typed and what follows', () => {
    const how = (gap?: number) => itemOf(recessed(gap), 'parts/tower/recess').dimensions.map((d) => [d.name, d.how])
    expect(how(0.2)).toEqual([
      ['gap', 'typed'],
      ['floor', 'derived'],
      ['half angle', 'derived'],
    ])
    expect(how()[0]).toEqual(['gap', 'default'])
  })

  it('takes exactly its sector out of the body, and passes the gate', () => {
    const [whole, cut] = [build(job({})), build(recessed(0.2))]
    expect(cut.problems).toEqual([])
    const half = 30 + (Math.asin(0.02) * 180) / Math.PI
    const sector = ((2 * half) / 360) * Math.PI * (14 ** 2 - 9.8 ** 2) * 20.4
    expect((whole.volume - cut.volume) / sector).toBeCloseTo(1, 2)
  })
})
