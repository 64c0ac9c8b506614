import { describe, expect, it } from 'vitest'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { about, findingOf, findingsOf, perfect, sure } from './judged.ts'

const plain = (extra: Partial<ProjectInput> = {}): ProjectInput => ({
  format: 'sledwright',
  version: 1,
  sections: [
    { id: 'body', name: 'body', length: sure(150), bore: [{ id: 'main', name: 'main bore', diameter: sure(30) }] },
  ],
  sleds: [{ id: 'main', name: 'sled', from: 20, to: 110, diameter: sure(29) }],
  insertions: [{ id: 'in', moves: 'sleds/main', lateral: 'axis' }],
  printer: perfect,
  ...extra,
})

const pin = (tip: number, extra: object = {}) =>
  ({
    id: 'pin',
    kind: 'intrusion',
    on: 'sections/body',
    fitted: 'after',
    at: { z: sure(60), theta: sure(0) },
    shape: { form: 'pin', diameter: sure(3), tip: sure(tip) },
    ...extra,
  }) as never

describe('float', () => {
  it('narrows the gap to what sticks in by the room in the bore, and does so for certain', () => {
    // Bore 30, sled 29: 0.5 to each side. Fitted gap 0.3: a tip at 15.1 leaves 0.6 on the axis, 0.1 afloat.
    const still = plain({ features: [pin(15.1)] })
    const afloat = plain({ features: [pin(15.1)], insertions: [{ id: 'in', moves: 'sleds/main', lateral: 'floats' }] })
    expect(findingOf(still, 'fitted-after:features/pin:main').status).toBe('clear')
    const f = findingOf(afloat, 'fitted-after:features/pin:main')
    expect(f.margin.worst).toBeCloseTo(0.6 - 0.5 - 0.3, 6)
    expect(f.status).toBe('clash')
  })

  it('is as typed where it is typed', () => {
    const f = findingOf(
      plain({
        features: [pin(15.1)],
        sleds: [{ id: 'main', from: 20, to: 110, diameter: sure(29), float: 0.2 }],
        insertions: [{ id: 'in', moves: 'sleds/main' }],
      }),
      'fitted-after:features/pin:main',
    )
    expect(f.margin.worst).toBeCloseTo(0.6 - 0.2 - 0.3, 6)
    expect(f.status).toBe('clear')
  })
})

describe('states', () => {
  it('look at what is there in each, and name the state of a finding', () => {
    const lever = plain({
      features: [
        { ...(pin(14) as object), fitted: 'before', states: ['closed'], at: { z: sure(130), theta: sure(0) } } as never,
      ],
      sleds: [{ id: 'main', name: 'sled', from: 20, to: 135, diameter: sure(29) }],
      states: [{ id: 'service' }, { id: 'closed' }],
    })
    const all = findingsOf(lever)
    expect(all.get('clearance:sleds/main:closed')?.status).toBe('clash')
    expect(all.get('clearance:sleds/main:closed')?.state).toBe('closed')
    expect(all.get('clearance:sleds/main:service')?.status).toBe('clear')
    expect([...findingsOf(lever, 'service').keys()].some((id) => id.endsWith(':closed'))).toBe(false)
  })

  it('use the open bore of a clamp only where it is open', () => {
    const clamp = plain({
      sections: [
        {
          id: 'body',
          length: sure(150),
          bore: [{ id: 'main' }],
          clamp: { open: sure(30), closed: sure(29.2), openIn: ['service'] },
        },
      ],
      states: [{ id: 'service' }, { id: 'closed' }],
    })
    const all = findingsOf(clamp)
    expect(all.get('clearance:sleds/main:service')?.status).toBe('clear')
    expect(all.get('clearance:sleds/main:closed')?.status).toBe('clash')
  })
})

