import { describe, expect, it } from 'vitest'
import { bounds } from '../../../src/presets/bounds.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import type { Kind, PresetOf } from '../../../src/presets/schema/kinds.ts'

const presets = loadPresets()

function entry<K extends Kind>(kind: K, id: string): PresetOf<K> {
  const found = presets.ofKind(kind).find((e) => e.id === id)
  if (!found) throw new Error(`no ${kind} ${id}`)
  return found
}

function cylinder(kind: 'cell' | 'speaker', id: string) {
  const { body } = entry(kind, id)
  if (body.shape !== 'cylinder') throw new Error(`${id} is no cylinder`)
  return { diameter: bounds(body.diameter), length: bounds(body.length) }
}

describe("cells: design maxima with wrap (cell makers' sheets and shop pages; from memory but for 18650 and 18500, which are read)", () => {
  it.each([
    ['14500', 14.5, 50.5],
    ['16340', 16.7, 34.5],
    ['18350', 18.6, 35.5],
    ['18500', 18.5, 50],
    ['18650', 18.6, 65.5],
    ['20700', 20.6, 70.3],
    ['21700', 21.7, 70.9],
    ['26650', 26.6, 66],
  ])('%s is at most %f × %f', (size, diameter, length) => {
    const flat = cylinder('cell', `cell-${size}-flat`)
    expect([flat.diameter.max, flat.length.max]).toEqual([diameter, length])
  })

  it('18650: cans 65.0 ±0.5 long (read), protected 67.5 to 70 (read), Ø up to 0.5 more (read)', () => {
    expect(cylinder('cell', 'cell-18650-flat').length.min).toBe(64.5)
    const { diameter, length } = cylinder('cell', 'cell-18650-protected')
    expect([length.min, length.max, diameter.max]).toEqual([67.5, 70, 19.1])
  })

  it.each(presets.ofKind('cell').map((c) => [c.id, c] as const))(
    '%s: the size code is its diameter in mm and its length in tenths (read)',
    (id, c) => {
      const [diameter, length] = [Number(c.size.slice(0, 2)), Number(c.size.slice(2)) / 10]
      expect(c.nominal.diameter).toBe(diameter)
      expect(Math.abs(c.nominal.length - length)).toBeLessThan(1)
      const wrapped = cylinder('cell', id).diameter.max
      expect(wrapped).toBeGreaterThan(diameter)
      expect(wrapped).toBeLessThan(diameter + (c.protected ? 1.5 : 1))
    },
  )
})

describe('threads', () => {
  it.each([
    ['m1-6', 1.6, 0.35, 1.373, 1.221],
    ['m2', 2, 0.4, 1.74, 1.567],
    ['m2-5', 2.5, 0.45, 2.208, 2.013],
    ['m3', 3, 0.5, 2.675, 2.459],
    ['m4', 4, 0.7, 3.545, 3.242],
    ['m5', 5, 0.8, 4.48, 4.134],
    ['m6', 6, 1, 5.35, 4.917],
    ['m8', 8, 1.25, 7.188, 6.647],
  ])("ISO 724 %s (read, a tap maker's catalogue)", (id, major, pitch, pitchDiameter, minor) => {
    const t = entry('thread', id)
    expect([t.major, t.pitch, t.pitchDiameter, t.minor]).toEqual([major, pitch, pitchDiameter, minor])
  })

  it.each([
    ['un-2-56', 0.0667],
    ['un-4-40', 0.0849],
    ['un-6-32', 0.1042],
    ['un-8-32', 0.1302],
    ['un-10-24', 0.1449],
    ['un-10-32', 0.1562],
    ['un-1-4-20', 0.1959],
  ])('ASME B1.1 %s: least minor diameter of a 2B internal thread %f in (read, drill-chart pages)', (id, inch) => {
    const t = entry('thread', id)
    expect(t.inch?.minor).toBe(inch)
    expect(t.minor).toBeCloseTo(inch * 25.4, 2)
  })

  it.each(presets.ofKind('thread').map((t) => [t.id, t] as const))(
    '%s follows the 60° formulae of ISO 724 (computed)',
    (_, t) => {
      expect(Math.abs(t.minor - (t.major - 1.08253 * t.pitch))).toBeLessThan(0.0015)
      if (t.pitchDiameter) expect(Math.abs(t.pitchDiameter - (t.major - 0.64952 * t.pitch))).toBeLessThan(0.0015)
      if (t.root) expect(Math.abs(t.root - (t.major - 1.22687 * t.pitch))).toBeLessThan(0.0015)
      if (t.pitchDiameter && t.root && t.stressArea) {
        expect(Math.abs(t.stressArea - (Math.PI / 4) * ((t.pitchDiameter + t.root) / 2) ** 2)).toBeLessThan(0.006)
      }
      if (t.tpi) expect(t.pitch * t.tpi).toBeCloseTo(25.4, 2)
      if (t.tapDrill) expect(t.tapDrill.diameter).toBeGreaterThan(t.minor)
    },
  )

  it('drills for threads are drills one can buy', () => {
    const sizes = presets.ofKind('drill').map((d) => d.diameter)
    for (const t of presets.ofKind('thread')) if (t.tapDrill) expect(sizes).toContain(t.tapDrill.diameter)
  })
})

