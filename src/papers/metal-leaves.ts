import type { Assembly } from '../resolve/assembly.ts'
import type { Section } from '../resolve/metal.ts'
import { metalTowards } from './metal-section.ts'
import type { Point2 } from './thread-profile.ts'

/**
 * A piece of a section's metal between two clock angles: its profile at each of them, from which it is turned. The
 * profiles have the same corners in the same order; what lies between two angles is drawn straight.
 */
export interface MetalLeaf {
  /** `sections/body`. */
  readonly section: string
  readonly name: string
  /** Place of the section in the hilt. */
  readonly order: number
  /** Degrees, growing; the last may be more than 360. */
  readonly angles: readonly number[]
  /** For each angle its closed profile [z, distance from the axis], mm. */
  readonly rings: readonly (readonly Point2[])[]
  /** Lines to draw at its first and at its last angle: what its neighbour there does not go on with. */
  readonly sides: readonly [readonly Line2[], readonly Line2[]]
}

type Line2 = readonly [Point2, Point2]
type Bare = Omit<MetalLeaf, 'sides'>

/** A bore beside the axis changes with the angle: it is looked at so often, degrees. */
const step = 10
/** So near to the edge of a slot the profile is that of its own side, degrees. */
const within = 1e-4

/** The metal of a hilt as it is in a state, all around, for turning. The sides of slots are taken as pointing at the axis. */
export function metalLeaves(assembly: Assembly, state: string): MetalLeaf[] {
  return assembly.sections.flatMap((section) => {
    const edges = slotEdges(assembly, section)
    const starts = edges.length > 0 ? edges : [0]
    const stretches = starts.map((from, i) => {
      const to = starts[i + 1] ?? (starts[0] as number) + 360
      return to - from < 3 * within ? [] : leavesBetween(assembly, section, from, to, state)
    })
    return stretches.flatMap((leaves, i) => {
      const before = stretches.at(i - 1) ?? []
      const after = stretches[(i + 1) % stretches.length] ?? []
      return leaves.map(
        (leaf): MetalLeaf => ({ ...leaf, sides: [side(leaf, 0, before, -1), side(leaf, -1, after, 0)] }),
      )
    })
  })
}

/** The outline of a leaf at one of its ends, less what the leaves beside it have there too. */
function side(leaf: Bare, end: 0 | -1, beside: readonly Bare[], theirs: 0 | -1): Line2[] {
  const others = beside.flatMap((b) => outline(b.rings.at(theirs) ?? []))
  return outline(leaf.rings.at(end) ?? []).flatMap((line) => less(line, others))
}

const outline = (ring: readonly Point2[]): Line2[] => ring.map((p, i) => [p, ring[(i + 1) % ring.length] as Point2])

/** What of a line lies on none of the others. */
function less([a, b]: Line2, others: readonly Line2[]): Line2[] {
  const [dz, dr] = [b[0] - a[0], b[1] - a[1]]
  const long = Math.hypot(dz, dr)
  if (long === 0) return []
  const along = ([z, r]: Point2): number => ((z - a[0]) * dz + (r - a[1]) * dr) / long ** 2
  const beside = ([z, r]: Point2): number => Math.abs((z - a[0]) * dr - (r - a[1]) * dz) / long
  let left: (readonly [number, number])[] = [[0, 1]]
  for (const [c, d] of others) {
    if (beside(c) > 1e-6 || beside(d) > 1e-6) continue
    const [from, to] = [Math.min(along(c), along(d)), Math.max(along(c), along(d))]
    left = left.flatMap(([s, t]) =>
      [[s, Math.min(t, from)] as const, [Math.max(s, to), t] as const].filter(([u, v]) => v - u > 1e-9),
    )
  }
  const at = (t: number): Point2 => [a[0] + t * dz, a[1] + t * dr]
  return left.map(([s, t]): Line2 => [at(s), at(t)])
}

function leavesBetween(assembly: Assembly, section: Section, from: number, to: number, state: string): Bare[] {
  const beside = section.steps.some((s) => s.x.nominal !== 0 || s.y.nominal !== 0)
  const count = beside ? Math.max(1, Math.ceil((to - from) / step)) : 1
  const angles = Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count)
  const cuts = angles.map((angle) =>
    metalTowards(assembly, section, Math.min(to - within, Math.max(from + within, angle)), state),
  )
  return (cuts[0] ?? []).flatMap((first, run): Bare[] => {
    const rings = cuts.map((c) => c[run]?.ring)
    // A profile that gains or loses a corner on the way cannot be joined: it is drawn as it begins.
    const joined = rings.every((r) => r?.length === first.ring.length)
    return [
      {
        section: `sections/${section.id}`,
        name: section.name,
        order: first.order,
        angles: joined ? angles : [from, to],
        rings: joined ? (rings as (readonly Point2[])[]) : [first.ring, first.ring],
      },
    ]
  })
}

/** Clock angles at which a slot of the section begins or ends in one of its bores, from 0 up, each once. */
function slotEdges(assembly: Assembly, section: Section): number[] {
  const edges = assembly.openings
    .filter((o) => o.section === section.id)
    .flatMap(({ opening, z0, z1 }) =>
      section.steps
        .filter((s) => s.z0.nominal < z1.nominal && s.z1.nominal > z0.nominal)
        .flatMap((s) => {
          const r = Math.max(s.r0?.nominal ?? 0, s.r1?.nominal ?? 0)
          if (!(opening.halfWidth.nominal < r)) return []
          const half = (Math.asin(opening.halfWidth.nominal / r) * 180) / Math.PI
          return [opening.theta - half, opening.theta + half]
        }),
    )
    .map((a) => ((a % 360) + 360) % 360)
  return [...new Set(edges)].toSorted((a, b) => a - b)
}
