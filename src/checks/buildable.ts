import { placeWords } from '../project/place-words.ts'
import type { Part, Sled } from '../resolve/assembly.ts'
import { type Finding, type Fix, finding, type Where } from './finding.ts'
import { roomFor } from './fix-outside.ts'
import type { Check, World } from './world.ts'

/** Whether the sled can be built as asked: a nest larger than the body, an arm thinner than a bead, a mouth that closes. */
export const buildable: Check = {
  name: 'buildable',
  title: 'Can be built',
  what: 'Dimensions no solid can be made from: nests larger than the body, arms thinner than a bead, rods through a part.',
  run: (world) => world.assembly.sleds.flatMap((sled) => faults(world, sled)),
}

function faults(world: World, sled: Sled): Finding[] {
  const all = world.faults.get(sled.id) ?? []
  // Both pieces beside a split say the same of it.
  const own = all.filter(
    ({ problem: p }, i) => all.findIndex((o) => o.problem.path === p.path && o.problem.got === p.got) === i,
  )
  return own.map(({ problem, lack, isCount }, i) => {
    const part = nestedPart(world, sled, problem.path)
    const what = part ? `no room in it for ${part.name}` : placeWords(world.assembly.project, problem.path)
    return finding({
      id: `buildable:${sled.id}:${i}`,
      check: 'buildable',
      title: `${sled.name} cannot be built: ${what}`,
      value: -lack,
      limit: 0,
      unit: isCount ? '' : /^"?[-\d.]+°/.test(problem.got) ? '°' : 'mm',
      margins: { worst: -lack, nominal: -lack, settled: -lack, best: -lack },
      contributions: [],
      at: part && outermost(part),
      parts: [`sleds/${sled.id}`, ...(part ? [part.id] : [])],
      state: 'every state',
      why: `Got ${problem.got.replaceAll('"', '')}; allowed is ${problem.limit}.${part ? asWideAs(sled, part) : ''}`,
      source: 'the sled’s own geometry',
      fix: fixesOf(sled, part, lack, { text: problem.hint, path: problem.path }),
    })
  })
}

/** The part whose nest is too large for the sled around it. */
const nestedPart = (world: World, sled: Sled, path: string): Part | undefined =>
  world.assembly.parts.find((p) => path === `sleds/${sled.id}/nests/${p.id}/gap`)

/** Why the sled is no wider there, where nobody typed its width. */
function asWideAs(sled: Sled, { ends }: Part): string {
  const z = (ends.rear.nominal + ends.blade.nominal) / 2
  const by = sled.pieces.find((p) => p.z0 <= z && p.z1 >= z)?.by
  return by === undefined ? '' : ` It is no wider because of ${by}, in place or on its way in.`
}

/** A wider sled, or the part that would fit: each says how wide. The hint where neither can be said. */
function fixesOf(sled: Sled, part: Part | undefined, lack: number, hint: Fix): Fix[] {
  const sized = part ? roomFor(sled, part, lack) : []
  return sized.length > 0 ? sized : [hint]
}

/** Where it lies farthest from the axis. */
function outermost({ ends, across, extent }: Part): Where {
  const { x, y } = { x: across.x.nominal, y: across.y.nominal }
  const theta = ((Math.atan2(y, x) * 180) / Math.PI + 360) % 360
  return {
    z: (ends.rear.nominal + ends.blade.nominal) / 2,
    theta: x === 0 && y === 0 ? 0 : theta,
    r: Math.hypot(x, y) + extent.halfU.nominal,
  }
}
