import { describe, expect, it } from 'vitest'
import { insertionWays } from '../../../src/papers/insertion-way.ts'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { answerTo } from '../job/demo-answer.ts'
import { problemsOf } from '../resolve/project-of.ts'

/** Two tubes end to end, each with its bore steps; a sled that lies in both goes in through the second's rear mouth. */
const job = (
  rearBore: { diameter: number; length?: number }[],
  more: { sled?: object; moves?: object[] } = {},
): ProjectInput =>
  ({
    format: 'sledwright',
    version: 1,
    hilts: [{ id: 'h' }],
    sections: [
      { id: 'a', length: 80, bore: rearBore, outside: [{ diameter: 36 }] },
      { id: 'b', length: 80, bore: [{ diameter: 30 }], outside: [{ diameter: 36 }] },
    ],
    sleds: [{ id: 'main', from: 5, to: 145, outside: 'throat', ...more.sled }],
    insertions: [{ id: 'in', moves: 'sleds/main', through: { of: 'sections/b', end: 'rear' } }, ...(more.moves ?? [])],
  }) as ProjectInput

const neck = [{ diameter: 30, length: 60 }, { diameter: 25 }]
const way = (project: ProjectInput, move: string) =>
  answerTo(project).findings.filter((f) => f.id.startsWith(`way-in:${move}:`))

describe('a tube that must come over a sled afterwards', () => {
  it('is taken to be drawn straight over it where nobody says how, and its neck meets what is wider behind it', () => {
    const { verdict, assembly } = answerTo(job(neck))
    expect(verdict).toBe('clash')
    const [found] = way(job(neck), 'a-over')
    expect(found?.status).toBe('clash')
    // The sled is as wide as the bore of 30 leaves it before the neck of 25.
    expect(found?.margin.nominal).toBeLessThan(-2)
    expect(assembly.assumptions.join()).toContain('drawn straight over')
  })

  it('goes over it where its bore is as wide all along', () => {
    expect(answerTo(job([{ diameter: 30 }])).verdict).toBe('clear')
    expect(way(job([{ diameter: 30 }]), 'a-over').map((f) => f.status)).toEqual(['clear'])
  })

  it('is told apart from the way of the sled itself', () => {
    expect(way(job(neck), 'a-over')[0]?.title).toMatch(/^main as a comes over it: /)
    expect(way(job(neck), 'in')[0]?.title).toMatch(/^main on the way in: /)
  })

  it('stands there, and is drawn so, where the sled goes in through its own mouth before it is said to move', () => {
    const through = job([{ diameter: 30 }], {
      moves: [{ id: 'over', moves: 'sections/a', through: { of: 'sections/a', end: 'blade' } }],
    })
    const own = { ...through.insertions?.[0], through: { of: 'sections/a', end: 'rear' } }
    const { assembly } = answerTo({ ...through, insertions: [own, ...(through.insertions?.slice(1) ?? [])] })
    const [sledIn] = insertionWays(assembly)
    expect(sledIn?.absent).toEqual([])
    expect(insertionWays(answerTo(through).assembly)[0]?.absent).toEqual(['sections/a'])
  })

  it('comes as it is said to come', () => {
    const said = job(neck, {
      moves: [{ id: 'over', moves: 'sections/a', through: { of: 'sections/a', end: 'blade' } }],
    })
    expect(way(said, 'a-over')).toEqual([])
    expect(way(said, 'over').map((f) => f.status)).toEqual(['clash'])
  })

  it('is of no concern to a sled that ends before it', () => {
    expect(way(job(neck, { sled: { from: 81 } }), 'a-over')).toEqual([])
  })
})

describe('a tube that must come over a part in the wall of another', () => {
  const plug = (more: object = {}) => ({
    id: 'plug',
    kind: 'other',
    on: 'sections/b',
    body: { shape: 'cylinder', diameter: 20, length: 20 },
    at: { z: 70 },
    ...more,
  })
  const withPlug = (bore: number, more?: object): ProjectInput =>
    ({ ...job([{ diameter: bore }], { sled: { from: 92 } }), parts: [plug(more)] }) as ProjectInput

  it('is asked for where nobody says how it comes, before any sled', () => {
    expect(way(withPlug(15), 'a-over-rear').map((f) => f.status)).toEqual(['clash'])
    expect(way(withPlug(30), 'a-over-rear')).toEqual([])
    expect(answerTo(withPlug(30)).assembly.assumptions.join()).toContain('before all other moves')
  })

  it('is not, where the part comes later or ends before it', () => {
    expect(way(withPlug(15, { goesIn: 'after' }), 'a-over-rear')).toEqual([])
    expect(way(withPlug(15, { at: { z: 80 } }), 'a-over-rear')).toEqual([])
  })
})

