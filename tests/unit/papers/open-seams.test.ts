import { describe, expect, it } from 'vitest'
import { gapTold, seamTold } from '../../../src/app/strips/gap-strip.tsx'
import { gapStripView } from '../../../src/papers/gap-strip.ts'
import { readoutAt } from '../../../src/papers/readout.ts'
import { unrolledView } from '../../../src/papers/unrolled.ts'
import { answerTo, demo } from '../job/demo-answer.ts'

/** Two tubes of one bore; the second has a mouth of 10 mm for the first. */
function tubes(engagement: number | undefined, mouth: boolean) {
  const pier = demo('pier-lantern')
  return {
    ...pier,
    sections: ['rear', 'front'].map((id) => ({
      id,
      name: id,
      length: 110,
      outside: [{ diameter: 38 }],
      bore: [
        ...(mouth && id === 'front'
          ? [{ id: 'mouth', name: 'mouth', kind: 'threaded', thread: 'M34x1', length: 10 }]
          : []),
        { id: 'bore', diameter: 30 },
      ],
    })),
    joints: [
      { id: 'joint', kind: 'threaded', rear: 'rear', blade: 'front', opens: true, wiresCross: false, engagement },
    ],
    insertions: [{ id: 'in', moves: 'sleds/main', through: { of: 'sections/rear', end: 'rear' } }],
    parts: (pier.parts ?? []).map((p) => (p.on ? { ...p, on: 'sections/front' } : p)),
  }
}

const stripOf = (engagement: number | undefined, mouth = true) =>
  gapStripView(answerTo(tubes(engagement, mouth)).assembly)

/** Least and most room around the joint, mm. */
function room(engagement: number | undefined, mouth = true): readonly [number, number] {
  const cells = stripOf(engagement, mouth).runs[0]?.cells.filter((c) => c.z0 > 90 && c.z1 < 130) ?? []
  const gaps = cells.map((c) => c.nominal)
  return [Math.min(...gaps), Math.max(...gaps)]
}

describe('the gap beside the seam of two sections of one bore', () => {
  it('stays what the bore leaves where the first fills the mouth of the second, or has none', () => {
    for (const [low, high] of [room(10), room(undefined, false), room(10, false)]) expect(high).toBeCloseTo(low, 6)
    expect([stripOf(10).seams, stripOf(10, false).seams, stripOf(undefined, false).seams]).toEqual([[], [], []])
  })

  it('rises in a mouth that is not filled, and says that nobody told how far they engage', () => {
    const [low, high] = room(undefined)
    expect(high - low).toBeGreaterThan(1)
    const strip = stripOf(undefined)
    expect(strip.seams).toEqual([{ z0: 110, z1: 120, name: 'mouth', sections: ['rear', 'front'], engaged: undefined }])
    expect(gapTold(strip)).toContain('how far rear and front engage is not said, taken as 0')
  })

  it('says how much of the mouth stays open where they engage less than it is deep', () => {
    const strip = stripOf(7)
    expect(strip.seams).toEqual([
      {
        z0: 110,
        z1: expect.closeTo(113, 9),
        name: 'mouth',
        sections: ['rear', 'front'],
        engaged: expect.closeTo(7, 9),
      },
    ])
    expect(seamTold(strip.seams[0] as (typeof strip.seams)[0])).toBe(
      'rear and front engage 7.0 mm: 3.0 mm of mouth stay open',
    )
  })

  it('is told in the readout there, and nowhere else', () => {
    const { assembly } = answerTo(tubes(undefined, true))
    const [strip, map] = [gapStripView(assembly), unrolledView(assembly)]
    expect([readoutAt(strip, map, 115, 0).seam?.name, readoutAt(strip, map, 100, 0).seam]).toEqual(['mouth', undefined])
  })

  it('is not marked where the bore beside the seam is the narrower one', () => {
    const job = tubes(undefined, false)
    const [rear, front] = job.sections
    const bore = [
      { id: 'bore', diameter: 30, length: 100 },
      { id: 'neck', diameter: 29 },
    ]
    expect(gapStripView(answerTo({ ...job, sections: [{ ...rear, bore }, front] }).assembly).seams).toEqual([])
  })

  it('is not marked where no sled lies in it', () => {
    // The mouth thread of the pier lantern is a millimetre deeper than its pommel engages, behind the sled.
    expect(gapStripView(answerTo(demo('pier-lantern')).assembly).seams).toEqual([])
  })
})
