import { clock, turnBetween } from '../../geometry/region/point.ts'
import type { Body } from '../body/body.ts'
import { exact } from '../quantity/quantity.ts'
import type { Sled } from '../resolve/assembly.ts'

/** The sled's outside, seen from within, as a wall around a body; beside a tower it is the tower's. */
export function wallsBeside(sled: Sled, body: Body): Body[] {
  const s = body.shape
  if (s.kind === 'pin') return []
  const tower = towerAround(sled, body)
  return sled.pieces
    .filter((p) => p.z1 > s.z0.nominal && p.z0 < s.z1.nominal)
    .map((p) => {
      const r = exact(Math.max(p.radius, tower))
      return {
        id: `sleds/${sled.id}/wall`,
        of: `sleds/${sled.id}`,
        name: 'outside of the sled',
        shape: { kind: 'bore', x: exact(0), y: exact(0), z0: exact(p.z0), z1: exact(p.z1), r0: r, r1: r },
      }
    })
}

/** Outer radius of the tower a body stands in, 0 where it stands in none. */
function towerAround(sled: Sled, body: Body): number {
  const s = body.shape
  if (s.kind !== 'box') return 0
  const theta = clock({ x: s.x.nominal, y: s.y.nominal })
  const found = (sled.input.towers ?? []).find((t) => {
    const path = `sleds/${sled.id}/towers/${t.id}`
    const [from, to] = [sled.drawn.get(`${path}/from`), sled.drawn.get(`${path}/to`)]
    const beside = Math.abs(turnBetween(t.theta, theta)) < (t.half ?? 20)
    return beside && from !== undefined && to !== undefined && s.z0.nominal >= from && s.z1.nominal <= to
  })
  return found?.outer ?? 0
}
