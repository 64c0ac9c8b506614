import { describe, expect, it } from 'vitest'
import type { SledInput } from '../../../src/project/schema/sled.ts'
import { sure } from '../checks/judged.ts'
import {
  board,
  builder,
  cell,
  faultsOf,
  itemsOf,
  job,
  leaf,
  nest,
  onlyFault,
  planned,
  prober,
  solidOf,
  spring,
} from './planned.ts'

const build = builder()
const probe = prober()
const parts = [cell(), spring(), leaf()]
const made = (construction: SledInput['construction'], sled: Partial<SledInput> = {}, on = parts) =>
  job(
    { construction, ...(on.length > 0 ? { nests: [nest('cell', { gap: 0.2, opening: 0 })] } : {}), ...sled },
    { parts: on },
  )

describe('a full cage', () => {
  it('is solid wherever no nest is', () => {
    const at = probe(made('full-cage'))
    // Behind the pocket, beside it above its middle, in it, and in its mouth.
    expect([at(0, 12, 94), at(0, 12, 50), at(0, 0, 50), at(12, 0, 50)]).toEqual([true, true, false, false])
    expect(build(made('full-cage')).problems).toEqual([])
  })

  it('is what a sled is where nobody says otherwise', () => {
    expect(planned(made(undefined)).plan).toEqual(planned(made('full-cage')).plan)
  })
})

describe('an open cradle', () => {
  it('is open above the middle of each part, with walls at the ends', () => {
    const at = probe(made('open-cradle'))
    expect([at(4, 12, 50), at(-4, 12, 50), at(4, 8, 94), at(0, 0, 50)]).toEqual([false, true, true, false])
    expect(build(made('open-cradle')).problems).toEqual([])
  })

  it('keeps the sides of a board up to its lips', () => {
    const lipped = { nests: [nest('board', { gap: 0.2, lip: 0.5 })] }
    const bay = solidOf(made('open-cradle', lipped, [board()]), 'parts/board/bay', 'box')
    // Board's top 2, gap 0.2, lip as high as the least wall, 1.2.
    expect(bay.x - bay.height / 2).toBeCloseTo(3.4, 9)
  })
})

describe('discs on rods', () => {
  const typed = (discs: SledInput['discs'], sled: Partial<SledInput> = {}, on: typeof parts = []) =>
    made('discs-on-rods', { discs, ...sled }, on)

  it('has a disc at both ends and over both ends of each part, those close together as one', () => {
    const { bodies } = planned(made('discs-on-rods', {}, [cell()])).plan
    const spans = bodies.map((b) => b.items.find((x) => x.nest === 'disc')?.solid)
    // Pocket 19.8 to 85.2: 16.8 is less than 2 from the rear disc's end at 16.
    expect(spans.map((s) => (s?.shape === 'cylinder' ? [s.z0, Number(s.z1.toFixed(6))] : []))).toEqual([
      [10, 22.8],
      [82.2, 88.2],
      [94, 100],
    ])
    expect(bodies.map((b) => b.items[0]?.dimensions[0]).map((d) => [Number(d?.value.toFixed(6)), d?.how])).toEqual([
      [12.8, 'derived'],
      [6, 'default'],
      [6, 'default'],
    ])
  })

  it('prints each on its own, with holes for three rods', () => {
    const slender = cell({ body: { shape: 'cylinder', diameter: sure(12), length: sure(65) } })
    const project = made('discs-on-rods', {}, [slender])
    expect(planned(project).hardware).toHaveLength(3)
    const { meshes, problems } = build(project)
    expect([meshes.length, problems]).toEqual([3, []])
    for (const b of planned(project).plan.bodies) expect(b.items.filter((x) => x.nest === 'rod')).toHaveLength(3)
  })

  it('takes typed discs where they are typed', () => {
    const { bodies } = planned(
      typed([
        { id: 'a', z: 10 },
        { id: 'b', z: 60, thickness: 8 },
      ]),
    ).plan
    expect(bodies.map((b) => b.id)).toEqual(['main-a', 'main-b'])
    expect(bodies.map((b) => b.items[0]?.dimensions[0]?.how)).toEqual(['default', 'typed'])
    expect(bodies[1]?.items[0]?.solid).toMatchObject({ z0: 60, z1: 68, r0: 14 })
  })

  it.each<[string, NonNullable<SledInput['discs']>, string, string]>([
    [
      'in each other',
      [
        { id: 'a', z: 40 },
        { id: 'b', z: 43 },
      ],
      'b/z',
      'z 46.0',
    ],
    ['beyond the blade end', [{ id: 'a', z: 96 }], 'a/z', 'z 94.0'],
    ['before the rear end', [{ id: 'a', z: 8 }], 'a/z', 'z 10.0'],
    ['thinner than a wall', [{ id: 'a', z: 40, thickness: 0.5 }], 'a/thickness', '1.2'],
  ])('cannot have discs %s', (_what, discs, field, nearest) => {
    const fault = onlyFault(typed(discs))
    expect(fault.path).toBe(`sleds/main/discs/${field}`)
    expect(fault.hint).toContain(nearest)
  })

  it('holds what meets a disc, and says what none does', () => {
    const discs = [
      { id: 'a', z: 10, thickness: 12 },
      { id: 'b', z: 94 },
    ]
    const slender = (z: number, length: number, extra: object = {}) =>
      cell({ at: { z: sure(z) }, body: { shape: 'cylinder', diameter: sure(12), length: sure(length) }, ...extra })
    const faults = (...on: typeof parts) => faultsOf(typed(discs, {}, on)).map((f) => `${f.path} ${f.got}`)
    expect(faults(slender(20, 65), spring())).toEqual([])
    // No disc is behind the face at 25 that the spring stands on.
    expect(faults(slender(30, 65), spring({ at: { z: sure(25) } }))).toEqual(['parts/spring/at/z "stands at z 25.0"'])
    expect(faults(slender(30, 60))).toEqual(['parts/cell/at/z "z 30.0 to 90.0"'])
    expect(faults(slender(30, 60, { held: 'glued' }))).toEqual([])
  })

  it('carries no keys, towers or cross walls, and says so of each', () => {
    const faults = faultsOf(
      typed([{ id: 'a', z: 40 }], {
        keys: [{ id: 'k', theta: 0 }],
        towers: [{ id: 't', theta: 0, outer: 14.5, from: 40, to: 50 }],
        bulkheads: [{ id: 'b', z: 90 }],
      }),
    )
    expect(faults.map((f) => f.path)).toEqual(['sleds/main/keys/k', 'sleds/main/towers/t', 'sleds/main/bulkheads/b'])
    for (const f of faults) expect(f.hint).toContain('construction')
  })
})

it.each(['full-cage', 'open-cradle', 'discs-on-rods'] as const)(
  'every dimension of a %s says whether it is typed, default or derived, where to type it, and who says so',
  (construction) => {
    const all = itemsOf(planned(made(construction, {}, construction === 'discs-on-rods' ? [cell()] : parts)).plan)
    const dimensions = all.flatMap((x) => x.dimensions)
    expect(dimensions.length).toBeGreaterThan(8)
    const silent = dimensions.filter(
      (d) => d.source === '' || d.path === '' || !['typed', 'default', 'derived'].includes(d.how),
    )
    expect(silent).toEqual([])
  },
)
