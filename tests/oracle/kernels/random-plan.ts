import type { PlanBody, PlanItem, PlanSolid } from '../../../geometry/plan/plan.ts'
import { type Rng, rngOf } from '../../prove/rng.ts'

/**
 * A random printed body with the make-up of a sled: an outside of stepped pieces, rings, keys and towers; nests in a row
 * along it; ways for wires and rods through it; windows and holes across it; arms, lips and walls that are put in after
 * the nests. Invented sizes. The same seed, the same body.
 */
export function randomPlan(seed: number): PlanBody {
  const rng = rngOf(seed)
  const kind = rng.pick(['cage', 'cage', 'cage', 'cradle', 'cradle', 'disc'] as const)
  const sled = kind === 'disc' ? randomDisc(rng) : randomOutside(rng)
  const bays = kind === 'disc' ? discNests(rng, sled) : nestsAlong(rng, sled, kind)
  const late = bays.some((x) => x.stage === 2)
  const across = [...ways(rng, sled), ...holes(rng, sled)]
  const items = [
    ...sled.items,
    ...bays,
    ...across.map((x) => (late && rng.chance(0.6) ? { ...x, stage: 2 as const } : x)),
  ]
  return { id: `random-${seed}`, name: kind, items: items.map((x, i) => ({ ...rest, ...x, id: `${x.id}-${i}` })) }
}

type Item = Pick<PlanItem, 'id' | 'op' | 'solid'> & { stage?: 2 }
const rest = { by: 'sleds/random', nest: 'random', dimensions: [] }

/** The outside before anything is cut: R its least radius, from z0 to z1. */
interface Outside {
  readonly items: Item[]
  readonly R: number
  readonly most: number
  readonly z0: number
  readonly z1: number
}

const add = (id: string, solid: PlanSolid): Item => ({ id, op: 'add', solid })
const cut = (id: string, solid: PlanSolid): Item => ({ id, op: 'cut', solid })
const late = (x: Item): Item => ({ ...x, stage: 2 })
const rod = (x: number, y: number, r: number, z0: number, z1: number): PlanSolid => ({
  shape: 'cylinder',
  x,
  y,
  z0,
  z1,
  r0: r,
  r1: r,
})
const cone = (z0: number, z1: number, r0: number, r1: number): PlanSolid => ({
  shape: 'cylinder',
  x: 0,
  y: 0,
  z0,
  z1,
  r0,
  r1,
})
const polar = (r: number, theta: number): [number, number] => [
  r * Math.cos((theta * Math.PI) / 180),
  r * Math.sin((theta * Math.PI) / 180),
]

/** A block seen from a clock angle: from height v0 to v1 along it, `aside` off the middle. */
function block(theta: number, aside: number, v0: number, v1: number, width: number, z0: number, z1: number): PlanSolid {
  const [c, s] = polar(1, theta)
  const v = (v0 + v1) / 2
  return { shape: 'box', x: v * c - aside * s, y: v * s + aside * c, z0, z1, width, height: v1 - v0, facing: theta }
}

function randomOutside(rng: Rng): Outside {
  const z0 = rng.between(-20, 60, 1)
  const lengths = Array.from({ length: rng.whole(1, 3) }, () => rng.between(25, 60, 1))
  const radii = lengths.reduce<number[]>(
    (list, _, i) => [...list, i === 0 ? rng.between(9.5, 16.5) : (list[i - 1] as number) - rng.between(0.3, 1.5)],
    [],
  )
  const z1 = z0 + lengths.reduce((a, b) => a + b, 0)
  const chamfer = rng.between(0.3, 0.8)
  const items: Item[] = []
  let z = z0
  for (const [i, length] of lengths.entries()) {
    const r = radii[i] as number
    const [first, last] = [i === 0, i === lengths.length - 1]
    // A wider piece reaches a little into the next one, so that no two faces merely touch.
    items.push(add('piece', rod(0, 0, r, z + (first ? chamfer : -0.05), z + length - (last ? chamfer : 0))))
    if (first) items.push(add('chamfer', cone(z, z + chamfer, r - chamfer, r)))
    if (last) items.push(add('chamfer', cone(z + length - chamfer, z + length, r, r - chamfer)))
    z += length
  }
  const [widest, R] = [radii[0] as number, radii.at(-1) as number]
  const place = (length: number) => rng.between(z0 + 1, z1 - length - 1, 1)
  if (rng.chance(0.4)) {
    const at = place(5)
    items.push(add('ring', rod(0, 0, widest + rng.between(0.4, 1.2), at, at + rng.between(3, 5))))
  }
  if (rng.chance(0.4)) {
    const at = place(12)
    items.push(
      add('key', block(rng.whole(0, 359), 0, R - 1.5, widest + rng.between(0.6, 1.6), rng.between(3, 5), at, at + 11)),
    )
  }
  if (rng.chance(0.4)) {
    const at = place(14)
    const outer = widest + rng.between(0.5, 2)
    items.push(
      add('tower', {
        shape: 'ring-sector',
        z0: at,
        z1: at + rng.between(8, 13),
        rIn: R - 2,
        rOut: outer,
        theta: rng.whole(0, 359),
        half: rng.between(10, 70),
      }),
    )
  }
  return { items, R, most: widest + 2, z0, z1 }
}

