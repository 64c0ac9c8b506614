import { describe, expect, it } from 'vitest'
import { least, most } from '../../../src/quantity/quantity.ts'
import { assemblyOf, problemsOf, tube } from './project-of.ts'

const codes = (project: Parameters<typeof problemsOf>[0]) => problemsOf(project).map((p) => `${p.code} ${p.path}`)

describe('sections and their bores', () => {
  it('lie one behind the other, less what the joint engages', () => {
    const a = assemblyOf(
      tube({
        sections: [
          { id: 'pommel', length: 40, bore: [{ id: 'hollow', diameter: 20 }] },
          { id: 'body', length: 100, bore: [{ id: 'main', diameter: 30 }] },
        ],
        joints: [{ id: 'j', kind: 'threaded', rear: 'pommel', blade: 'body', engagement: 8 }],
      }),
    )
    expect(a.sections[1]?.ends.rear.nominal).toBeCloseTo(32, 9)
    expect(a.sections[1]?.ends.blade.nominal).toBeCloseTo(132, 9)
  })

  it('give a step without a length what is left, and its doubt with it', () => {
    const a = assemblyOf(
      tube({
        sections: [
          {
            id: 'body',
            length: { value: 100, plus: 0.2, minus: 0.2 },
            bore: [
              { id: 'mouth', length: { value: 10, plus: 0.1, minus: 0.1 }, diameter: 32 },
              { id: 'main', diameter: 30 },
              { id: 'neck', length: { value: 20, plus: 0.1, minus: 0.1 }, diameter: 22 },
            ],
          },
        ],
      }),
    )
    const main = a.sections[0]?.steps[1]
    expect(main?.z0.nominal).toBeCloseTo(10, 9)
    expect(main?.z1.nominal).toBeCloseTo(80, 9)
    // From the rear: 10 ± 0.1 + rest. The rest is 100 ± 0.2 − 10 ± 0.1 − 20 ± 0.1; the mouth's doubt cancels.
    expect(most(main?.z1 as never) - 80).toBeCloseTo(0.3, 9)
  })

  it('so do the steps of the outside, wherever the one without a length stands', () => {
    const outside = [{ diameter: 38 }, { diameter: 30, length: 8 }]
    const section = { id: 'pommel', length: 40, outside, bore: [{ id: 'main', diameter: 25 }] }
    const [pommel] = assemblyOf(tube({ sections: [section] })).sections
    expect(pommel?.outside.map((o) => [o.z0.nominal, o.z1.nominal, o.d0.nominal])).toEqual([
      [0, 32, 38],
      [32, 40, 30],
    ])
    const both = { ...section, outside: [{ diameter: 38 }, { diameter: 30 }] }
    expect(problemsOf(tube({ sections: [both] })).map((p) => p.path)).toEqual(['sections/pommel/outside/1/length'])
  })

  it('take the crests of a thread as the free bore: M32 × 1 leaves 32 − 1.08253 (ISO 724, read)', () => {
    const a = assemblyOf(tube({ sections: [{ id: 'body', length: 50, bore: [{ id: 'mouth', thread: 'M32x1' }] }] }))
    expect(a.sections[0]?.steps[0]?.r0?.nominal).toBeCloseTo((32 - 1.08253) / 2, 4)
  })

  // Half way up, at the roots, and of another thread.
  it.each([31.3, 31.95, 34])('question %s at a mouth of M32 × 1, and use the crests, 31.15 at most', (diameter) => {
    const a = assemblyOf(
      tube({ sections: [{ id: 'body', length: 50, bore: [{ id: 'mouth', thread: 'M32x1', diameter }] }] }),
    )
    expect(a.questions.map((q) => q.path)).toEqual(['sections/body/bore/mouth/diameter'])
    expect(a.sections[0]?.steps[0]?.r0?.nominal).toBeLessThan(15.5)
  })

  it('say what was not measured instead of guessing', () => {
    const a = assemblyOf(tube({ sections: [{ id: 'body', length: 50, bore: [{ id: 'main' }] }] }))
    expect(a.missing.map((m) => m.path)).toEqual(['sections/body/bore/main/diameter'])
    expect(a.bores).toEqual([])
  })

  it('have an open and a closed bore where a clamp closes them', () => {
    const a = assemblyOf(
      tube({
        sections: [
          { id: 'clamp', length: 30, bore: [{ id: 'main' }], clamp: { open: 30.2, closed: 30, openIn: ['service'] } },
        ],
      }),
    )
    expect(a.sections[0]?.steps.map((s) => [s.id, s.states])).toEqual([
      ['sections/clamp/main-closed', ['!service']],
      ['sections/clamp/main-open', ['service']],
    ])
  })

  it.each([
    [
      'overlap without a joint',
      {
        sections: [
          { id: 'a', length: 50, bore: [{ diameter: 30 }] },
          { id: 'b', z: 40, length: 50, bore: [{ diameter: 30 }] },
        ],
      },
      'overlap sections/b',
    ],
    [
      'steps longer than the section',
      {
        sections: [
          {
            id: 'a',
            length: 50,
            bore: [
              { length: 30, diameter: 30 },
              { length: 40, diameter: 30 },
            ],
          },
        ],
      },
      'contradiction sections/a/bore',
    ],
    [
      'a bore above its outside',
      { sections: [{ id: 'a', length: 50, outside: [{ diameter: 29 }], bore: [{ id: 'm', diameter: 30 }] }] },
      'contradiction sections/a/bore/m/diameter',
    ],
    [
      'a wall of 0.2 mm',
      { sections: [{ id: 'a', length: 50, outside: [{ diameter: 30.4 }], bore: [{ id: 'm', diameter: 30 }] }] },
      'suspicious sections/a/bore/m/diameter',
    ],
    [
      'a negative length',
      { sections: [{ id: 'a', length: -50, bore: [{ diameter: 30 }] }] },
      'out-of-range sections/a/length',
    ],
    ['no section at all', { sections: [] }, 'missing sections'],
    [
      'a section placed on itself',
      { sections: [{ id: 'a', z: { of: 'sections/a', end: 'blade' }, length: 50, bore: [{ diameter: 30 }] }] },
      'circular sections/a/z/of',
    ],
  ])('refuse %s', (_, extra, expected) => {
    expect(codes(tube(extra as never))).toContain(expected)
  })
})

