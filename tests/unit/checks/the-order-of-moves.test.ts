import { describe, expect, it } from 'vitest'
import { findingOf, sure } from './judged.ts'
import { bore, job } from './smallest.ts'

/** What an earlier move has put there is in the way of a later one, wherever it sits. */

const plug = (id: string, z: number, extra: object = {}) => ({
  id,
  kind: 'other' as const,
  on: 'sleds/main',
  goesIn: 'after' as const,
  body: { shape: 'cylinder' as const, diameter: sure(28), length: sure(6) },
  at: { z },
  ...extra,
})
const through = (moves: string, of = 'sections/tube', end: 'rear' | 'blade' = 'rear') => ({
  id: moves.replace('/', '-'),
  moves,
  through: { of, end },
  lateral: 'axis' as const,
})

describe('a plug that sits on the sled and goes in by itself', () => {
  it('before the sled stands in its way', () => {
    const insertions = [through('parts/plug'), through('sleds/main')]
    // The plug of 28 and the sled of 20 are both whole discs: drawn through, the sled overlaps by both radii.
    expect(findingOf(job({ parts: [plug('plug', 1)], insertions }), 'way-in:sleds-main:sleds/main').status).toBe(
      'clash',
    )
  })

  it('stands in the way of the next one', () => {
    const insertions = [through('sleds/main'), through('parts/one'), through('parts/two')]
    const two = job({ parts: [plug('one', 1), plug('two', 3)], insertions })
    expect(findingOf(two, 'way-in:parts-two:parts/two').status).toBe('clash')
    expect(findingOf(two, 'way-in:parts-one:parts/one').status).toBe('clear')
  })
})

describe('a tube put on before the sled', () => {
  const cap = { id: 'cap', length: sure(30), bore: [{ id: 'c', diameter: sure(15) }] }
  const moves = [through('sections/cap', 'sections/tube', 'blade'), through('sleds/main', 'sections/tube', 'blade')]

  it('is passed by the sled: 7.5 less 10 less the clearance of 0.15', () => {
    const shut = job({ sections: [bore(), cap], insertions: moves })
    expect(findingOf(shut, 'way-in:sleds-main:sleds/main').margin.worst).toBeCloseTo(7.5 - 10 - 0.15, 6)
  })

  it('is not there where it is put on last', () => {
    const open = job({ sections: [bore(), cap], insertions: moves.toReversed() })
    expect(findingOf(open, 'way-in:sleds-main:sleds/main').margin.worst).toBeCloseTo(15 - 10 - 0.15, 6)
  })

  it('passes what stands out of the wall it comes over', () => {
    const stub = { ...plug('stub', 95, { on: 'sections/tube', goesIn: 'before' }), at: { z: sure(95) } }
    const body = { shape: 'cylinder' as const, diameter: sure(20), length: sure(10) }
    const over = job({ sections: [bore(), cap], parts: [{ ...stub, body }], insertions: moves.toReversed() })
    // A stub of 20 goes 5 mm into a cap of 15.
    expect(findingOf(over, 'way-in:sections-cap:parts/stub').margin.worst).toBeCloseTo(7.5 - 10 - 0.15, 6)
  })
})

describe('a face on its shoulder', () => {
  const neck = {
    id: 'tube',
    length: sure(100),
    bore: [
      { id: 'main', diameter: sure(30), length: sure(60) },
      { id: 'neck', diameter: sure(20) },
    ],
  }
  const seats = [{ id: 's', against: 'sections/tube/neck', face: 'blade' as const }]
  const bodies = [
    { from: 10, to: 59, diameter: 18 },
    { from: 59, to: 60, diameter: 28 },
  ]
  const seated = (extra: object, end: 'rear' | 'blade' = 'rear') =>
    job({
      sections: [neck],
      sleds: [{ id: 'main', from: 10, to: 60, seats, ...extra }],
      insertions: [through('sleds/main', 'sections/tube', end)],
    })

  it('is met by a head that comes from the other side', () => {
    expect(findingOf(seated({ bodies }), 'way-in:sleds-main:sleds/main').status).toBe('clear')
  })

  it('is not gone through by a head that comes past it', () => {
    const found = findingOf(seated({ bodies }, 'blade'), 'way-in:sleds-main:sleds/main')
    expect(found.margin.worst).toBeCloseTo(10 - 14 - 0.15, 6)
  })

  it('excuses nothing that goes on past the face', () => {
    const ring = { diameter: 28, rings: [{ id: 'r', z: 59.5, length: 6, diameter: 28 }] }
    expect(findingOf(seated(ring), 'clearance:sleds/main:stripped').margin.worst).toBeCloseTo(10 - 14 - 0.15, 6)
  })
})
