import { describe, expect, it } from 'vitest'
import { answer } from '../../../src/job/answer.ts'
import type { QuickInput } from '../../../src/job/quick.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import { Bench } from '../../../src/worker/bench.ts'
import { fetchedOnce } from '../../../src/worker/fetched-once.ts'
import { startPress } from '../../../src/worker/press.ts'
import { readThreeMf } from '../../oracle/readers/three-mf.ts'
import { quickPresets } from '../presets/quick-presets.ts'

const clear: QuickInput = {
  bore: '33.2',
  depth: '148',
  cell: 'cell-18650-flat',
  speaker: { diameter: '28', length: '5.4' },
  board: { width: '18', height: '5.8', length: '42' },
}
const clash: QuickInput = { ...clear, bore: '27.2' }
const unsure: QuickInput = {
  bore: '30.4',
  depth: '105',
  cell: 'cell-18650-flat',
  speaker: 'speaker-24',
  board: 'board-sound-medium',
}

const bench = new Bench(
  quickPresets(),
  fetchedOnce(() => startPress()),
)

describe('the bench in the worker', () => {
  it('answers with verdict, findings and drawings as data that a message can carry', () => {
    const report = bench.check(clear, { theta: 0 })
    expect(report).toMatchObject({ ok: true, value: { verdict: 'clear', layout: 'over the cell' } })
    expect(structuredClone(report)).toEqual(report)
  })

  it('cuts across at the tightest place until it is told where', () => {
    const report = bench.check(clear, { theta: 0 })
    if (!report.ok) throw new Error('no report')
    expect(report.value.cross.z).toBe(report.value.findings[0]?.at?.z)
    expect(bench.draw(clear, { theta: 30, z: 50 })).toMatchObject({
      ok: true,
      value: { cross: { z: 50 }, lengthwise: { theta: 30 } },
    })
  })

  it('fails with the place of what is wrong', () => {
    expect(bench.check({ ...clear, bore: '0' }, { theta: 0 })).toMatchObject({
      ok: false,
      problems: [{ code: 'out-of-range', path: expect.stringContaining('sections/tube/bore/bore/diameter') }],
    })
  })

  it('builds the sled as a solid, even one that clashes, to be looked at', async () => {
    for (const input of [clear, clash]) {
      const solid = await bench.solid(input)
      if (!solid.ok) throw new Error('no solid')
      expect(solid.value.bodies[0]?.triangles.length).toBeGreaterThan(300)
      expect(solid.value.volume).toBeGreaterThan(0)
      expect(solid.value.contents.map((c) => c.id)).toContain('parts/cell')
    }
  })

  it('gives the file of a clear job, and says unsure in the name of another', async () => {
    expect(await bench.file(clear, 'stl')).toMatchObject({ ok: true, value: { name: 'quick-check-sled.stl' } })
    expect(bench.check(unsure, { theta: 0 })).toMatchObject({ value: { verdict: 'unsure' } })
    expect(await bench.file(unsure, 'stl')).toMatchObject({ ok: true, value: { name: 'quick-check-unsure-sled.stl' } })
  })

  it('gives it as 3MF, too: the same body', async () => {
    const [stl, threeMf] = [await bench.file(clear, 'stl'), await bench.file(clear, '3mf')]
    if (!stl.ok || !threeMf.ok || 'clash' in stl.value || 'clash' in threeMf.value) throw new Error('no file')
    expect(threeMf.value.name).toBe('quick-check-sled.3mf')
    const { faults, objects } = readThreeMf(threeMf.value.bytes)
    expect(faults).toEqual([])
    expect(objects).toMatchObject([{ name: 'sled', triangles: (stl.value.bytes.length - 84) / 50 }])
  })

  it.each(['stl', '3mf'] as const)('holds the %s of a clash back, with the clash', async (format) => {
    const held = await bench.file(clash, format)
    expect(held).toMatchObject({ ok: true, value: { clash: { status: 'clash', why: expect.any(String) } } })
    expect(held.ok && 'bytes' in held.value).toBe(false)
  })

  it.each(['stl', '3mf'] as const)('gives the same bytes of %s for the same input', async (format) => {
    const [a, b] = [await bench.file(clear, format), await bench.file(clear, format)]
    expect(a).toEqual(b)
  })
})

describe('the job that grows from a quick check', () => {
  it('has the verdict it grew from, and tells what nobody typed', async () => {
    for (const input of [clear, unsure, clash]) {
      const report = bench.check(input, { theta: 0 })
      if (!report.ok) throw new Error('no report')
      const { verdict, layout } = report.value
      const assumptions = [expect.stringMatching(/^The bore is taken to be closed by "closed end, assumed"/)]
      expect(answer(await bench.grow(input, layout), loadPresets())).toMatchObject({
        value: { verdict, assembly: { assumptions } },
      })
    }
  })

  const named = async (input: QuickInput) => (await bench.grow(input, 'in line')).job[0]?.name
  it('is called by its cell and its bore, as they were typed', async () => {
    expect(await named(clear)).toBe('18650 cell, flat top, in a 33.2 mm bore')
    expect(await named({ ...clear, bore: ' 1 5/16" ' })).toBe('18650 cell, flat top, in a 1 5/16" bore')
    const cell = { diameter: '18,4', length: '65.0..65.2' }
    expect(await named({ ...clear, bore: '33.1..33.4', cell })).toBe(
      'Cell 18,4 × 65.0..65.2 mm, in a 33.1..33.4 mm bore',
    )
  })
})
