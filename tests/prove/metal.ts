import type { BoreStepInput, FeatureInput, ScrewInput, SectionInput } from '../../src/project/schema/hilt.ts'
import { parseThread } from '../../src/rules/thread-designation.ts'
import { type Convex, prism, rectangleAt, Spoke, sectorPieces } from './convex.ts'
import { type Wall, wallOf } from './half-plane.ts'
import type { Heights } from './heights.ts'
import { mostOf, type Reality, sizeAt, threadAt } from './sizes.ts'
import { slottedMetal } from './slot.ts'
import { atClock, type V2 } from './vec.ts'

/** The metal around one step of a bore. */
export interface Metal {
  /** `sections/body/neck`. */
  readonly of: string
  readonly section: string
  readonly states: readonly string[] | undefined
  readonly axis: V2
  /** Its wall where no slot is. */
  readonly wall: Wall
  /** The metal in pieces where slots are cut into it. */
  readonly slotted: (() => readonly Convex[]) | undefined
  /** Whether a point lies where no slot is. */
  readonly besideSlots?: (p: V2) => boolean
  readonly key: string
}

/** Something in the wall that takes room in the bore. */
export interface Intrusion {
  readonly of: string
  readonly section: string
  readonly states: readonly string[] | undefined
  readonly fitted: 'before' | 'after'
  readonly solids: readonly Convex[]
  /** A lip all around is a wall by itself. */
  readonly ring?: Pick<Metal, 'axis' | 'wall' | 'key'>
}

export interface HiltTruth {
  readonly metals: readonly Metal[]
  readonly intrusions: readonly Intrusion[]
  /** How far each section stands aside for the play of its joints. */
  readonly aside: ReadonlyMap<string, V2>
}

/** Metal is drawn this far outwards: behind that nothing is looked at, mm. */
const behind = 4

interface Bore extends Metal {
  readonly z0: number
  readonly z1: number
  readonly r0: number
  readonly r1: number
}

/** The hilt as it truly is in one draw. */
export function hiltAt(r: Reality, heights: Heights): HiltTruth {
  const aside = new Map(r.project.sections.map((s) => [s.id, asideOf(r, s)]))
  const bores = r.project.sections.flatMap((s) => boresOf(r, heights, s, aside.get(s.id) as V2))
  const metals = bores.map((b) => ({ ...b, ...slotted(r, heights, b, aside.get(b.section) as V2) }))
  const wall = (section: string, z: number, theta: number): number => wallRadius(bores, section, z, theta, aside)
  const intrusions = [
    ...r.project.features.filter((f) => f.kind === 'intrusion').map((f) => intrusion(r, heights, f, aside, wall)),
    ...r.project.screws.map((s) => screwTip(r, heights, s, aside)),
  ]
  return { metals, intrusions, aside }
}

function asideOf(r: Reality, s: SectionInput): V2 {
  const upTo = r.project.sections.slice(0, r.project.sections.indexOf(s) + 1).map((o) => o.id)
  return r.project.joints.reduce(
    (sum, j) => {
      if (j.play === undefined || !upTo.includes(j.blade)) return sum
      const path = `joints/${j.id}/play`
      const most = mostOf(r, j.play, { path, as: 'offset' })
      const by = atClock(r.draw.off(path, 'varies', 0, most), r.draw.direction(`${path}/direction`, 'varies'))
      return { x: sum.x + by.x, y: sum.y + by.y }
    },
    { x: 0, y: 0 },
  )
}

function boresOf(r: Reality, heights: Heights, s: SectionInput, aside: V2): Bore[] {
  const stations = heights.stations(s)
  const axis = add(aside, eccentricOf(r, s))
  return s.bore.flatMap((b, i): Bore[] => {
    if (b.kind === 'solid')
      return [bore(s, b, i, undefined, axis, stations[i] as number, stations[i + 1] as number, 0, 0)]
    // Closed first: what sticks in is measured from the closed wall.
    const variants = s.clamp
      ? (['closed', 'open'] as const).map((which) => ({ which, d: clampAt(r, s, which) }))
      : [{ which: undefined, d: undefined }]
    return variants.map(({ which, d }) => {
      const [d0, d1] = d === undefined ? diametersAt(r, s, b, i) : [d, d]
      const openIn = s.clamp?.openIn ?? ['stripped']
      const states = which === 'open' ? openIn : which === 'closed' ? openIn.map((o) => `!${o}`) : undefined
      const made = bore(s, b, i, states, axis, stations[i] as number, stations[i + 1] as number, d0 / 2, d1 / 2)
      return which ? { ...made, of: `${made.of}-${which}` } : made
    })
  })
}