describe('parts', () => {
  const cell = {
    id: 'cell',
    kind: 'cell' as const,
    body: { shape: 'cylinder' as const, diameter: { value: 18.4, plus: 0.2, minus: 0.2 }, length: 65 },
  }
  const sleds = [{ id: 'main', diameter: 29 }]

  it('pushed to the wall keep their gap whatever their size turns out to be', () => {
    const a = assemblyOf(tube({ sleds, parts: [{ ...cell, at: { z: 20, across: { pushed: 90, gap: 0.5 } } }] }))
    const place = a.parts[0]?.across
    expect(place?.y.nominal).toBeCloseTo(14.5 - 0.5 - 9.2, 9)
    // y = 14.5 − 0.5 − r, so y + r has no doubt left.
    const reach = [...(place?.y.terms ?? []), ...(a.parts[0]?.extent.halfU.terms ?? [])]
    expect(reach.reduce((sum, t) => sum + t.gain, 0)).toBeCloseTo(0, 12)
  })

  it('beside each other leave the gap between their faces', () => {
    const board = {
      id: 'board',
      kind: 'board' as const,
      body: { shape: 'box' as const, width: 16, height: 4, length: 30 },
      at: { z: 25, across: { beside: 'parts/cell', theta: 0, gap: 1 } },
    }
    const a = assemblyOf(tube({ sleds, parts: [{ ...cell, at: { z: 20 } }, board] }))
    expect(a.parts[1]?.across.x.nominal).toBeCloseTo(9.2 + 1 + 2, 9)
  })

  it('that are swapped vary, and parts in hand are unknown', () => {
    const a = assemblyOf(
      tube({
        sleds,
        parts: [
          { id: 'p', kind: 'cell', preset: 'cell-18650-flat', at: { z: 20 } },
          { ...cell, at: { z: 90 } },
        ],
      }),
    )
    const kind = (i: number) => a.parts[i]?.extent.halfU.terms[0]?.spread.kind
    expect([kind(0), kind(1)]).toEqual(['varies', 'unknown'])
  })

  it.each([
    [
      'an unknown preset',
      { ...cell, body: undefined, preset: 'cell-99999', at: { z: 20 } },
      'unknown-preset parts/cell/preset',
    ],
    ['a part outside the hilt', { ...cell, at: { z: 150 } }, 'outside-hilt parts/cell/at/z'],
    ['a part with no place', cell, 'missing parts/cell/at/z'],
    [
      'a part beside nothing',
      { ...cell, at: { z: 20, across: { beside: 'parts/none', theta: 0, gap: 1 } } },
      'unknown-reference parts/cell/at/across/beside',
    ],
    [
      'a part too wide for the sled',
      {
        id: 'cell',
        kind: 'board',
        body: { shape: 'box', width: 31, height: 4, length: 30 },
        at: { z: 20, across: { pushed: 0, gap: 0.5 } },
      },
      'does-not-fit parts/cell/at/across',
    ],
  ])('refuse %s', (_, part, expected) => {
    expect(codes(tube({ sleds, parts: [JSON.parse(JSON.stringify(part))] }))).toContain(expected)
  })
})

