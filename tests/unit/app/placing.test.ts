import { describe, expect, it } from 'vitest'
import { frameOf, joined, looking, seenSize } from '../../../src/app/solid/framing.ts'
import { keyOf, type Placed, placed, type Standing } from '../../../src/app/solid/placing.ts'
import { demos } from '../../../src/job/demos/index.ts'
import { hiltSolid } from '../../../src/papers/hilt-solid.ts'
import type { JobSolids, PrintedSolid } from '../../../src/worker/job-solids.ts'
import { answerTo } from '../job/demo-answer.ts'

/** A demo with each sled as one plain body; the kernel is not asked. */
function solidsOf(name: string): JobSolids {
  const { assembly } = answerTo(demos.find((d) => d.name === name)?.project)
  const hilt = hiltSolid(assembly)
  const sleds = assembly.sleds.map((s) => {
    const r = Math.max(...s.pieces.map((p) => p.radius))
    const [min, max] = [
      [-r, -r, s.ends.rear.nominal],
      [r, r, s.ends.blade.nominal],
    ] as const
    const none = { vertices: new Float32Array(), triangles: new Uint32Array(), made: new Uint16Array(), makers: [] }
    const body: PrintedSolid = { id: `${s.id}/1`, name: s.name, volume: 1, min, max, ...none }
    return { id: `sleds/${s.id}`, name: s.name, bodies: [body], problems: [] }
  })
  return { hilt, sleds, holes: [] }
}

const inPlace: Standing = { theta: 0, apart: 0, pushed: undefined, hidden: new Set() }
const find = (list: readonly Placed[], key: string): Placed => list.find((p) => p.key === key) as Placed
const names = demos.map((d) => d.name)

describe('where things are drawn', () => {
  it.each(names)('all of %s is in its place until something is moved', (name) => {
    const all = placed(solidsOf(name), inPlace)
    expect(all.length).toBeGreaterThan(5)
    for (const { offset } of all) for (const v of offset) expect(Math.abs(v)).toBe(0)
  })

  it.each(names)('drawn apart, sled and parts of %s are clear of the hilt', (name) => {
    const solids = solidsOf(name)
    const all = placed(solids, { ...inPlace, apart: 1 })
    const metal = Math.max(...all.filter((p) => p.key.startsWith('sections/')).map((p) => p.room.r))
    for (const s of solids.sleds)
      for (const b of s.bodies) {
        const { offset, room } = find(all, b.id)
        expect(offset[1] + room.r).toBeLessThan(-metal)
      }
    for (const t of solids.hilt.things.filter((x) => x.rides.startsWith('sleds/'))) {
      const { offset, room } = find(all, keyOf(t))
      // What lies beside the axis takes no more room upwards than its far side.
      expect(offset[1] + room.r).toBeLessThan(-metal)
    }
  })

  it('what is pushed takes with it what it carries, and nothing else', () => {
    const solids = solidsOf('weir-lantern')
    const all = placed(solids, { ...inPlace, pushed: { moves: 'sleds/main', by: -40 } })
    const moved = all.filter((p) => p.offset[0] === -40).map((p) => p.key)
    const carried = solids.hilt.things.filter((t) => t.rides === 'sleds/main').map(keyOf)
    expect(moved.toSorted()).toEqual(['main/1', ...carried].toSorted())
    expect(all.every((p) => p.offset[0] === 0 || p.offset[0] === -40)).toBe(true)
  })

  it('what is not there yet is not shown', () => {
    const hidden = new Set(['sections/pommel', 'parts/switch'])
    const keys = placed(solidsOf('weir-lantern'), { ...inPlace, hidden }).map((p) => p.key)
    expect(keys).not.toContain('sections/pommel')
    expect(keys).not.toContain('parts/switch')
    expect(keys).toContain('sections/body')
    const noSled = placed(solidsOf('weir-lantern'), { ...inPlace, hidden: new Set(['sleds/main']) }).map((p) => p.key)
    expect(noSled).toEqual(['sections/pommel', 'sections/body', 'parts/switch'])
  })
})

describe('the frame of the picture', () => {
  const room = { z0: 10, z1: 110, r: 15, x: 0, y: 0 }
  const frame = frameOf([{ key: 'a', offset: [0, 0, 0], room }])

  it('holds everything where it is drawn', () => {
    expect(frame).toEqual({ min: [10, -15, -15], max: [110, 15, 15] })
    const moved = frameOf([{ key: 'a', offset: [5, -20, 0], room }])
    expect(joined(frame, moved)).toEqual({ min: [10, -35, -15], max: [115, 15, 15] })
  })

  it('is as wide and as high as it looks from a side', () => {
    expect(seenSize(frame, { turn: 0, rise: 0 })).toEqual({ wide: 100, high: 30 })
    const rear = seenSize(frame, { turn: -90, rise: 0 })
    expect([rear.wide, rear.high]).toEqual([expect.closeTo(30, 9), expect.closeTo(30, 9)])
    const top = seenSize(frame, { turn: 0, rise: 90 })
    expect([top.wide, top.high]).toEqual([expect.closeTo(100, 9), expect.closeTo(30, 9)])
  })

  it('is looked at along three directions square to one another', () => {
    const { from, right, up } = looking({ turn: -35, rise: 25 })
    const dot = (a: readonly number[], b: readonly number[]) => a.reduce((s, v, k) => s + v * (b[k] as number), 0)
    for (const [a, b] of [
      [from, right],
      [from, up],
      [right, up],
    ] as const)
      expect(dot(a, b)).toBeCloseTo(0, 9)
    for (const v of [from, right, up]) expect(dot(v, v)).toBeCloseTo(1, 9)
  })
})
