import { describe, expect, it } from 'vitest'
import { hatch } from '../../../src/app/solid/hatch.ts'
import { leftBetween, ringAt, type Turned, turnedEdges, turnedFaces } from '../../../src/app/solid/turned.ts'

/** A tube of 10 to 12 from 0 to 30, all around. */
const ring = [
  [0, 10],
  [30, 10],
  [30, 12],
  [0, 12],
] as const
const tube: Turned = { angles: [0, 360], rings: [ring, ring] }
const span = (t: Turned) => [t.angles[0], t.angles.at(-1)]

describe('a turned piece', () => {
  it('loses a wedge wherever it lies, also across the beginning', () => {
    expect(leftBetween(tube, 90, 330).map(span)).toEqual([[90, 330]])
    expect(leftBetween(tube, 300, 540).map(span)).toEqual([[300, 540]])
    expect(leftBetween(tube, -90, 270).map(span)).toEqual([[270, 630]])
    expect(leftBetween({ angles: [320, 380], rings: [ring, ring] }, 10, 350).map(span)).toEqual([
      [320, 350],
      [370, 380],
    ])
    expect(leftBetween({ angles: [20, 40], rings: [ring, ring] }, 100, 300)).toEqual([])
  })

  it('is straight between the profiles that are known', () => {
    const wider = ring.map(([z, r]) => [z, r + 4] as const)
    expect(ringAt({ angles: [0, 90], rings: [ring, wider] }, 45)[0]).toEqual([0, 12])
    expect(ringAt({ angles: [0, 90, 180], rings: [ring, wider, ring] }, 135)[2]).toEqual([30, 14])
  })

  it('has faces whose normals point out of the metal', () => {
    const { positions, normals } = turnedFaces(leftBetween(tube, 0, 90)[0] as Turned)
    expect(positions.length).toBe(15 * 4 * 18)
    for (let i = 0; i < positions.length; i += 3) {
      const [x, y, z] = [positions[i] as number, positions[i + 1] as number, positions[i + 2] as number]
      const [nx, ny, nz] = [normals[i] as number, normals[i + 1] as number, normals[i + 2] as number]
      expect(Math.hypot(nx, ny, nz)).toBeCloseTo(1, 5)
      const outwards = (x * nx + y * ny) / Math.hypot(x, y)
      if (Math.abs(nz) > 0.5) expect(nz).toBeCloseTo(z > 15 ? 1 : -1, 5)
      else expect(outwards).toBeCloseTo(Math.hypot(x, y) > 11 ? 1 : -1, 5)
    }
  })

  it('is drawn with its four sharp corners around, and its profile where it is cut', () => {
    const quarter = leftBetween(tube, 0, 90)[0] as Turned
    expect(turnedEdges(quarter, [false, false]).length / 6).toBe(4 * 15)
    expect(turnedEdges(quarter, [true, true]).length / 6).toBe(4 * 15 + 2 * 4)
  })
})

describe('hatching', () => {
  it('fills the profile at 45°, and nothing beside it', () => {
    const lines = hatch(ring, 2, 1)
    // 2 high and 30 long: 32 mm of offsets, a line every 2.
    expect(lines).toHaveLength(16)
    for (const [[z0, r0], [z1, r1]] of lines) {
      expect(z1 - z0).toBeCloseTo(r1 - r0, 9)
      for (const [z, r] of [
        [z0, r0],
        [z1, r1],
      ] as const) {
        expect(z).toBeGreaterThanOrEqual(0)
        expect(z).toBeLessThanOrEqual(30)
        expect(r).toBeGreaterThanOrEqual(10)
        expect(r).toBeLessThanOrEqual(12)
      }
    }
    expect(hatch(ring, 2, -1).every(([a, b]) => Math.abs(b[0] - a[0] + (b[1] - a[1])) < 1e-9)).toBe(true)
  })
})
