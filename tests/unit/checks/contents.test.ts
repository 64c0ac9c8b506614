import { describe, expect, it } from 'vitest'
import { judgeAssembly } from '../../../src/checks/judge-assembly.ts'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { assemblyOf } from '../resolve/project-of.ts'
import { about, findingOf, findingsOf, perfect, sure } from './judged.ts'

const cell = (extra: object = {}) => ({
  id: 'cell',
  name: 'cell',
  kind: 'cell' as const,
  body: { shape: 'cylinder' as const, diameter: sure(18.4), length: about(65, 0.4) },
  at: { z: 40 },
  ...extra,
})
const spring = (extra: object = {}) => ({
  id: 'spring',
  name: 'spring',
  kind: 'contact' as const,
  body: { shape: 'cylinder' as const, diameter: sure(8), length: sure(5) },
  presses: { part: 'parts/cell', end: 'rear' as const },
  solid: sure(3),
  free: sure(9),
  preload: sure(0.5),
  at: { z: 35 },
  ...extra,
})
const leaf = {
  id: 'leaf',
  name: 'leaf',
  kind: 'contact' as const,
  body: { shape: 'box' as const, width: sure(8), height: sure(8), length: sure(2) },
  presses: { part: 'parts/cell', end: 'blade' as const },
  solid: sure(0.5),
  free: sure(3),
  preload: sure(0.5),
  at: { z: 107, face: 'blade' as const },
}

const job = (parts: readonly object[], extra: Partial<ProjectInput> = {}): ProjectInput => ({
  format: 'sledwright',
  version: 1,
  sections: [{ id: 'body', length: sure(180), bore: [{ id: 'main', diameter: sure(32) }] }],
  sleds: [{ id: 'main', name: 'sled', from: 20, to: 160, diameter: sure(30) }],
  printer: perfect,
  parts: parts as never,
  ...extra,
})

describe('along the axis', () => {
  it('holds the longest and the shortest cell against solid and free lengths', () => {
    // Room 107 − 35 = 72. Longest cell 65.4: 6.6 left, 3.5 solid. Shortest 64.6: 7.4 left, 12 − 1 free.
    const all = findingsOf(job([cell(), spring(), leaf]))
    expect(all.get('axial-chain:parts/cell:longest')?.margin.worst).toBeCloseTo(72 - 65.4 - 3.5, 9)
    expect(all.get('axial-chain:parts/cell:shortest')?.margin.worst).toBeCloseTo(11 - (72 - 64.6), 9)
  })

  it('finds a spring that goes solid with a longer cell only', () => {
    const f = findingOf(
      job([cell({ body: { shape: 'cylinder', diameter: sure(18.4), length: about(68.3, 0.4) } }), spring(), leaf]),
      'axial-chain:parts/cell:longest',
    )
    expect(f.status).toBe('unsure')
    expect(
      findingOf(
        job([
          cell({ swapped: true, body: { shape: 'cylinder', diameter: sure(18.4), length: about(68.3, 0.4) } }),
          spring(),
          leaf,
        ]),
        'axial-chain:parts/cell:longest',
      ).status,
    ).toBe('clash')
  })

  it('says not checked where a contact’s lengths are not known, and the job is then unsure', () => {
    const judged = judgeAssembly(
      assemblyOf(job([cell(), spring({ solid: undefined }), leaf].map((p) => JSON.parse(JSON.stringify(p))))),
    )
    expect(judged.notChecked.map((n) => n.path)).toContain('parts/spring/solid')
    expect(judged.verdict).not.toBe('clear')
  })
})

describe('in the cross-section', () => {
  const board = (gap: number) => ({
    id: 'board',
    name: 'board',
    kind: 'board',
    body: { shape: 'box', width: sure(16), height: sure(4), length: sure(30) },
    at: { z: 50, across: { beside: 'parts/cell', theta: 0, gap } },
  })

  it('measures a board over a cell, and asks for the gap between parts', () => {
    expect(findingOf(job([cell(), board(1)]), 'packing:parts/cell:parts/board').margin.worst).toBeCloseTo(0.8, 9)
    expect(findingOf(job([cell(), board(0.1)]), 'packing:parts/cell:parts/board').status).toBe('clash')
  })

  it('does not take the meeting of contact and cell for a clash', () => {
    expect(findingsOf(job([cell(), spring(), leaf])).has('packing:parts/cell:parts/spring')).toBe(false)
  })

  it('names the corner that stands out of the sled and the sled that would hold it', () => {
    // Board over the cell on the axis: corner at (9.2 + 1 + 4, 8), radius √(14.2² + 8²) = 16.30 > 15.
    const f = findingOf(job([cell(), board(1)]), 'packing:parts/board:main')
    expect(f.status).toBe('clash')
    expect(f.margin.worst).toBeCloseTo(15 - Math.hypot(14.2, 8), 6)
    expect(f.why).toContain((2 * Math.hypot(14.2, 8)).toFixed(2))
  })
})

