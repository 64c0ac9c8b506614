import type { Demand, StateTruth } from './demand.ts'
import { toWall } from './half-plane.ts'
import type { Intrusion, Metal } from './metal.ts'
import {
  carried,
  gapToIntrusion,
  gapToMetal,
  gapToSolids,
  least,
  moverOf,
  notSeated,
  sledIn,
  sledMover,
  still,
} from './moving.ts'
import { mostOf, setting } from './sizes.ts'
import { all } from './sled-mesh.ts'
import { aroundOf, insertions, thereIn } from './there.ts'
import { atClock, type V2, type V3 } from './vec.ts'
import type { SledTruth, World } from './world.ts'

/** How far the sled stands aside in this draw: typed, or as far as the metal that is there lets it. */
function floated(w: World, id: string, metals: readonly Metal[]): V3 {
  const sled = sledIn(w, id)
  const typed = sled.input.float
  const insertion = insertions(w).find((i) => i.moves === `sleds/${id}`)
  if (typed === undefined && insertion?.lateral === 'axis') return still
  const path = `sleds/${id}/float`
  const share = w.r.draw.off(path, 'varies', 0, 1)
  const u = atClock(1, w.r.draw.direction(`${path}/direction`, 'varies'))
  if (share === 0) return still
  const most =
    typed === undefined ? roomAside(w, sled, u, metals) : mostOf(w.r, typed, { path, as: 'offset', drawn: true })
  return { x: share * most * u.x, y: share * most * u.y, z: 0 }
}

function roomAside(w: World, sled: SledTruth, u: V2, metals: readonly Metal[]): number {
  const touches = (by: number): boolean =>
    metals.some((m) => {
      const { mover } = sledMover(w, sled.id, { x: by * u.x, y: by * u.y, z: 0 })
      return toWall(mover.columns(m.axis, all), m.wall) - sled.error <= 0
    })
  if (touches(0)) return 0
  let [free, touching] = [0, 5]
  for (let n = 0; n < 16; n++) {
    const middle = (free + touching) / 2
    if (touches(middle)) touching = middle
    else free = middle
  }
  return free
}

export function inPlace(w: World, sled: string, states: readonly StateTruth[]): Demand[] {
  const limit = setting(w.r.project, 'clearance')
  const seen = new Set<string>()
  return states.flatMap((state) => {
    const what = [...aroundOf(w, state).metals, ...aroundOf(w, state).intrusions, ...aroundOf(w, state).parts]
    const same = what.map((o) => o.of).join()
    if (seen.has(same) || state.without.has(`sleds/${sled}`)) return []
    seen.add(same)
    const movers = [`sleds/${sled}`, ...carried(w, sled).map((p) => p.of)].filter((of) => !state.without.has(of))
    return movers.map(
      (of): Demand => ({
        id: `clearance:${of}:`,
        check: 'clearance',
        limit,
        state: state.name,
        gap: (x, memo) => {
          const there = aroundOf(x, state)
          const m = moverOf(x, of)
          const aside = moverOf(x, of, floated(x, sled, there.metals))
          return least([
            ...there.metals.map((metal) => gapToMetal(m, metal, undefined, memo, notSeated(x, of, metal))),
            ...there.intrusions.map((o) => gapToIntrusion(aside, o, undefined, memo)),
            ...there.parts.map((p) => gapToSolids(aside, p.solids, undefined, memo)),
          ])
        },
      }),
    )
  })
}

export function fitted(w: World, sled: string): Demand[] {
  const limit = setting(w.r.project, 'fitted-gap')
  const later = [
    ...w.parts.filter((p) => p.goesIn === 'after' && p.section !== undefined).map((p) => p.of),
    ...w.hilt.intrusions.filter((i) => i.fitted === 'after').map((i) => i.of),
  ]
  return later.map((of) => ({
    id: `fitted-after:${of}:${sled}`,
    check: 'fitted-after',
    limit,
    gap: (x, memo) => {
      const closed = x.hilt.metals.filter((m) => thereIn(m.states, 'closed'))
      const aside = floated(x, sled, closed)
      const movers = [`sleds/${sled}`, ...carried(x, sled).map((p) => p.of)].map((m) => moverOf(x, m, aside))
      const part = x.parts.find((p) => p.of === of)
      const sticksIn = x.hilt.intrusions.find((i) => i.of === of)
      return least(
        movers.map((m) =>
          part
            ? gapToSolids(m, part.solids, undefined, memo)
            : gapToIntrusion(m, sticksIn as Intrusion, undefined, memo),
        ),
      )
    },
  }))
}