describe('seats', () => {
  const shouldered = (seats: object[]) =>
    plain({
      sections: [
        {
          id: 'body',
          length: sure(150),
          bore: [
            { id: 'main', diameter: sure(30), length: sure(110) },
            { id: 'neck', name: 'neck', diameter: sure(20) },
          ],
        },
      ],
      sleds: [
        {
          id: 'main',
          name: 'sled',
          from: 20,
          to: { of: 'sections/body/neck', end: 'rear' },
          diameter: sure(29),
          seats: seats as never,
        },
      ],
    })

  it('take a face on a shoulder out of the general clearance, and nothing else', () => {
    expect(findingOf(shouldered([]), 'clearance:sleds/main:stripped').status).toBe('clash')
    const seated = findingsOf(shouldered([{ id: 's', against: 'sections/body/neck', face: 'blade' }]))
    expect(seated.get('clearance:sleds/main:stripped')?.status).toBe('clear')
    expect(seated.get('seat:main:s')?.status).toBe('clear')
  })

  it('judge a ring in its bore by the fit class', () => {
    const ringed = (d: number, fit: string) =>
      findingOf(
        plain({
          sleds: [
            {
              id: 'main',
              name: 'sled',
              from: 20,
              to: 110,
              diameter: sure(28),
              rings: [{ id: 'r', z: 50, length: 5, diameter: sure(d) }],
              seats: [{ id: 's', against: 'sections/body/main', face: 'around', ring: 'r', fit: fit as never }],
            },
          ],
        }),
        'seat:main:s',
      )
    expect(ringed(29.9, 'slide').status).toBe('clear')
    expect(ringed(30.1, 'slide').status).toBe('clash')
    // A press fit may stand over by what its ribs give: 0.15 on the diameter (preset, from memory).
    expect(ringed(30.1, 'press').status).toBe('clear')
    expect(ringed(30.2, 'press').status).toBe('clash')
  })
})

describe('the sled beside the bore', () => {
  it('is clear, unsure or clash as the bore’s interval says', () => {
    const bored = (d: number, half: number) =>
      findingOf(
        plain({ sections: [{ id: 'body', length: sure(150), bore: [{ id: 'main', diameter: about(d, half) }] }] }),
        'clearance:sleds/main:stripped',
      ).status
    expect(bored(29.6, 0.2)).toBe('clear')
    expect(bored(29.4, 0.2)).toBe('unsure')
    expect(bored(29.0, 0.2)).toBe('clash')
  })

  it('clashes where the print varies more than there is room, whatever is measured', () => {
    const f = findingOf(plain({ printer: [{ id: 'p', error: about(0, 0.4) }] }), 'clearance:sleds/main:stripped')
    expect(f.margin.nominal).toBeGreaterThan(0)
    expect(f.status).toBe('clash')
  })

  it('offers a diameter that works, and it does', () => {
    const tight = plain({
      sections: [{ id: 'body', length: sure(150), bore: [{ id: 'main', diameter: about(29.1, 0.1) }] }],
    })
    const fix = findingOf(tight, 'clearance:sleds/main:stripped').fix.find((x) => x.path === 'sleds/main/diameter')
    expect(fix?.value).toBeDefined()
    const mended = {
      ...tight,
      sleds: [{ id: 'main', name: 'sled', from: 20, to: 110, diameter: sure(fix?.value as number) }],
    }
    expect(findingOf(mended, 'clearance:sleds/main:stripped').status).toBe('clear')
  })
})

describe('what is there during a move', () => {
  const mouthPin = (extra: object) =>
    plain({
      features: [
        {
          id: 'pin',
          kind: 'intrusion',
          on: 'sections/body',
          fitted: 'before',
          at: { z: sure(10), theta: sure(0) },
          shape: { form: 'pin', diameter: sure(3), tip: sure(12) },
          ...extra,
        } as never,
      ],
      states: [{ id: 'service' }, { id: 'closed' }],
    })

  it('is everything that is there in any state, where the move names none', () => {
    expect(findingOf(mouthPin({ states: ['service', 'closed'] }), 'way-in:in:sleds/main').status).toBe('clash')
    expect(findingOf(mouthPin({ states: ['closed'] }), 'way-in:in:sleds/main').status).toBe('clash')
  })

  it('is what is there in the state the move names', () => {
    const folded = {
      ...mouthPin({ states: ['closed'] }),
      insertions: [{ id: 'in', moves: 'sleds/main', lateral: 'axis' as const, during: 'service' }],
    }
    expect(findingOf(folded, 'way-in:in:sleds/main').status).toBe('clear')
  })
})
