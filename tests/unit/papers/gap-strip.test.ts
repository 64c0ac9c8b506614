import { describe, expect, it } from 'vitest'
import { gapStripView } from '../../../src/papers/gap-strip.ts'
import { answerTo, demo } from '../job/demo-answer.ts'
import { assemblyOf, tube } from '../resolve/project-of.ts'

const pier = answerTo(demo('pier-lantern'))
const strip = gapStripView(pier.assembly)

describe('the least gap along the hilt', () => {
  it('runs from end to end of the sled without a hole, in slices no longer than half a millimetre', () => {
    const [run] = strip.runs
    const cells = run?.cells ?? []
    expect([cells[0]?.z0, cells.at(-1)?.z1]).toEqual([47, 188])
    for (const [i, c] of cells.entries()) {
      expect(c.z1 - c.z0).toBeLessThanOrEqual(0.5 + 1e-9)
      if (i > 0) expect(c.z0 - (cells[i - 1]?.z1 ?? 0)).toBeLessThan(2e-3)
    }
  })

  it('is at its deepest just what the finding of the sled in its place says', () => {
    const found = pier.findings.find((f) => f.id.startsWith('clearance:sleds/main'))
    const cells = strip.runs[0]?.cells ?? []
    const bore = cells.filter((c) => c.ids[1]?.startsWith('sections/'))
    expect(Math.min(...bore.map((c) => c.nominal))).toBeCloseTo(found?.value ?? Number.NaN, 6)
    expect(Math.min(...bore.map((c) => c.worst)) - strip.limit).toBeCloseTo(found?.margin.worst ?? Number.NaN, 6)
  })

  it('lies inside its own interval, and on the way in there is never more room than in the place', () => {
    for (const run of strip.runs)
      for (const c of run.cells) {
        expect(c.worst).toBeLessThanOrEqual(c.nominal + 1e-9)
        expect(c.nominal).toBeLessThanOrEqual(c.best + 1e-9)
        expect(c.way ?? c.nominal).toBeLessThanOrEqual(c.nominal + 1e-9)
      }
  })

  it('names what is nearest at the worst only where that is another than as measured', () => {
    // A sled of 28 in a bore of 30 leaves 1. The pin ends at radius 15.2 and may reach in to 14: 1.2, or nothing.
    const pin = {
      id: 'pin',
      name: 'pin',
      kind: 'intrusion' as const,
      on: 'sections/body',
      at: { z: 40, theta: 90 },
      shape: { form: 'pin' as const, diameter: 4, tip: { value: 15.2, plus: 0.1, minus: 1.2 } },
    }
    const sleds = [{ id: 'main', from: 10, to: 60, diameter: 28 }]
    const cells = gapStripView(assemblyOf(tube({ features: [pin], sleds }))).runs[0]?.cells ?? []
    const at = (z: number) => cells.find((c) => c.z0 <= z && c.z1 >= z)
    expect([at(40.1)?.between[1], at(40.1)?.worstTo]).toEqual(['bore of body', 'pin'])
    expect([at(20.1)?.between[1], at(20.1)?.worstTo]).toEqual(['bore of body', undefined])
  })

  it('shows the mouth thread of a narrow mouth on the way in only', () => {
    const weir = gapStripView(answerTo(demo('weir-lantern')).assembly)
    const cells = weir.runs[0]?.cells ?? []
    expect(Math.min(...cells.map((c) => c.nominal))).toBeGreaterThan(0)
    // M30 × 1 passes 28.92 at its crests; the sled of 30.2 does not go through.
    expect(Math.min(...cells.map((c) => c.way ?? 0))).toBeLessThan(-0.5)
  })

  it('knows threads by how far their roots lie behind the crests', () => {
    // M32 × 1: minor diameter 32 − 1.0825, so the roots lie 0.541 behind the crests.
    expect(strip.threads.map((t) => [t.name, t.z0, t.z1])).toEqual([
      ['M32 × 1', expect.closeTo(35.9, 6), expect.closeTo(45.9, 6)],
    ])
    expect(strip.threads[0]?.depth).toBeCloseTo(1.0825 / 2, 3)
  })

  it('has one run for each sled that is there', () => {
    const buoy = answerTo(demo('buoy-lantern')).assembly
    expect(gapStripView(buoy).runs.map((r) => r.sled)).toEqual(buoy.sleds.map((s) => `sleds/${s.id}`))
  })
})
