import { describe, expect, it } from 'vitest'
import { applyFix } from '../../../src/project/apply-fix.ts'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { answerTo, demo, projectOf } from '../job/demo-answer.ts'
import { about, findingOf, findingsOf, perfect, sure } from './judged.ts'

/** A bore of 30 with a neck of 26 from z 40 to 50, and a sled of 25 with a ring of 28 at its front. */
const necked = (extra: Partial<ProjectInput> = {}): ProjectInput => ({
  format: 'sledwright',
  version: 1,
  sections: [
    {
      id: 'body',
      name: 'body',
      length: sure(150),
      bore: [
        { id: 'rear', name: 'rear bore', length: sure(40), diameter: sure(30) },
        { id: 'neck', name: 'neck', length: sure(10), diameter: sure(26) },
        { id: 'front', name: 'front bore', diameter: sure(30) },
      ],
    },
  ],
  sleds: [
    {
      id: 'main',
      name: 'sled',
      from: 20,
      to: 110,
      diameter: sure(25),
      rings: [{ id: 'ring', z: 100, length: 5, diameter: sure(28) }],
    },
  ],
  insertions: [{ id: 'in', moves: 'sleds/main', through: { of: 'sections/body', end: 'rear' }, lateral: 'axis' }],
  printer: perfect,
  ...extra,
})

describe('straight insertion', () => {
  it('catches a part that sits well in place but does not come through a neck on the way', () => {
    const all = findingsOf(necked())
    expect(all.get('way-in:in:sleds/main')?.status).toBe('clash')
    expect(all.get('clearance:sleds/main:stripped')?.status).toBe('clear')
  })

  it('tells the depth of first touch by the blade-side face: ring front 105 meets the neck at 40 with the nose at 45', () => {
    const f = findingOf(necked(), 'way-in:in:sleds/main')
    // The nose at 110 is 5 ahead of the ring's front, so the ring's front stands at 40 when the nose stands at 45.
    expect(f.why).toContain('at depth 45.0 mm')
    expect(f.margin.nominal).toBeCloseTo(13 - 14 - 0.15, 6)
  })

  it('tells the largest diameter that would pass: the neck less twice the clearance', () => {
    const f = findingOf(necked(), 'way-in:in:sleds/main')
    expect(f.why).toContain(`${(26 - 2 * 0.15).toFixed(2)} mm in diameter`)
  })

  it('passes from the other end, where no neck lies on the way', () => {
    const f = findingOf(
      necked({
        sections: [
          {
            id: 'body',
            length: sure(150),
            bore: [
              { id: 'neck', length: sure(15), diameter: sure(26) },
              { id: 'front', diameter: sure(30) },
            ],
          },
        ],
        sleds: [
          {
            id: 'main',
            name: 'sled',
            from: 20,
            to: 110,
            diameter: sure(25),
            rings: [{ id: 'ring', z: 100, length: 5, diameter: sure(28) }],
          },
        ],
        insertions: [
          { id: 'in', moves: 'sleds/main', through: { of: 'sections/body', end: 'blade' }, lateral: 'axis' },
        ],
      }),
      'way-in:in:sleds/main',
    )
    expect(f.status).toBe('clear')
  })

  it('counts only what is there: a pin fitted after is no obstacle on the way, one fitted before is', () => {
    const pin = (fitted: 'before' | 'after') =>
      necked({
        features: [
          {
            id: 'pin',
            kind: 'intrusion',
            on: 'sections/body',
            fitted,
            at: { z: sure(15), theta: sure(0) },
            shape: { form: 'pin', diameter: sure(3), tip: sure(12) },
          },
        ],
        sleds: [{ id: 'main', from: 20, to: 110, diameter: sure(25) }],
      })
    expect(findingOf(pin('before'), 'way-in:in:sleds/main').status).toBe('clash')
    expect(findingOf(pin('after'), 'way-in:in:sleds/main').status).toBe('clear')
  })

  it('a section outside the mouth is not there yet', () => {
    const two = necked({
      sections: [
        { id: 'pommel', length: sure(15), bore: [{ id: 'cap', kind: 'solid' }] },
        { id: 'body', length: sure(150), bore: [{ id: 'main', diameter: sure(30) }] },
      ],
      sleds: [{ id: 'main', name: 'sled', from: 20, to: 110, diameter: sure(28) }],
    })
    expect(findingOf(two, 'way-in:in:sleds/main').status).toBe('clear')
    const before = {
      ...two,
      insertions: [{ id: 'in', moves: 'sleds/main', through: { of: 'sections/pommel', end: 'rear' as const } }],
    }
    expect(findingOf(before, 'way-in:in:sleds/main').status).toBe('clash')
  })

  it('a tube drawn over a fixed unit passes it the other way', () => {
    // The tube's neck lies at its rear. Drawn over the sled from the blade end towards the rear, the neck passes all of it.
    const over = necked({
      sections: [
        { id: 'core', length: sure(10), bore: [{ id: 'b', diameter: sure(30) }] },
        {
          id: 'tube',
          length: sure(140),
          bore: [
            { id: 'neck', length: sure(5), diameter: sure(24) },
            { id: 'wide', diameter: sure(30) },
          ],
        },
      ],
      sleds: [{ id: 'main', name: 'sled', from: 20, to: 110, diameter: sure(25) }],
      insertions: [
        { id: 'over', moves: 'sections/tube', through: { of: 'sections/core', end: 'blade' }, lateral: 'axis' },
      ],
    })
    expect(findingOf(over, 'way-in:over:sleds/main').status).toBe('clash')
  })

  it('is unsure where the neck is not known well enough, and says which reading decides', () => {
    const f = findingOf(
      necked({
        sections: [
          {
            id: 'body',
            length: sure(150),
            bore: [
              { id: 'neck', length: sure(40), diameter: about(28.4, 0.2) },
              { id: 'front', diameter: sure(30) },
            ],
          },
        ],
      }),
      'way-in:in:sleds/main',
    )
    // (28.2 − 28) / 2 − 0.15 < 0 < (28.6 − 28) / 2 − 0.15
    expect(f.status).toBe('unsure')
    expect(f.probability).toBeCloseTo((28.6 - 28.3) / 0.4, 2)
    expect(f.contributors[0]?.path).toBe('sections/body/bore/neck/diameter')
    expect(f.fix.some((x) => x.path === 'sections/body/bore/neck/diameter')).toBe(true)
  })
})

describe('a ring that does not come through the mouth', () => {
  it('is offered as wide as the mouth lets it through, and then it does', () => {
    const project = projectOf(demo('weir-lantern'))
    const [fix] = answerTo(project).findings[0]?.fix ?? []
    expect(fix).toMatchObject({ path: 'sleds/main/rings/front/diameter', value: 28.4 })
    const mended = fix && applyFix(project, fix)
    expect(answerTo(mended).verdict).toBe('clear')
  })
})
