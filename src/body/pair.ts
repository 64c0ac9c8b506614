import type { Heading } from '../../geometry/solid/sweep.ts'
import type { Quantity, Spread, Term } from '../quantity/quantity.ts'
import type { Body } from './body.ts'
import { acting, type Role } from './quantities.ts'

/**
 * Two bodies side by side. `way` draws the first body out behind it along its way in. What a spread does to the gap
 * is sorted out once, here:
 * - a shift along the axis that both take part in is taken out of both;
 * - a spread that acts in one way only needs no search: its tight end is known;
 * - a spread that acts in several ways at once (a cell pushed to the wall: thicker, but its centre moves back) is
 *   `coupled`, and its ends are tried.
 */
export interface Pair {
  readonly a: Body
  readonly b: Body
  readonly way?: Heading
  readonly coupled: readonly Spread[]
  /**
   * Those of them whose ends tell the worst. One that moves a body along the axis besides is not: on its way it may pass
   * what it clears at both ends, so at worst it counts as independent.
   */
  readonly coupledAtWorst: readonly Spread[]
  /** Spreads along the axis that still act on both bodies, so that their tight ends cannot both be true. */
  readonly shared: ReadonlySet<string>
}

/** Coupled spreads beyond this many are treated as independent, which is safe but less sharp. */
const mostCoupled = 3

export function pairOf(a: Body, b: Body, way?: Heading): Pair {
  const [pa, pb] = [portrait(a), portrait(b)]
  const meet = [...pa.roles.keys()].some((path) => pb.roles.has(path))
  if (!meet) return { a, b, ...(way ? { way } : {}), ...coupling([...pa.torn, ...pb.torn]), shared: none }
  const [first, second] = takeOutCommonShift(a, b)
  const [ha, hb] = [portrait(first), portrait(second)]
  const shared = new Set([...ha.heights].filter((p) => hb.heights.has(p)))
  return { a: first, b: second, ...(way ? { way } : {}), ...coupling(merged(ha.roles, hb.roles).values()), shared }
}

const none: ReadonlySet<string> = new Set()
const few = (spreads: readonly Spread[]): readonly Spread[] => spreads.slice(0, mostCoupled)

type Acts = { readonly spread: Spread; readonly roles: ReadonlySet<Role> }

/** The spreads that act in several ways at once. */
function coupling(all: Iterable<Acts>): Pick<Pair, 'coupled' | 'coupledAtWorst'> {
  const torn = [...all].filter((r) => r.roles.size > 1)
  const still = torn.filter((r) => !r.roles.has('height'))
  return { coupled: few(torn.map((r) => r.spread)), coupledAtWorst: few(still.map((r) => r.spread)) }
}

type Roles = ReadonlyMap<string, Acts>

/** What a body's spreads do, sorted out once for all the pairs it is in. */
interface Portrait {
  readonly roles: Roles
  /** Spreads that act in several ways within this body alone. */
  readonly torn: readonly Acts[]
  /** Paths of the spreads that act along the axis. */
  readonly heights: ReadonlySet<string>
}

const portraits = new WeakMap<Body, Portrait>()

function portrait(b: Body): Portrait {
  let found = portraits.get(b)
  if (!found) {
    const roles = rolesOf(b)
    const torn = [...roles.values()].filter((r) => r.roles.size > 1)
    const heights = new Set([...roles].filter(([, r]) => r.roles.has('height')).map(([path]) => path))
    found = { roles, torn, heights }
    portraits.set(b, found)
  }
  return found
}

function rolesOf(b: Body): Map<string, { spread: Spread; roles: Set<Role> }> {
  const found = new Map<string, { spread: Spread; roles: Set<Role> }>()
  for (const { quantity, role } of acting(b)) {
    for (const t of quantity.terms) {
      const entry = found.get(t.spread.path) ?? { spread: t.spread, roles: new Set<Role>() }
      entry.roles.add(t.gain < 0 ? opposite(role) : role)
      found.set(t.spread.path, entry)
    }
  }
  return found
}

function merged(a: Roles, b: Roles): Roles {
  const all = new Map(a)
  for (const [path, r] of b) {
    const own = all.get(path)
    all.set(path, own ? { spread: r.spread, roles: new Set([...own.roles, ...r.roles]) } : r)
  }
  return all
}

function opposite(role: Role): Role {
  if (role === 'larger-tighter') return 'smaller-tighter'
  return role === 'smaller-tighter' ? 'larger-tighter' : role
}

/**
 * Moving both bodies along the axis by the same amount changes nothing. For each spread the shift that leaves the
 * least behind is taken out: where the faces that look at each other move together, their doubt is gone.
 */
function takeOutCommonShift(a: Body, b: Body): [Body, Body] {
  const paths = new Set([...heightTerms(a), ...heightTerms(b)].flat().map((t) => t.spread.path))
  const shift = new Map<string, number>()
  for (const path of paths) {
    const gains = [...heightTerms(a), ...heightTerms(b)].map(
      (terms) => terms.find((t) => t.spread.path === path)?.gain ?? 0,
    )
    const k = best(gains, facing(a, b))
    if (k !== 0) shift.set(path, k)
  }
  return shift.size === 0 ? [a, b] : [shifted(a, b, shift), shifted(b, a, shift)]
}

function heightTerms(b: Body): (readonly Term[])[] {
  return b.shape.kind === 'pin' ? [b.shape.z.terms, b.shape.z.terms] : [b.shape.z0.terms, b.shape.z1.terms]
}

/** Which two of the four faces [a.z0, a.z1, b.z0, b.z1] look at each other; all where the bodies lie side by side. */
function facing(a: Body, b: Body): readonly number[] {
  const [a0, a1, b0, b1] = [...ends(a), ...ends(b)] as [number, number, number, number]
  if (a1 <= b0) return [1, 2]
  return b1 <= a0 ? [0, 3] : [0, 1, 2, 3]
}

function ends(b: Body): [number, number] {
  const s = b.shape
  return s.kind === 'pin'
    ? [s.z.nominal - s.radius.nominal, s.z.nominal + s.radius.nominal]
    : [s.z0.nominal, s.z1.nominal]
}

function best(gains: readonly number[], looking: readonly number[]): number {
  const left = (k: number) => gains.reduce((sum, g, i) => sum + (looking.includes(i) ? 10 : 1) * Math.abs(g - k), 0)
  return [0, ...gains].reduce((least, k) => (left(k) < left(least) - 1e-12 ? k : least), 0)
}

function shifted(b: Body, other: Body, by: ReadonlyMap<string, number>): Body {
  const move = (q: Quantity): Quantity => {
    const terms: Term[] = []
    const seen = new Set<string>()
    for (const t of q.terms) {
      seen.add(t.spread.path)
      const gain = t.gain - (by.get(t.spread.path) ?? 0)
      if (Math.abs(gain) > 1e-12) terms.push({ spread: t.spread, gain })
    }
    for (const [path, k] of by) {
      if (seen.has(path)) continue
      const spread = [...heightTerms(b), ...heightTerms(other)].flat().find((t) => t.spread.path === path)
        ?.spread as Spread
      terms.push({ spread, gain: -k })
    }
    return { nominal: q.nominal, terms }
  }
  const s = b.shape
  return { ...b, shape: s.kind === 'pin' ? { ...s, z: move(s.z) } : { ...s, z0: move(s.z0), z1: move(s.z1) } }
}
