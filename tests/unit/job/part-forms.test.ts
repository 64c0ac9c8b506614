import { describe, expect, it } from 'vitest'
import { partKnownBy, shortSize, withOwnSizes, withPreset, withShape } from '../../../src/job/part-forms.ts'
import type { PlaceOf } from '../../../src/job/place-forms.ts'
import { presetChoices } from '../../../src/presets/preset-choices.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import type { PartInput } from '../../../src/project/schema/part.ts'

const { parts } = presetChoices(loadPresets())
const preset = (kind: keyof typeof parts, id: string) => {
  const found = parts[kind].find((p) => p.id === id)
  if (!found) throw new Error(`no preset ${id}`)
  return found
}
const cell: PartInput = { id: 'cell', kind: 'cell', preset: 'cell-18650-flat', at: { z: 64 } }
const nowhere: PlaceOf = () => undefined
const at100: PlaceOf = (ref) => ({ ref, rear: 100, blade: 106, across: { x: 0, y: 0, facing: 0 } })
const wall = { section: 'sections/body', placeOf: at100 }

describe('own sizes', () => {
  it('begin as what the preset said, marked as the preset’s, and the place stays', () => {
    const own = withOwnSizes(cell, preset('cell', 'cell-18650-flat'))
    expect(own).toMatchObject({
      id: 'cell',
      at: { z: 64 },
      body: { shape: 'cylinder', diameter: { min: 18.2, max: 18.6, source: 'preset' } },
      swapped: true,
    })
    expect(own.preset).toBeUndefined()
    expect(partKnownBy(own)).toBe('preset')
  })

  it('take over what the preset said of tags and contacts', () => {
    const spring = withOwnSizes({ id: 'a', kind: 'contact', preset: 'contact-coil' }, preset('contact', 'contact-coil'))
    expect(spring).toMatchObject({ free: { min: 8, max: 12, source: 'preset' }, solid: { min: 3, max: 4 } })
  })

  it('go again with a preset', () => {
    const own = withOwnSizes(cell, preset('cell', 'cell-18650-flat'))
    const back = withPreset(own, preset('cell', 'cell-18350-flat'), undefined, wall)
    expect(back).toMatchObject({ preset: 'cell-18350-flat', at: { z: 64 } })
    expect(back.body).toBeUndefined()
  })
})

describe('a part that comes through the wall', () => {
  const panel = preset('switch', 'switch-panel-12-momentary')
  const tact = preset('switch', 'switch-tact-6x6-h5')
  const onSled: PartInput = {
    id: 'sw',
    kind: 'switch',
    preset: tact.id,
    at: { z: 100, across: { pushed: 90, gap: 2 } },
  }

  it('takes its place in the wall, by its middle, after the sled', () => {
    expect(withPreset(onSled, panel, tact, wall)).toEqual({
      id: 'sw',
      kind: 'switch',
      preset: panel.id,
      on: 'sections/body',
      goesIn: 'after',
      at: { z: 103, theta: 0 },
    })
  })

  it('lies on the sled again when it no longer does', () => {
    const inWall = withPreset(onSled, panel, tact, wall)
    expect(withPreset(inWall, tact, panel, wall)).toEqual({
      id: 'sw',
      kind: 'switch',
      preset: tact.id,
      at: { z: 100 },
    })
  })

  it('stays where it was put by hand when only its size changes', () => {
    const own: PartInput = {
      id: 'plug',
      kind: 'other',
      on: 'sections/body',
      goesIn: 'after',
      at: { z: 5 },
      body: { shape: 'box', width: 8, height: 4, length: 6 },
    }
    expect(withShape(own, 'cylinder', wall)).toMatchObject({
      on: 'sections/body',
      goesIn: 'after',
      at: { z: 5 },
      body: { shape: 'cylinder', diameter: 8, length: 6 },
    })
  })

  it('keeps its height where nobody knows yet where it lies', () => {
    expect(withPreset(onSled, panel, tact, { section: 'sections/body', placeOf: nowhere }).at?.z).toBe(100)
  })
})

describe('a size in short', () => {
  it('is nominal and of what was typed', () => {
    expect(shortSize({ shape: 'cylinder', diameter: { min: 18.2, max: 18.6 }, length: '65 ±0.5' })).toBe('⌀18.4 × 65')
    expect(shortSize({ shape: 'box', width: '18,1', height: 6.2, length: '' })).toBe('18.1 × 6.2 × ?')
  })

  it('is of a board with all that stands on it: 1 thick, 2.2 over it and 1.6 under it', () => {
    const board = (side: 'top' | 'bottom', height: string) => ({ z: 0, x: 0, length: 8, width: 8, height, side })
    const components = [board('top', '2.2'), board('top', '1'), board('bottom', '1.6')]
    const outline: [number, number][] = [
      [0, -8],
      [34, -8],
      [34, 8],
      [0, 8],
    ]
    expect(shortSize({ shape: 'outline', outline, thickness: '1 ±0.1', components })).toBe('16 × 4.8 × 34')
    expect(shortSize({ shape: 'outline', outline, thickness: 1 })).toBe('16 × 1 × 34')
  })

  it('is known by the weakest of its sizes', () => {
    const body = (source: 'assumed' | 'preset') => ({
      shape: 'cylinder' as const,
      diameter: '18.4',
      length: { value: 65, source },
    })
    expect(partKnownBy({ ...cell, body: body('assumed') })).toBe('assumed')
    expect(partKnownBy({ ...cell, body: body('preset') })).toBe('preset')
    expect(partKnownBy({ ...cell, body: { shape: 'cylinder', diameter: 18.4, length: 65 } })).toBe('measured')
    expect(partKnownBy(cell)).toBe('preset')
  })
})
