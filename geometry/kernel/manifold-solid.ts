import type { CrossSection, Manifold, ManifoldToplevel } from 'manifold-3d'
import { circumscribed, facetsFor } from '../plan/facets.ts'
import type { Cylinder, PlanItem, PlanSolid } from '../plan/plan.ts'
import type { Owned } from './scope.ts'

export type Own = <O extends Owned>(o: O) => O
type P2 = [number, number]

/** Small holes need fewer facets than bodies; the chord error still holds. */
const fewest = 32

/**
 * Heights on a grid of 2⁻²⁰ mm, on which sums and differences of heights come out exact. Two solids that meet at a
 * height would else lie a rounding apart, which to the kernel is a gap.
 */
const onGrid = (z: number): number => Math.round(z * 2 ** 20) / 2 ** 20

/** One plan solid in the kernel. `facets`: fewest of a round body. Cutters circumscribe, added bodies inscribe. */
export function makeSolid(k: ManifoldToplevel, own: Own, item: PlanItem, facets: number): Manifold {
  const s = item.solid
  const cut = item.op === 'cut'
  if (s.shape === 'cylinder') return makeCylinder(k, own, s, cut, facets)
  if (s.shape === 'box') {
    const [z0, z1] = [onGrid(s.z0), onGrid(s.z1)]
    const block = own(k.Manifold.cube([s.height, s.width, z1 - z0], true))
    const turned = own(block.rotate([0, 0, s.facing]))
    return own(turned.translate([s.x, s.y, (z0 + z1) / 2]))
  }
  if (s.shape === 'spoke') {
    const n = facetsFor(s.radius, fewest)
    const r = cut ? circumscribed(s.radius, n) : s.radius
    const bar = own(k.Manifold.cylinder(s.rOut - s.rIn, r, r, n, false))
    const lying = own(bar.rotate([0, 90, 0]))
    const out = own(lying.translate([s.rIn, 0, s.z]))
    return own(out.rotate([0, 0, s.theta]))
  }
  if (s.shape === 'plate') {
    // Not by way of a cross-section, which has a grid of its own.
    const tall = own(k.Manifold.extrude([s.points.map(([t, z]): P2 => [t, onGrid(z)])], s.rOut - s.rIn))
    // (t, z, out) become (y, z, x): a turn of the axes, so that the outline keeps its sense.
    const lying = own(tall.transform([0, 1, 0, 0, 0, 0, 1, 0, 1, 0, 0, 0, s.rIn, 0, 0, 1]))
    return own(lying.rotate([0, 0, s.theta]))
  }
  const outline = s.shape === 'extruded' ? s.points.map(([x, y]): P2 => [x, y]) : undefined
  const flat = outline
    ? own(new k.CrossSection([outline]))
    : own(sectorSection(k, own, s as Extract<PlanSolid, { shape: 'ring-sector' }>, cut, facets))
  const [z0, z1] = [onGrid(s.z0), onGrid(s.z1)]
  const tall = own(flat.extrude(z1 - z0))
  const at = s.shape === 'ring-sector' ? [s.x ?? 0, s.y ?? 0] : [0, 0]
  return own(tall.translate([at[0] as number, at[1] as number, z0]))
}

function makeCylinder(k: ManifoldToplevel, own: Own, s: Cylinder, cut: boolean, facets: number): Manifold {
  const n = facetsFor(Math.max(s.r0, s.r1), Math.max(s.r0, s.r1) > 3 ? facets : fewest)
  const grown = (r: number) => (cut ? circumscribed(r, n) : r)
  const [z0, z1] = [onGrid(s.z0), onGrid(s.z1)]
  const bar = own(k.Manifold.cylinder(z1 - z0, grown(s.r0), grown(s.r1), n, false))
  return own(bar.translate([s.x, s.y, z0]))
}

/** A ring sector's outline: arcs as chords, the outer one held inside (or outside, for a cutter), the inner one vice versa. */
function sectorSection(
  k: ManifoldToplevel,
  own: Own,
  s: { rIn: number; rOut: number; theta: number; half: number },
  cut: boolean,
  facets: number,
): CrossSection {
  const n = facetsFor(s.rOut, facets)
  const outer = cut ? circumscribed(s.rOut, n) : s.rOut
  const inner = cut ? s.rIn : circumscribed(s.rIn, n)
  if (s.half >= 180) {
    const whole = own(k.CrossSection.circle(outer, n))
    return s.rIn > 0 ? whole.subtract(own(k.CrossSection.circle(inner, n))) : whole.translate([0, 0])
  }
  const steps = Math.max(2, Math.ceil((n * s.half) / 180))
  const arc = (r: number): P2[] =>
    Array.from({ length: steps + 1 }, (_, i) => {
      const w = ((s.theta - s.half + (2 * s.half * i) / steps) * Math.PI) / 180
      return [r * Math.cos(w), r * Math.sin(w)]
    })
  const points = s.rIn > 0 ? [...arc(outer), ...arc(inner).reverse()] : [...arc(outer), [0, 0] as P2]
  return new k.CrossSection([points])
}
