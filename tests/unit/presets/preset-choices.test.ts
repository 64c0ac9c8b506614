import { describe, expect, it } from 'vitest'
import { presetChoices } from '../../../src/presets/preset-choices.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import { body } from '../../../src/project/schema/part.ts'

const presets = loadPresets()
const choices = presetChoices(presets)
const parts = Object.entries(choices.parts).flatMap(([kind, list]) => list.map((p) => ({ kind, ...p })))
const lists = [...parts, ...choices.wires, ...choices.tools, ...choices.processes, ...choices.materials]

describe('what the lists offer', () => {
  it('is every preset of each kind, in its order', () => {
    for (const [kind, list] of Object.entries(choices.parts))
      expect(list.map((c) => c.id)).toEqual(presets.ofKind(kind as 'cell').map((p) => p.id))
    const others = [
      ['wire', choices.wires],
      ['tool', choices.tools],
      ['process', choices.processes],
      ['material', choices.materials],
    ] as const
    for (const [kind, list] of others) {
      expect(list.length).toBeGreaterThan(0)
      expect(list.map((c) => c.id)).toEqual(presets.ofKind(kind).map((p) => p.id))
    }
  })

  it('says of each its name, its figures, how they are known and who says so', () => {
    const silent = lists.filter((c) => [c.name, c.sizes, c.source].includes('') || c.known === 'not said')
    expect(silent.map((c) => c.id)).toEqual([])
  })

  it('is plain data that a worker can send', () => {
    expect(structuredClone(choices)).toEqual(choices)
    expect(JSON.parse(JSON.stringify(choices))).toEqual(JSON.parse(JSON.stringify(structuredClone(choices))))
  })
})

describe('a part that is chosen', () => {
  it('brings a body that stands in a project as it is', () => {
    expect(parts.filter((p) => !body.safeParse(p.body).success)).toEqual([])
  })

  it('brings a contact’s lengths, and marks what may be swapped', () => {
    const spring = choices.parts.contact.find((p) => p.solid !== undefined)
    const entry = presets.byId(spring?.id ?? '') as unknown as { solid: unknown; free: unknown }
    expect([spring?.solid, spring?.free]).toEqual([entry.solid, entry.free])
    expect(spring?.solid).toBeDefined()
    const swapped = presets.ofKind('cell').filter((c) => 'swapped' in c)
    expect(choices.parts.cell.filter((c) => c.swapped).map((c) => c.id)).toEqual(swapped.map((c) => c.id))
    expect(choices.parts.speaker.every((s) => s.solid === undefined && !s.swapped)).toBe(true)
  })
})

it('a tool says what it measures, and whether its jaws have flats', () => {
  const bores = choices.tools.filter((t) => t.measures.includes('bore'))
  expect(bores.some((t) => t.jaws)).toBe(true)
  expect(choices.tools.some((t) => !t.measures.includes('bore'))).toBe(true)
  expect(choices.tools.filter((t) => t.measures.length === 0)).toEqual([])
})
