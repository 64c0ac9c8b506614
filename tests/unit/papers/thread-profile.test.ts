import { describe, expect, it } from 'vitest'
import { threadProfile } from '../../../src/papers/thread-profile.ts'

describe('the drawn internal thread', () => {
  // ISO 68-1 basic profile (from memory): H = P·√3/2, thread depth 5/8 H, flats P/4 at the crest and P/8 at the root.
  const pitch = 1.5
  const depth = (5 / 8) * pitch * (Math.sqrt(3) / 2)
  const points = threadProfile(0, 9, 16, 16 + depth, pitch)

  it('has flanks of 30° to the upright', () => {
    const [, crestEnd, rootStart] = points as [unknown, readonly [number, number], readonly [number, number]]
    expect((Math.atan2(rootStart[0] - crestEnd[0], rootStart[1] - crestEnd[1]) * 180) / Math.PI).toBeCloseTo(30, 6)
  })

  it('repeats every pitch, between crest and root, from end to end', () => {
    const crests = points.filter(([, r]) => r === 16)
    expect(crests.filter(([z]) => Math.abs(z / pitch - Math.round(z / pitch)) < 1e-9)).toHaveLength(6)
    expect(Math.min(...points.map(([, r]) => r))).toBe(16)
    expect(Math.max(...points.map(([, r]) => r))).toBeCloseTo(16 + depth, 9)
    expect(points[0]?.[0]).toBe(0)
    expect(points.at(-1)?.[0]).toBe(9)
  })

  it('never runs backwards', () => {
    for (const [i, [z]] of points.entries()) expect(z).toBeGreaterThanOrEqual(points[i - 1]?.[0] ?? 0)
  })
})