function randomDisc(rng: Rng): Outside {
  const [z0, R] = [rng.between(0, 80, 1), rng.between(9.5, 16)]
  const z1 = z0 + rng.between(4, 9, 1)
  return { items: [add('disc', rod(0, 0, R, z0, z1))], R, most: R, z0, z1 }
}

/** What passes a disc: a round or square nest through it or into it, open to one side or closed. */
function discNests(rng: Rng, { R, z0, z1 }: Outside): Item[] {
  const from = rng.chance(0.5) ? z0 - 1 : z0 + rng.between(1.5, 3)
  const theta = rng.whole(0, 359)
  if (rng.chance(0.4))
    return [cut('shelf', block(theta, 0, rng.between(-R / 3, 0), R + 1, rng.between(6, R), from, z1 + 1))]
  const r = rng.between(3.5, 0.7 * R)
  const [x, y] = polar(rng.between(0, R - r), theta)
  const pocket = cut('pocket', rod(x, y, r, from, z1 + 1))
  const v = Math.hypot(x, y)
  return rng.chance(0.5)
    ? [pocket, cut('mouth', block(theta, 0, v, R + 1, rng.between(r, 2 * r), from, z1 + 1))]
    : [pocket]
}

/** One nest after the other with walls between, as long as there is room. */
function nestsAlong(rng: Rng, sled: Outside, kind: 'cage' | 'cradle'): Item[] {
  const items: Item[] = []
  let z = sled.z0 + rng.between(2, 5)
  while (items.length < 24) {
    const length = rng.between(6, 45, 1)
    if (z + length > sled.z1 - 2) break
    const nest =
      kind === 'cradle'
        ? rng.pick([cradle, shelf, cradle, recess])
        : rng.pick([pocket, shelf, pocket, recess, cup, profile])
    items.push(...nest(rng, sled, z, z + length))
    z += length + rng.between(1.5, 5)
    if (rng.chance(0.25)) items.push(late(add('wall', rod(0, 0, sled.R, z - 1.4, z - 0.2))))
  }
  return items
}

function pocket(rng: Rng, { R, most }: Outside, z0: number, z1: number): Item[] {
  const r = rng.between(4, 0.78 * R)
  const theta = rng.whole(0, 359)
  const e = rng.between(0, R - r - 0.6)
  const [x, y] = polar(e, theta)
  const items = [cut('pocket', rod(x, y, r, z0, z1))]
  if (rng.chance(0.8))
    items.push(cut('mouth', block(theta, 0, e, most + 1, rng.chance(0.5) ? 2 * r : rng.between(r, 2 * r), z0, z1)))
  if (rng.chance(0.3)) items.push(cut('seat', rod(x, y, r * rng.between(0.3, 0.6), z0 - 0.8, z0 + 0.05)))
  if (rng.chance(0.3)) items.push(cut('notch', block(theta, most / 2, e - 0.5 * r, most + 1, most, z0 + 1, z0 + 4)))
  return items
}

function cradle(rng: Rng, { R, most }: Outside, z0: number, z1: number): Item[] {
  const r = rng.between(5, 0.75 * R)
  const theta = rng.whole(0, 359)
  const e = rng.between(0, Math.min(2, R - r - 0.6))
  const [x, y] = polar(e, theta)
  const [arm, root, wrap] = [rng.between(1.2, 2), rng.between(50, 70), rng.between(5, 30)]
  const plane = e - (r + arm / 2) * Math.cos((root * Math.PI) / 180)
  const length = Math.min(rng.between(3, 12), (z1 - z0) / 2.2)
  const half = (90 + wrap - root + 8) / 2
  const arms = [z0 + 0.3, z1 - 0.3 - length].flatMap((z) =>
    [-1, 1].map((side) =>
      late(
        add('arm', {
          shape: 'ring-sector',
          x,
          y,
          z0: z,
          z1: z + length,
          rIn: r,
          rOut: r + arm,
          theta: theta + 180 + side * (root - 8 + half),
          half,
        }),
      ),
    ),
  )
  const trim = late(
    cut('trim', { shape: 'ring-sector', z0, z1, rIn: R, rOut: R + 2 * arm + e + 5, theta: 0, half: 180 }),
  )
  return [
    cut('pocket', rod(x, y, r, z0, z1)),
    cut('bay', block(theta, 0, plane, most + 1, 4 * most, z0, z1)),
    ...arms,
    trim,
  ]
}

function shelf(rng: Rng, { R, most }: Outside, z0: number, z1: number): Item[] {
  const theta = rng.whole(0, 359)
  const bottom = rng.between(-0.45 * R, 0.4 * R)
  const width = rng.between(0.7 * R, 1.3 * R)
  const items = [cut('shelf', block(theta, 0, bottom, most + 1, width, z0, z1))]
  const middle = (z0 + z1) / 2
  if (rng.chance(0.5))
    items.push(
      cut('keep-out', block(theta, rng.between(-2, 2), bottom - 1.6, bottom + 0.05, 0.6 * width, z0 + 1, middle)),
    )
  if (rng.chance(0.4)) {
    const top = bottom + 2
    for (const side of [-1, 1])
      items.push(
        late(add('lip', block(theta, side * (width / 2 + 0.1), top, top + 0.8, 1.1, z0, Math.min(z0 + 5, z1)))),
      )
  }
  return items
}