describe('nests', () => {
  it('are drawn so wide that a sliding part goes in at the print error’s worst', () => {
    const f = findingOf(job([cell()], { printer: [{ id: 'p', error: about(0, 0.2) }] }), 'nest-fit:parts/cell')
    expect(f.status).toBe('clear')
  })

  it('typed too tight for the print are a clash, and the offered gap works', () => {
    const tight = job([cell()], {
      printer: [{ id: 'p', error: about(0, 0.2) }],
      sleds: [
        { id: 'main', name: 'sled', from: 20, to: 160, diameter: sure(30), nests: [{ part: 'parts/cell', gap: 0.05 }] },
      ],
    })
    const f = findingOf(tight, 'nest-fit:parts/cell')
    expect(f.status).toBe('clash')
    const gap = f.fix.find((x) => x.path.endsWith('/gap'))?.value as number
    expect(
      findingOf(
        {
          ...tight,
          sleds: [{ id: 'main', from: 20, to: 160, diameter: sure(30), nests: [{ part: 'parts/cell', gap }] }],
        },
        'nest-fit:parts/cell',
      ).status,
    ).toBe('clear')
  })
})

describe('wires', () => {
  const wires = [{ id: 'w', diameter: sure(1.2), count: 4 }]

  it('get a channel wide enough for the bundle and clear of every part', () => {
    const all = [...findingsOf(job([cell({ at: { z: 40, across: { pushed: 180, gap: 0.5 } } })], { wires }))]
    const own = all.filter(([id]) => id.startsWith('wire-channel:')).map(([, f]) => f.status)
    expect(own.length).toBe(2)
    expect(own.every((s) => s === 'clear')).toBe(true)
  })

  it('that find no room are a clash that says how wide a channel would be', () => {
    const f = findingOf(
      job([cell({ body: { shape: 'cylinder', diameter: sure(27), length: sure(65) } })], {
        wires: [{ id: 'w', diameter: sure(2), count: 7 }],
      }),
      'wire-channel:sleds/main/channels/wires:past',
    )
    expect(f.status).toBe('clash')
    expect(f.why).toContain('widest straight channel')
  })
})

describe('a part fitted after', () => {
  const body = (extra: Partial<ProjectInput> = {}) =>
    job(
      [
        cell(),
        {
          id: 'switch',
          name: 'switch',
          kind: 'switch',
          on: 'sections/body',
          goesIn: 'after',
          body: { shape: 'cylinder', axis: 'radial', diameter: sure(8), length: sure(6) },
          tags: sure(2),
          wireBend: sure(1),
          at: { z: sure(140), theta: sure(90), outer: sure(18) },
        },
      ],
      { insertions: [{ id: 'in', moves: 'sleds/main', lateral: 'axis' }], ...extra },
    )

  it('clashes with the sled where no window is cut, tags and wire bend included', () => {
    const f = findingOf(body(), 'fitted-after:parts/switch:main')
    expect(f.status).toBe('clash')
    expect(f.why).toContain('inwards to radius 9.00')
  })

  it('has the room it needs where the window follows it', () => {
    const windowed = body({
      sleds: [
        {
          id: 'main',
          name: 'sled',
          from: 20,
          to: 160,
          diameter: sure(30),
          windows: [{ id: 'w', for: 'parts/switch' }],
        },
      ],
    })
    const f = findingOf(windowed, 'fitted-after:parts/switch:main')
    expect(f.margin.worst).toBeCloseTo(0, 6)
    expect(f.status).toBe('clear')
  })
})

describe('a part and the ends of its sled', () => {
  it('clash where the part reaches past an end', () => {
    const short = job([cell()], { sleds: [{ id: 'main', name: 'sled', from: 20, to: 60, diameter: sure(30) }] })
    const f = findingOf(short, 'packing:parts/cell:main:blade')
    expect(f.status).toBe('clash')
    expect(f.margin.worst).toBeCloseTo(60 - 105.4, 6)
  })
})