function bore(
  s: SectionInput,
  b: BoreStepInput,
  i: number,
  states: readonly string[] | undefined,
  axis: V2,
  z0: number,
  z1: number,
  r0: number,
  r1: number,
): Bore {
  const key = `bore ${[axis.x, axis.y, z0, z1, r0, r1].map((n) => n.toFixed(7)).join(',')}`
  const of = `sections/${s.id}/${b.id ?? i}`
  return { of, section: s.id, states, axis, wall: wallOf(z0, z1, r0, r1), slotted: undefined, key, z0, z1, r0, r1 }
}

function eccentricOf(r: Reality, s: SectionInput): V2 {
  if (!s.eccentricity) return { x: 0, y: 0 }
  const path = `sections/${s.id}/eccentricity`
  const offset = sizeAt(r, s.eccentricity.offset, { path: `${path}/offset`, as: 'offset' })
  if (s.eccentricity.theta !== undefined)
    return atClock(offset, sizeAt(r, s.eccentricity.theta, { path: `${path}/theta`, as: 'angle' }))
  // It stands aside some way, and nominal is none of them: the axis.
  const share = r.draw.off(`${path}/theta`, 'unknown', 0, 1)
  return atClock(share * offset, r.draw.direction(`${path}/theta/direction`, 'unknown'))
}

const clampAt = (r: Reality, s: SectionInput, which: 'open' | 'closed'): number =>
  sizeAt(r, (s.clamp as NonNullable<SectionInput['clamp']>)[which], {
    path: `sections/${s.id}/clamp/${which}`,
    as: 'bore',
  })

function diametersAt(r: Reality, s: SectionInput, b: BoreStepInput, i: number): [number, number] {
  const path = `sections/${s.id}/bore/${b.id ?? i}`
  const free =
    b.diameter === undefined
      ? threadAt(r, b.thread as string, b.threadClass, `${path}/thread`)
      : sizeAt(r, b.diameter, { path: `${path}/diameter`, as: 'bore' })
  const end = b.diameterEnd === undefined ? free : sizeAt(r, b.diameterEnd, { path: `${path}/diameterEnd`, as: 'bore' })
  const less = b.allowance === undefined ? 0 : 2 * sizeAt(r, b.allowance, { path: `${path}/allowance`, as: 'offset' })
  return [free - less, end - less]
}

/** From the hilt's axis outwards at a clock angle: where the wall of the bore is met. */
function wallRadius(
  bores: readonly Bore[],
  section: string,
  z: number,
  theta: number,
  aside: ReadonlyMap<string, V2>,
): number {
  // What may stand beyond an end of its section is measured from the step at that end.
  const steps = bores.filter((o) => o.section === section)
  const b = steps.find((o) => z >= o.z0 && z <= o.z1) ?? ((z < (steps[0] as Bore).z0 ? steps[0] : steps.at(-1)) as Bore)
  const within = Math.min(Math.max(z, b.z0), b.z1)
  const radius = b.r0 + ((within - b.z0) / (b.z1 - b.z0)) * (b.r1 - b.r0)
  const own = aside.get(section) as V2
  const [ex, ey] = [b.axis.x - own.x, b.axis.y - own.y]
  const u = atClock(1, theta)
  const [along, across] = [ex * u.x + ey * u.y, ey * u.x - ex * u.y]
  return along + Math.sqrt(radius * radius - across * across)
}

const add = (a: V2, b: V2): V2 => ({ x: a.x + b.x, y: a.y + b.y })

type WallAt = (section: string, z: number, theta: number) => number