describe('how wide a sled may be', () => {
  it('is also what leaves it room in a tube that comes later', () => {
    const pieces = answerTo(job(neck)).assembly.sleds[0]?.pieces ?? []
    const at = (z: number) => pieces.find((p) => z > p.z0 && z < p.z1)?.radius
    expect(at(70)).toBeLessThan(12.5)
    expect(at(70)).toBeGreaterThan(11.5)
    expect(at(30)).toBeLessThan(15)
    expect(at(30)).toBeGreaterThan(14)
  })

  it('where it stands out of every tube, as wide as the narrowest of the rest', () => {
    const out = job(neck, { sled: { from: -5, to: 20 } })
    const pieces = answerTo(out).assembly.sleds[0]?.pieces ?? []
    expect(pieces.every((p) => Number.isFinite(p.radius) && p.radius < 15)).toBe(true)
  })
})

describe('how far two sections engage', () => {
  const joined = (engagement?: number, opens = true): ProjectInput => ({
    ...job([{ diameter: 30 }]),
    joints: [
      {
        id: 'j',
        kind: 'threaded',
        rear: 'a',
        blade: 'b',
        opens,
        wiresCross: false,
        ...(engagement === undefined ? {} : { engagement }),
      },
    ],
  })
  const told = (project: ProjectInput) => answerTo(project).assembly.assumptions.filter((a) => a.includes('end to end'))

  it('is told as an assumption where their joint does not say', () => {
    expect(told(joined())).toHaveLength(1)
    expect(told(joined())[0]).toContain('a and b')
  })

  it('is none where it is said, be it 0, or where there is no joint', () => {
    expect(told(joined(0))).toEqual([])
    expect(told(job([{ diameter: 30 }]))).toEqual([])
  })

  it('decides nothing where they are joined for good: no sled goes in through that mouth', () => {
    expect(problemsOf(joined(9)).map((p) => p.path)).toEqual([])
    expect(problemsOf(joined(9, false)).map((p) => `${p.path} ${p.code}`)).toEqual([
      'insertions/in/through contradiction',
    ])
  })
})

describe('two sections that engage', () => {
  const pommel = (outside: object[], thread?: string): ProjectInput => ({
    ...job([{ diameter: 20 }]),
    sections: [
      { id: 'a', name: 'pommel', length: 40, bore: [{ diameter: 20 }], outside },
      {
        id: 'b',
        length: 100,
        bore: thread ? [{ id: 'm', kind: 'threaded', thread, length: 12 }, { diameter: 32.5 }] : [{ diameter: 32.5 }],
        outside: [{ diameter: 38 }],
      },
    ] as NonNullable<ProjectInput['sections']>,
    joints: [{ id: 'j', kind: 'threaded', rear: 'a', blade: 'b', opens: true, engagement: 8 }],
    sleds: [{ id: 'main', from: 42, to: 110 }],
  })
  const lacking = (project: ProjectInput) => answerTo(project).notChecked.map((n) => n.path)

  it('are not clear where neither goes into the other', () => {
    const { verdict, notChecked } = answerTo(pommel([{ diameter: 38.1 }]))
    expect(verdict).toBe('unsure')
    expect(notChecked[0]?.path).toBe('joints/j/engagement')
    expect(notChecked[0]?.hint).toMatch(/outside, 38\.\d+ at the least, does not go into the 32\.\d+ at most there/)
  })

  it('are, where one has the narrower outside that goes in, though its lengths are off by a few tenths', () => {
    expect(lacking(pommel([{ diameter: 38.1, length: 32 }, { diameter: 32.2 }]))).toEqual([])
    expect(lacking(pommel([{ diameter: 38.1, length: 32.3 }, { diameter: 32.2 }]))).toEqual([])
    expect(lacking(pommel([{ diameter: 38.1, length: 34 }, { diameter: 32.2 }]))).toEqual(['joints/j/engagement'])
  })

  it('go into a thread as far as its roots', () => {
    expect(lacking(pommel([{ diameter: 38.1, length: 32 }, { diameter: 33.9 }], 'M34x1'))).toEqual([])
    expect(lacking(pommel([{ diameter: 38.1, length: 32 }, { diameter: 34.4 }], 'M34x1'))).toEqual([
      'joints/j/engagement',
    ])
  })

  it('are not told of where an outside was not measured', () => {
    expect(lacking(pommel([]))).toEqual([])
  })
})