function recess(rng: Rng, { R, most }: Outside, z0: number, z1: number): Item[] {
  const [theta, half] = [rng.whole(0, 359), rng.pick([rng.between(10, 85), rng.between(10, 85), 180])]
  const rIn = half === 180 ? rng.between(0.6 * R, 0.85 * R) : rng.between(0.2 * R, 0.8 * R)
  return [cut('recess', { shape: 'ring-sector', z0, z1, rIn, rOut: most + 1, theta, half })]
}

function cup(rng: Rng, { R }: Outside, z0: number, z1: number): Item[] {
  const r = rng.between(0.5 * R, 0.85 * R)
  const step = rng.between(z0 + 1, z1 - 1)
  const tapered: PlanSolid = { ...cone(z0 + 0.5, step + 0.05, 0.45 * r, rng.between(0.5, 0.8) * r) }
  return [
    cut('cup', rod(0, 0, r, step, z1)),
    cut('throat', rng.chance(0.5) ? tapered : rod(0, 0, 0.7 * r, z0, step + 0.05)),
  ]
}

/** An outline with a corner that looks inwards, straight along the axis. */
function profile(rng: Rng, { R }: Outside, z0: number, z1: number): Item[] {
  const w = rng.between(0.3 * R, 0.6 * R)
  const [x, y] = [rng.between(-2, 2), rng.between(-2, 2)]
  const corners = [
    [-w, -w],
    [w, -w],
    [w, w],
    [0.4 * w, w],
    [0, rng.between(0.2 * w, 0.7 * w)],
    [-0.5 * w, w],
    [-w, w],
  ] as const
  return [cut('profile', { shape: 'extruded', points: corners.map(([a, b]) => [x + a, y + b] as const), z0, z1 })]
}

/** Ways right through: rods, a round channel, a groove open to the outside. */
function ways(rng: Rng, { R, most, z0, z1 }: Outside): Item[] {
  const items: Item[] = []
  for (let k = rng.whole(0, 3); k > 0; k--) {
    const r = rng.between(1, 2)
    const [x, y] = polar(R - r - rng.between(0.5, 1.5), rng.whole(0, 359))
    items.push(cut('rod', rod(x, y, r, z0 - 1, z1 + 1)))
  }
  if (rng.chance(0.4)) {
    const [theta, w] = [rng.whole(0, 359), rng.between(1.5, 4)]
    const [x, y] = polar(R - w / 2, theta)
    items.push(cut('channel', rod(x, y, w / 2, z0 - 1, z1 + 1)))
    items.push(cut('groove', block(theta, 0, R - w / 2, most + 1, w, z0 - 1, z1 + 1)))
  }
  return items
}

/** Across the axis: radial holes, windows, a slot with slanted sides; and a tongue that stands out of the blade end. */
function holes(rng: Rng, { R, most, z0, z1 }: Outside): Item[] {
  const items: Item[] = []
  for (let k = rng.whole(0, 4); k > 0; k--)
    items.push(
      cut('hole', {
        shape: 'spoke',
        z: rng.between(z0 + 2, z1 - 2),
        theta: rng.whole(0, 359),
        rIn: rng.between(0, R / 2),
        rOut: most + 1,
        radius: rng.between(0.6, 2.2),
      }),
    )
  if (rng.chance(0.4)) {
    const at = rng.between(z0, z1 - 6)
    items.push(
      cut(
        'window',
        block(
          rng.whole(0, 359),
          0,
          rng.between(0.4 * R, 0.8 * R),
          most + 1,
          rng.between(3, 8),
          at,
          at + rng.between(3, 6),
        ),
      ),
    )
  }
  if (rng.chance(0.4)) {
    const [at, w] = [rng.between(z0 + 1, z1 - 4), rng.between(1, 3)]
    const points = [
      [-w, at],
      [w, at],
      [1.6 * w, at + 2.5],
      [-1.4 * w, at + 2],
    ] as const
    items.push(
      cut('slot', {
        shape: 'plate',
        theta: rng.whole(0, 359),
        points,
        rIn: rng.between(0.3 * R, R - 0.4),
        rOut: most + 1,
      }),
    )
  }
  if (rng.chance(0.25)) {
    const [foot, head, tall] = [0.3 * R, 0.45 * R, rng.between(2, 5)]
    const points = [
      [-foot, z1 - 0.5],
      [foot, z1 - 0.5],
      [foot, z1],
      [head, z1 + tall],
      [-head, z1 + tall],
      [-foot, z1],
    ] as const
    items.push(late(add('tongue', { shape: 'plate', theta: rng.whole(0, 359), points, rIn: -0.6 * R, rOut: 0.6 * R })))
  }
  return items
}