function intrusion(
  r: Reality,
  heights: Heights,
  f: FeatureInput,
  asides: ReadonlyMap<string, V2>,
  wallAt: WallAt,
): Intrusion {
  const path = `features/${f.id}`
  const section = f.on.split('/')[1] as string
  const { rear, blade } = heights.ends(path)
  const theta = f.at.theta === undefined ? 0 : sizeAt(r, f.at.theta, { path: `${path}/at/theta`, as: 'angle' })
  const wall = wallAt(section, (rear + blade) / 2, theta)
  const s = f.shape as Extract<FeatureInput['shape'], { form: 'pin' | 'block' | 'ring-sector' }>
  const tip =
    s.tip === undefined
      ? wall - sizeAt(r, s.reach as number, { path: `${path}/shape/reach`, as: 'length' })
      : sizeAt(r, s.tip, { path: `${path}/shape/tip`, as: 'offset' })
  const out = Math.max(wall, tip) + behind
  const aside = asides.get(section) as V2
  const base = { of: path, section, states: f.states, fitted: f.fitted ?? 'before' }
  const half = s.form === 'ring-sector' ? sizeAt(r, s.half, { path: `${path}/shape/half`, as: 'angle' }) : 0
  if (half >= 180) {
    const key = `ring ${[tip, rear, blade, aside.x, aside.y].map((n) => n.toFixed(7)).join(',')}`
    return { ...base, solids: [], ring: { axis: aside, wall: wallOf(rear, blade, tip, tip), key } }
  }
  const solids = (): Convex[] => {
    if (s.form === 'pin') return [new Spoke(theta, (rear + blade) / 2, (blade - rear) / 2, tip, out, aside)]
    if (s.form === 'block') {
      const width = sizeAt(r, s.width, { path: `${path}/shape/width`, as: 'outside' })
      const middle = add(aside, atClock((tip + out) / 2, theta))
      return [prism(rectangleAt(middle, width / 2, (out - tip) / 2, theta), rear, blade)]
    }
    return sectorPieces(tip, out, theta, half, rear, blade, aside)
  }
  return { ...base, solids: solids() }
}

function screwTip(r: Reality, heights: Heights, s: ScrewInput, asides: ReadonlyMap<string, V2>): Intrusion {
  const path = `screws/${s.id}`
  const section = s.on.split('/')[1] as string
  const thread = parseThread(s.thread)
  if (!thread.ok) throw new Error(`the generator wrote the thread "${s.thread}"`)
  const theta = s.at.theta === undefined ? 0 : sizeAt(r, s.at.theta, { path: `${path}/at/theta`, as: 'angle' })
  const tip = sizeAt(r, s.tip as number, { path: `${path}/tip`, as: 'offset' })
  const z = heights.at(s.at.z, `${path}/at/z`)
  const solids = [new Spoke(theta, z, thread.value.major / 2, tip, tip + 2 * behind, asides.get(section) as V2)]
  return { of: path, section, states: s.states, fitted: s.fitted ?? 'after', solids }
}

/** The slots of the project that meet a bore step, cut out of it. */
function slotted(r: Reality, heights: Heights, b: Bore, aside: V2): Pick<Metal, 'slotted' | 'key' | 'besideSlots'> {
  const slots = r.project.features.flatMap((f) => {
    if (f.kind === 'intrusion' || f.shape.form !== 'slot' || f.on !== `sections/${b.section}`) return []
    const path = `features/${f.id}`
    const { rear, blade } = heights.ends(path)
    if (blade <= b.z0 || rear >= b.z1) return []
    const theta = f.at.theta === undefined ? 0 : sizeAt(r, f.at.theta, { path: `${path}/at/theta`, as: 'angle' })
    const width = sizeAt(r, f.shape.width, { path: `${path}/shape/width`, as: 'bore' })
    const depth =
      f.shape.depth === undefined ? undefined : sizeAt(r, f.shape.depth, { path: `${path}/shape/depth`, as: 'length' })
    return [{ rear, blade, theta, halfWidth: width / 2, depth }]
  })
  if (slots.length === 0) return { slotted: undefined, key: b.key }
  const numbers = slots.map((s) => [s.rear, s.blade, s.theta, s.halfWidth, s.depth ?? -1].map((n) => n.toFixed(7)))
  const besideSlots = (p: V2): boolean =>
    slots.every(({ theta, halfWidth }) => {
      const u = atClock(1, theta)
      const [x, y] = [p.x - aside.x, p.y - aside.y]
      return x * u.x + y * u.y < 0 || Math.abs(y * u.x - x * u.y) > halfWidth
    })
  return {
    slotted: () => slottedMetal(b, slots, aside, behind),
    key: `${b.key} less ${numbers.join(';')}`,
    besideSlots,
  }
}
