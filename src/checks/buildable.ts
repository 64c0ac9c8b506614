import { placeWords } from '../project/place-words.ts'
import type { Sled } from '../resolve/assembly.ts'
import { type Finding, type Fix, finding } from './finding.ts'
import { roomier } from './fix-outside.ts'
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
  return own.map(({ problem, lack, isCount }, i) =>
    finding({
      id: `buildable:${sled.id}:${i}`,
      check: 'buildable',
      title: `${sled.name} cannot be built: ${placeWords(world.assembly.project, problem.path)}`,
      value: -lack,
      limit: 0,
      unit: isCount ? '' : /^"?[-\d.]+°/.test(problem.got) ? '°' : 'mm',
      margins: { worst: -lack, nominal: -lack, settled: -lack, best: -lack },
      contributions: [],
      at: undefined,
      parts: [`sleds/${sled.id}`],
      state: 'every state',
      why: `Got ${problem.got.replaceAll('"', '')}; allowed is ${problem.limit}.`,
      source: 'the sled’s own geometry',
      fix: [...nestFixes(world, sled, problem.path, lack), { text: problem.hint, path: problem.path }],
    }),
  )
}

/** A nest too large for the sled around it: what that, or the part in it, would have to be. */
function nestFixes(world: World, sled: Sled, path: string, lack: number): Fix[] {
  const part = world.assembly.parts.find((p) => path === `sleds/${sled.id}/nests/${p.id}/gap`)
  return part ? roomier(sled, part, lack) : []
}
