import { describe, expect, it } from 'vitest'
import { bounds, intervalText } from '../../../src/presets/bounds.ts'
import { citation, howKnown } from '../../../src/presets/known.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import { schemas } from '../../../src/presets/schema/kinds.ts'
import { presetText } from '../../../src/presets/text.ts'
import { body } from '../../../src/project/schema/part.ts'

const presets = loadPresets()
const all = presets.kinds.flatMap((kind) => [...presets.ofKind(kind)])

describe('the registry', () => {
  it('holds every kind there is a schema for', () => {
    expect([...presets.kinds].sort()).toEqual(Object.keys(schemas).sort())
  })

  it('finds each entry by its id, and none by an id nobody has', () => {
    for (const entry of all) expect(presets.byId(entry.id)).toBe(entry)
    for (const id of ['cell-99999-flat', '', 'constructor', '__proto__']) expect(presets.byId(id)).toBeUndefined()
  })

  it('is the same at each call, and nobody can change it', () => {
    expect(loadPresets()).toBe(presets)
    const cell = presets.ofKind('cell')[0] as { mass: { min: number } }
    expect(() => (cell.mass.min = 0)).toThrow(TypeError)
    expect(() => (presets.ofKind('cell') as unknown[]).push(cell)).toThrow(TypeError)
  })

  it('has bodies that stand in a project file as they are', () => {
    for (const entry of all) {
      if (!('body' in entry)) continue
      const { success } = body.safeParse(entry.body)
      expect({ id: entry.id, success }).toEqual({ id: entry.id, success: true })
    }
  })

  it('names only plugs that are there', () => {
    const usb = presets.ofKind('port').filter((p) => p.type === 'usb-c')
    expect(usb.length).toBeGreaterThan(0)
    for (const port of usb) for (const id of port.mates) expect(presets.byId(id)?.kind).toBe('connector')
  })
})

describe('how a figure is known', () => {
  it('comes from the nearest path that says it', () => {
    const tact = presets.byId('switch-tact-6x6-h5')
    if (!tact) throw new Error('the switch is gone')
    expect(howKnown(tact, 'body.height')).toBe('read')
    expect(howKnown(tact, 'force.max')).toBe('computed')
    expect(howKnown(tact, 'name')).toBeUndefined()
    expect(citation(tact, 'leads.along')).toBe("Tact switch 6 × 6, 5 mm high: switch makers' data sheets (from memory)")
  })
})

describe('intervals in words and numbers', () => {
  it('gives both forms their ends and their nominal', () => {
    expect(bounds({ min: 18, max: 19 })).toEqual({ min: 18, nominal: 18.5, max: 19 })
    expect(bounds({ min: 7, max: 14, nominal: 9.5 })).toEqual({ min: 7, nominal: 9.5, max: 14 })
    expect(bounds({ value: 16, plus: 0.5, minus: 0 })).toEqual({ min: 16, nominal: 16, max: 16.5 })
  })

  it('writes them as a drawing does', () => {
    expect(intervalText({ min: 18.2, max: 18.6 })).toBe('18.2–18.6')
    expect(intervalText({ min: 8, max: 8 })).toBe('8')
    expect(intervalText({ value: 6.2, plus: 0.2, minus: 0.2 })).toBe('6.2 ±0.2')
    expect(intervalText({ value: 16, plus: 0.2, minus: 0 })).toBe('16 +0.2/−0')
    expect(intervalText({ value: 8, plus: 0, minus: 0 })).toBe('8')
  })
})

describe('one line an entry', () => {
  it('starts with the id and leaves nothing undefined', () => {
    for (const entry of all) {
      const line = presetText(entry)
      expect(line.startsWith(`${entry.id}: `)).toBe(true)
      expect(line).not.toMatch(/undefined|NaN|\[object|\n/)
    }
  })

  it('gives the figures one chooses by', () => {
    const cell = presets.byId('cell-18650-flat')
    if (!cell) throw new Error('the cell is gone')
    expect(presetText(cell)).toContain('⌀18.2–18.6 × 64.5–65.5 mm')
  })
})