describe('drills', () => {
  const series = (name: string) => presets.ofKind('drill').filter((d) => d.series === name)

  it('letters ascend, numbers descend, No. 1 is below letter A, fractions are n/64 in (ASME B94.11M; rule exact)', () => {
    const inches = (name: string) => series(name).map((d) => d.inch ?? 0)
    const numbers = inches('number')
    expect(numbers).toEqual([...numbers].sort((a, b) => b - a))
    expect(numbers).toHaveLength(80)
    const letters = inches('letter')
    expect(letters).toEqual([...letters].sort((a, b) => a - b))
    expect(letters).toHaveLength(26)
    expect(numbers[0]).toBeLessThan(letters[0] as number)
    expect(inches('fraction')).toEqual(Array.from({ length: 64 }, (_, i) => (i + 1) / 64))
  })

  it('the millimetres of an inch drill are its inches × 25.4 (computed)', () => {
    for (const d of presets.ofKind('drill')) if (d.inch) expect(Math.abs(d.diameter - d.inch * 25.4)).toBeLessThan(6e-4)
  })

  it.each([
    ['drill-number-50', 0.07],
    ['drill-number-43', 0.089],
    ['drill-number-36', 0.1065],
    ['drill-number-29', 0.136],
    ['drill-number-7', 0.201],
    ['drill-number-80', 0.0135],
    ['drill-letter-f', 0.257],
  ])('%s is %f in (read)', (id, inch) => {
    expect(entry('drill', id).inch).toBe(inch)
  })

  it('the metric series steps by 0.05 below 3, by 0.1 below 14, by 0.25 to 25 (BS 328; read)', () => {
    const sizes = series('metric').map((d) => d.diameter)
    for (let i = 1; i < sizes.length; i++) {
      const [a, b] = [sizes[i - 1] as number, sizes[i] as number]
      if (a >= 1) expect(b - a).toBeCloseTo(a < 3 ? 0.05 : a < 14 ? 0.1 : 0.25, 9)
      else expect([0, 2, 5, 8]).toContain(Math.round(a * 100) % 10)
    }
    expect([sizes[0], sizes.at(-1)]).toEqual([0.5, 25])
  })
})

describe('wires', () => {
  it('AWG 24: conductor 0.5106, 0.2047 mm², 84.21 Ω/km (ASTM B258; computed)', () => {
    const w = entry('wire', 'wire-24-silicone')
    expect([w.conductor.diameter, w.conductor.area, w.resistance]).toEqual([0.5106, 0.2047, 84.21])
  })

  it.each(presets.ofKind('wire').map((w) => [w.id, w] as const))(
    '%s: d = 0.127·92^((36−n)/39), R = 17.241/A (ASTM B258, IACS copper; computed)',
    (_, w) => {
      const d = 0.127 * 92 ** ((36 - w.gauge) / 39)
      const area = (Math.PI / 4) * d * d
      expect(Math.abs(w.conductor.diameter - d)).toBeLessThan(6e-5)
      expect(Math.abs(w.conductor.area - area)).toBeLessThan(6e-5)
      expect(Math.abs(w.resistance / (17.241 / area) - 1)).toBeLessThan(5e-4)
      expect(bounds(w.outside).min).toBeGreaterThan(d)
    },
  )
})

