import type { InsertionInput } from '../../src/project/schema/sled.ts'
import type { Demand } from './demand.ts'
import type { Heading } from './gaps.ts'
import { carried, gapToIntrusion, gapToMetal, gapToSled, gapToSolids, least, moverOf, notSeated } from './moving.ts'
import { setting } from './sizes.ts'
import { duringOf, headingOf, insertions, thereIn } from './there.ts'
import type { World } from './world.ts'

export function waysIn(w: World): Demand[] {
  const { project } = w.r
  const limit = setting(project, 'clearance')
  return insertions(w).flatMap((i, order): Demand[] => {
    const [list, id] = i.moves.split('/') as [string, string]
    if (list === 'sections') return tubeOver(w, i, order, id, limit)
    const movers = list === 'sleds' ? [i.moves, ...carried(w, id).map((p) => p.of)] : [i.moves]
    const way = headingOf(i)
    return movers.map((of) => ({
      id: `way-in:${i.id}:${of}`,
      check: 'way-in',
      limit,
      gap: (x, memo) => {
        const m = moverOf(x, of)
        const there = duringOf(x, i, order)
        return least([
          ...there.metals.map((metal) => gapToMetal(m, metal, way, memo, notSeated(x, of, metal))),
          ...there.intrusions.map((o) => gapToIntrusion(m, o, way, memo)),
          ...there.parts.map((p) => gapToSolids(m, p.solids, way, memo)),
          ...there.sleds.map((s) => gapToSled(x, m, s, way, memo)),
        ])
      },
    }))
  })
}

/** A tube drawn over what stands still: the unit goes into the tube by the mouth that looks at it. */
function tubeOver(w: World, i: InsertionInput, order: number, tube: string, limit: number): Demand[] {
  const own = i.through?.of === `sections/${tube}`
  // Docked at the blade end of another section the tube travels to the rear, and the unit in it to the blade.
  const way: Heading = own ? headingOf(i) : headingOf(i) === 'blade' ? 'rear' : 'blade'
  const movers = w.sleds.flatMap((s) => [`sleds/${s.id}`, ...carried(w, s.id).map((p) => p.of)])
  const earlier = insertions(w)
    .slice(0, order)
    .map((e) => e.moves)
  const isIn = (of: string, when: string): boolean => when === 'before' || earlier.includes(of)
  return movers.map((of) => ({
    id: `way-in:${i.id}:${of}`,
    check: 'way-in',
    limit,
    gap: (x, memo) => {
      const m = moverOf(x, of)
      const metals = x.hilt.metals.filter((o) => o.section === tube && thereIn(o.states, 'assembly'))
      const intrusions = x.hilt.intrusions.filter((o) => o.section === tube && isIn(o.of, o.fitted))
      const parts = x.parts.filter((p) => p.section === tube && isIn(p.of, p.goesIn))
      return least([
        ...metals.map((metal) => gapToMetal(m, metal, way, memo, notSeated(x, of, metal))),
        ...intrusions.map((o) => gapToIntrusion(m, o, way, memo)),
        ...parts.map((p) => gapToSolids(m, p.solids, way, memo)),
      ])
    },
  }))
}
