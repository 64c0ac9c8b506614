import { describe, expect, it } from 'vitest'
import { newJob } from '../../../src/job/new-job.ts'
import { readingsView } from '../../../src/papers/readings-sheet.ts'
import { typedSizes } from '../../../src/papers/typed-sizes.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import { withValue } from '../../../src/project/path.ts'
import type { Project } from '../../../src/project/schema/project.ts'

const presets = loadPresets()
const bore = 'sections/body/bore/bore/diameter'

function having(values: Readonly<Record<string, unknown>>): Project {
  return Object.entries(values).reduce((p, [path, value]) => withValue(p, path, value) as Project, newJob('Trial'))
}

function view(path: string, value: unknown) {
  const found = readingsView(having({ [path]: value }), presets, path)
  if (!found.ok) throw new Error(found.problems.map((p) => p.hint).join())
  return found.value
}

describe('the readings of one size', () => {
  it('three directions fix the oval', () => {
    const readings = [
      { value: '30.02', theta: 0 },
      { value: 29.98, theta: 60 },
      { value: '30,01', theta: 120 },
    ]
    const found = view(bore, { readings, tool: 'telescoping-gauge' })
    // Mean 30.00333; the deviations squared sum to 0.000866667: amplitude √(⅔ · 0.000866667) = 0.024037.
    expect(found.mean).toBeCloseTo(30.00333, 5)
    expect(found.oval).toBeCloseTo(2 * 0.024037, 5)
    expect(found.readings).toBe(3)
    expect(found.stations).toEqual([expect.objectContaining({ directions: 3, z: undefined })])
    expect(found.size.low).toBeLessThan(29.98)
    expect(found.ask).toEqual([])
    expect(found.why.join(' ')).toContain('Oval by 0.048 mm')
  })

  it('one typed value counts as one reading with the usual tool, and asks for more', () => {
    const found = view(bore, '30.02')
    expect(found.size.from).toContain('calliper, inside jaws')
    expect(found.mean).toBeCloseTo(30.02, 9)
    expect(found.oval).toBeUndefined()
    expect(found.ask.join(' ')).toContain('0°, 60° and 120°')
    expect(found.ask.join(' ')).toContain('jaw')
  })

  it('jaw flats widen the reading: √(30² + 0.8²)', () => {
    const found = view(bore, { readings: [{ value: 30 }], jawFlat: 0.8 })
    expect(found.mean).toBeCloseTo(Math.hypot(30, 0.8), 9)
    expect(found.why[0]).toContain('0.8²')
  })

  it('the tightest of several places governs', () => {
    const at = (z: number, value: number) => ({ value, z, theta: 0 })
    const found = view(bore, { readings: [at(10, 30.1), at(60, 29.9), at(100, 30)] })
    expect(found.stations.map((s) => s.z)).toEqual([10, 60, 100])
    expect(found.size.nominal).toBeCloseTo(29.9, 9)
  })

  it('a stated spread is taken at its word', () => {
    const found = view(bore, '30 ±0.05')
    expect([found.size.low, found.size.high]).toEqual([expect.closeTo(29.95, 9), expect.closeTo(30.05, 9)])
    expect(found.why).toEqual(['As stated.'])
    expect(found.mean).toBeUndefined()
  })

  it('an assumed value says so', () => {
    expect(view(bore, { value: 30, source: 'assumed' }).why[0]).toContain('nobody measured it')
  })

  it('repeats of a length are averaged', () => {
    const found = view('sections/body/length', { readings: [{ value: 100 }, { value: 100.2 }], tool: 'calliper-depth' })
    expect(found.mean).toBeCloseTo(100.1, 9)
    expect(found.stations).toEqual([])
  })

  it('asks about a reading a factor of 25.4 off, and refuses what is none', () => {
    const inches = readingsView(
      having({ [bore]: { readings: [{ value: 30 }, { value: 30.02 }, { value: 1.181 }] } }),
      presets,
      bore,
    )
    expect(inches.ok ? [] : inches.problems[0]).toMatchObject({ path: `${bore}/readings/2/value`, code: 'suspicious' })
    const slip = view(bore, { readings: [{ value: 30 }, { value: 30.02 }, { value: 32 }] })
    expect(slip.questions.map((q) => q.path)).toEqual([`${bore}/readings/2/value`])
    const none = readingsView(having({ [bore]: { readings: [{ value: 'wide' }] } }), presets, bore)
    expect(none.ok ? [] : none.problems.map((p) => p.path)).toEqual([`${bore}/readings/0/value`])
    const empty = readingsView(newJob('Trial'), presets, bore)
    expect(empty.ok ? [] : empty.problems.map((p) => p.code)).toEqual(['missing'])
  })
})

describe('the sizes behind what was typed', () => {
  it('each dimension by its path; what cannot be read is left out', () => {
    const project = having({
      'sections/body/length': '5 1/4 in',
      [bore]: '30 ±0.1',
      'sections/body/outside': [{ diameter: '35,0' }, { diameter: 'wide' }],
    })
    const sizes = new Map(typedSizes(project, presets).map((s) => [s.path, s]))
    expect([...sizes.keys()]).toEqual(['sections/body/length', bore, 'sections/body/outside/0/diameter'])
    expect(sizes.get('sections/body/length')?.nominal).toBeCloseTo(133.35, 9)
    expect(sizes.get(bore)).toMatchObject({ low: expect.closeTo(29.9, 9), high: expect.closeTo(30.1, 9) })
  })

  it('places measured from something else are read by their distance', () => {
    const pin = {
      id: 'pin',
      kind: 'intrusion',
      on: 'sections/body',
      at: { z: { of: 'sections/body', by: '12' }, theta: 90 },
    }
    const project = { ...newJob('Trial'), features: [{ ...pin, shape: { form: 'pin', diameter: '3', reach: '2' } }] }
    expect(typedSizes(project as Project, presets).map((s) => s.path)).toEqual([
      'features/pin/at/z/by',
      'features/pin/at/theta',
      'features/pin/shape/diameter',
      'features/pin/shape/reach',
    ])
  })

  it('places of parts on a sled are drawn, and have an interval only where one was typed', () => {
    const part = (id: string, at: object, on?: string) => ({
      id,
      kind: 'other',
      body: { shape: 'cylinder', diameter: '8', length: '8' },
      at,
      ...(on ? { on } : {}),
    })
    const made = [
      part('drawn', { z: '40', across: { x: 1, y: '2 ±0.1' } }),
      part('measured', { z: '40' }, 'sections/body'),
    ]
    const project = { ...newJob('Trial'), parts: made } as unknown as Project
    const places = typedSizes(project, presets).filter((s) => s.path.includes('/at/'))
    expect(places.map((s) => s.path)).toEqual(['parts/drawn/at/across/y', 'parts/measured/at/z'])
  })
})