describe('switches, ports, connectors', () => {
  it('tact 6 × 6: heights 4.3, 5, 7, 8, 9.5, 13; base 6.2 × 6.2 × 3.4; stroke 0.25 ±0.15 (switch data sheet; read)', () => {
    const tacts = presets.ofKind('switch').flatMap((s) => (s.type === 'tact' && s.pushed === 'up' ? [s] : []))
    expect(tacts.map((s) => bounds(s.overall).nominal)).toEqual([4.3, 5, 7, 8, 9.5, 13])
    for (const s of tacts) {
      if (s.body.shape !== 'box') throw new Error(`${s.id} is no box`)
      expect([s.body.width, s.body.length, s.body.height].map((i) => bounds(i).nominal)).toEqual([6.2, 6.2, 3.4])
      expect([s.travel, s.forceGrades]).toEqual([{ value: 0.25, plus: 0.15, minus: 0.15 }, [160, 260, 360]])
      expect(bounds(s.force).min).toBeCloseTo((160 - 50) * 0.00980665, 2)
      expect(bounds(s.force).max).toBeCloseTo(360 * 0.00980665, 2)
    }
  })

  it('panel switch Ø16: cut-out 16 +0.2/0, wall 0.5 to 3.2, 19 apart (data sheet; read)', () => {
    const s = entry('switch', 'switch-panel-16-latching')
    if (s.type !== 'panel') throw new Error('no panel switch')
    expect([bounds(s.cutout), s.wall, s.spacing]).toEqual([
      { min: 16, nominal: 16, max: 16.2 },
      { min: 0.5, max: 3.2 },
      19,
    ])
  })

  it('USB: micro-B shell 6.85 × 1.8, moulding at most 10.6 × 8.5; type-C shell 8.25 × 2.4, opening 8.34 × 2.56 (read); type-C moulding 12.35 × 6.5 (from memory)', () => {
    const figures = (id: string) => {
      const p = entry('connector', id)
      if (p.type !== 'plug' || p.body.shape !== 'box') throw new Error(`${id} is no plug`)
      return [
        bounds(p.shell.width).nominal,
        bounds(p.shell.height).nominal,
        bounds(p.body.width).max,
        bounds(p.body.height).max,
      ]
    }
    expect(figures('connector-usb-micro-b-straight')).toEqual([6.85, 1.8, 10.6, 8.5])
    expect(figures('connector-usb-c-angled')).toEqual([8.25, 2.4, 12.35, 6.5])
    const usb = entry('port', 'port-usb-c')
    if (usb.type !== 'usb-c') throw new Error('no receptacle')
    expect([bounds(usb.opening.width).nominal, bounds(usb.opening.height).nominal]).toEqual([8.34, 2.56])
  })
})

describe('measuring tools (common practice, no source)', () => {
  it.each([
    ['calliper-outside', 0.03],
    ['calliper-inside', 0.1],
    ['calliper-depth', 0.1],
    ['telescoping-gauge', 0.03],
    ['printed-plug', 0.05],
  ])('%s reads within ±%f', (id, mpe) => {
    expect(entry('tool', id).mpe).toBe(mpe)
  })
})

describe('speakers, materials, processes', () => {
  it('Ø15 × 3.8, 900 Hz ±20 %; Ø23 × 5.0, 660 Hz ±20 % (data sheets; read)', () => {
    for (const [id, d, l, f] of [
      ['speaker-15', 15, 3.8, 900],
      ['speaker-23', 23, 5, 660],
    ] as const) {
      const { diameter, length } = cylinder('speaker', id)
      expect([diameter.nominal, length.nominal]).toEqual([d, l])
      expect(bounds(entry('speaker', id).resonance ?? { min: 0, max: 0 })).toEqual({
        min: f * 0.8,
        nominal: f,
        max: f * 1.2,
      })
    }
  })

  it('repeated strain is 0.6 of once, across the layers half of in the layer (snap-fit guides; rule read, bands from memory)', () => {
    const printed = presets.ofKind('material').flatMap((m) => (m.strain ? [m.strain] : []))
    expect(printed.length).toBeGreaterThan(5)
    for (const s of printed) {
      for (const end of ['min', 'max'] as const) {
        const once = bounds(s.onceInLayer)[end]
        expect(bounds(s.repeatedInLayer)[end]).toBeCloseTo(0.6 * once, 9)
        expect(bounds(s.onceAcross)[end]).toBeCloseTo(0.5 * once, 9)
        expect(bounds(s.repeatedAcross)[end]).toBeCloseTo(0.3 * once, 9)
      }
    }
  })

  it('PLA: modulus 3 to 4 GPa (read), softens from 55 to 65 °C (read), expands 101e-6/K (read)', () => {
    const pla = entry('material', 'material-pla')
    expect([pla.modulus, pla.glassTransition, pla.expansion]).toEqual([
      { min: 3, max: 4 },
      { min: 55, max: 65 },
      { min: 101, max: 101 },
    ])
  })

  it('one set of defaults a process family, its fit classes from tight to loose without gaps', () => {
    expect(presets.ofKind('process').map((p) => p.family)).toEqual(['filament', 'resin', 'powder'])
    for (const { fitDiametral: f } of presets.ofKind('process')) {
      const [press, snug, slide, free] = [f.press, f.snug, f.slide, f.free].map(bounds) as [
        ReturnType<typeof bounds>,
        ReturnType<typeof bounds>,
        ReturnType<typeof bounds>,
        ReturnType<typeof bounds>,
      ]
      expect(press.min).toBeLessThan(press.max)
      expect([press.max, snug.max, slide.max]).toEqual([snug.min, slide.min, free.min])
      expect(free.max).toBeGreaterThan(free.min)
    }
  })

  it('keeps every published guideline beside the defaults: 11 read, 4 from memory', () => {
    const hows = presets.ofKind('guideline').map((g) => g.how)
    expect([hows.filter((h) => h === 'read').length, hows.filter((h) => h === 'from memory').length]).toEqual([11, 4])
  })
})
