import type { Demand } from './demand.ts'
import { betweenSolids, enough } from './gaps.ts'
import type { PartTruth } from './load.ts'
import { carried, least, less, most, partIn, remembered, sledIn } from './moving.ts'
import { setting } from './sizes.ts'
import type { World } from './world.ts'

export function packed(w: World, sled: string): Demand[] {
  const parts = carried(w, sled)
  const limit = setting(w.r.project, 'part-gap')
  const pairs = parts.flatMap((a, i) =>
    parts.slice(i + 1).flatMap((b): Demand[] => {
      if (a.input.presses?.part === b.of || b.input.presses?.part === a.of) return []
      return [
        {
          id: `packing:${a.of}:${b.of}`,
          check: 'packing',
          limit,
          gap: (x) => {
            const d = betweenSolids(partIn(x, a.of).solids, partIn(x, b.of).solids)
            // How deep two things lie in one another is not measured.
            return { lo: d > 0 ? d : -nearNest, hi: d }
          },
        },
      ]
    }),
  )
  return [...pairs, ...parts.flatMap((p) => [insideSled(p, sled), ...inNest(p, sled)])]
}

/** How far the part's farthest corner lies inside the body pieces beside it. */
function insideSled(part: PartTruth, sled: string): Demand {
  return {
    id: `packing:${part.of}:${sled}`,
    check: 'packing',
    limit: 0,
    gap: (w) => {
      const { built, shift } = sledIn(w, sled)
      const columns = partIn(w, part.of).solids.flatMap((s) => s.columns(shift))
      const d = columns.reduce((most, c) => {
        const beside = built.pieces.filter((p) => p.blade + shift.z > c.za && p.rear + shift.z < c.zb)
        return beside.reduce((n, p) => Math.min(n, p.radius - Math.max(c.ra, c.rb)), most)
      }, enough)
      return { lo: d, hi: d }
    },
  }
}

/** Farther than this from its nest a part is not looked at, mm. */
const nearNest = 0.6

/** The printed sled must have room for what it carries, where a fit does not let it press. */
function inNest(part: PartTruth, sled: string): Demand[] {
  return [
    {
      id: `nest-fit:${part.of}`,
      check: 'nest-fit',
      limit: 0,
      gap: (w, memo) => {
        const { built, error } = sledIn(w, sled)
        const inPlace = partIn(w, part.of).nested.map((solids) =>
          least(
            solids.map((s) =>
              remembered(memo, `nest ${sled}`, s.key, () => {
                const d = built.mesh.distanceTo(s, nearNest)
                // How deep two things lie in one another is not measured.
                return { lo: d > 0 ? d : -nearNest, hi: d }
              }),
            ),
          ),
        )
        // It goes in where it goes in at one of its places.
        return less(most(inPlace), error)
      },
    },
  ]
}