describe('the sled by default', () => {
  it('is the narrowest bore on its way in at the worst, less clearance and print error on each side', () => {
    const a = assemblyOf(
      tube({
        sections: [
          {
            id: 'body',
            length: 180,
            bore: [
              { id: 'mouth', length: 10, diameter: { min: 28, max: 28.2 } },
              { id: 'main', diameter: 30 },
            ],
          },
        ],
        sleds: [{ id: 'main', from: 20, to: 100 }],
        printer: [{ id: 'p', error: { value: 0, plus: 0.1, minus: 0.1 } }],
      }),
    )
    // 28 − 2 · (0.15 + 0.1) = 27.5
    expect(2 * (a.sleds[0]?.pieces[0]?.radius ?? 0)).toBeCloseTo(27.5, 9)
  })

  it('has no diameter where a bore on the way was not measured', () => {
    const a = assemblyOf(
      tube({
        sections: [
          {
            id: 'body',
            length: 180,
            bore: [
              { id: 'mouth', length: 10 },
              { id: 'main', diameter: 30 },
            ],
          },
        ],
        sleds: [{ id: 'main', from: 20, to: 100 }],
      }),
    )
    expect(a.sleds).toEqual([])
    expect(a.missing.map((m) => m.path)).toContain('sleds/main/diameter')
  })

  it('reaches around its parts at their longest', () => {
    const a = assemblyOf(
      tube({
        sleds: [{ id: 'main' }],
        parts: [{ id: 'cell', kind: 'cell', preset: 'cell-18650-flat', at: { z: 40 } }],
      }),
    )
    const cell = a.parts[0]
    expect(a.sleds[0]?.ends.rear.nominal).toBeCloseTo(38, 9)
    expect(a.sleds[0]?.ends.blade.nominal).toBeGreaterThanOrEqual(most(cell?.ends.blade as never) + 2 - 1e-9)
    expect(least(cell?.ends.rear as never)).toBeCloseTo(40, 9)
  })
})

describe('what depends on a bore that is wrong', () => {
  it('is not called wrong itself', () => {
    const bore = [
      { id: 'a', diameter: 30 },
      { id: 'b', diameter: 28 },
    ]
    const cell = { id: 'cell', kind: 'cell' as const, preset: 'cell-18650-flat' }
    const project = tube({
      sections: [{ id: 'body', length: 180, bore }],
      sleds: [{ id: 'main' }],
      insertions: [{ id: 'in', moves: 'sleds/main', through: { of: 'sections/body', end: 'rear' } }],
      parts: [{ ...cell, at: { z: 40, across: { pushed: 180, gap: 1 } } }],
    })
    expect(codes(project)).toEqual(['missing sections/body/bore/b/length'])
  })

  it('of no steps at all is told once', () => {
    expect(codes(tube({ sections: [{ id: 'body', length: 180, bore: [] }] }))).toEqual(['missing sections/body/bore'])
  })
})

describe('what is in a wall', () => {
  it('outside its section is asked where along it, not for a diameter that is there', () => {
    const body = { shape: 'cylinder' as const, axis: 'radial' as const, diameter: 8, length: 6 }
    const at = (z: number) =>
      assemblyOf(
        tube({
          sections: [
            { id: 'pommel', length: 40, outside: [{ diameter: 38 }], bore: [{ id: 'p', diameter: 30 }] },
            { id: 'body', name: 'body', length: 100, outside: [{ diameter: 38 }], bore: [{ id: 'b', diameter: 30 }] },
          ],
          parts: [{ id: 's', kind: 'switch', on: 'sections/body', goesIn: 'after', body, at: { z, theta: 0 } }],
        }),
      ).missing
    expect(at(90)).toEqual([])
    expect(at(20)).toMatchObject([{ path: 'parts/s/at/z', what: 'a place along body' }])
    expect(at(20)[0]?.hint).toMatch(/z 20\.0; body reaches from 40\.0 to 140\.0/)
  })

  const pin = (by: number, on = 'sections/body') => ({
    id: 'pin',
    kind: 'intrusion' as const,
    on,
    at: { z: { of: 'sections/body', end: 'rear' as const, by } },
    shape: { form: 'pin' as const, diameter: 4, reach: 2 },
  })
  const asked = (extra: Parameters<typeof tube>[0]) => assemblyOf(tube(extra)).questions.map((q) => q.path)

  it.each([
    [90, []],
    [180, []],
    [-0.9, []],
    [181.1, ['features/pin/at/z/by']],
    [-20, ['features/pin/at/z/by']],
  ])('is asked about where its middle, z %d, is not where its section is', (z, paths) => {
    expect(asked({ features: [pin(z)] })).toEqual(paths)
  })

  it('is asked about as a screw, too, and at its plain height', () => {
    const screw = { id: 's', on: 'sections/body', at: { z: 322 }, thread: 'M4', tip: 12 }
    expect(asked({ screws: [screw] })).toEqual(['screws/s/at/z'])
  })
})
