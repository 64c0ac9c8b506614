import { contributionsOf, marginsOf } from '../quantity/margins.ts'
import { least, most, sub } from '../quantity/quantity.ts'
import { alongTaper } from '../resolve/along-taper.ts'
import type { Cover } from '../resolve/covers.ts'
import type { Section } from '../resolve/metal.ts'
import { type Finding, finding } from './finding.ts'
import { upTo } from './fix-value.ts'
import { reading } from './reading.ts'
import { holds } from './verdict.ts'
import { mm } from './words.ts'
import type { World } from './world.ts'

/** A sleeve that goes all around must be as wide inside as what it lies on. */
export function sleeveFits(world: World): Finding[] {
  const { covers, sections } = world.assembly
  return covers
    .filter((c) => c.half === undefined || c.half.nominal >= 180)
    .flatMap((c) => sections.flatMap((s) => s.outside.flatMap((o, i) => over(world, c, s, o, i))))
}

function over(world: World, cover: Cover, section: Section, o: Section['outside'][number], i: number): Finding[] {
  const { inside, ends } = cover
  if (!inside || most(ends.blade) <= least(o.z0) || least(ends.rear) >= most(o.z1)) return []
  // The widest of what lies under it: at one of the ends of the stretch they share.
  const low = ends.rear.nominal > o.z0.nominal ? ends.rear : o.z0
  const high = ends.blade.nominal < o.z1.nominal ? ends.blade : o.z1
  const [rear, blade] = [low, high].map((z) => alongTaper(o, o.d0, o.d1, z)) as [typeof inside, typeof inside]
  const wide = rear.nominal >= blade.nominal ? rear : blade
  const room = sub(inside, wide)
  const lies = least(ends.blade) > most(o.z0) && most(ends.rear) < least(o.z1)
  const found = marginsOf(room)
  const margins = lies ? found : { ...found, settled: Math.max(0, found.settled), best: Math.max(0, found.best) }
  const contributions = contributionsOf(room)
  const path = `${cover.id}/inside`
  return [
    finding({
      id: `in-the-wall:${cover.id}:${section.id}:${i}`,
      check: 'in-the-wall',
      title: `${cover.name} over ${section.name}`,
      value: room.nominal,
      limit: 0,
      unit: 'mm',
      margins,
      contributions,
      at: { z: (low.nominal + high.nominal) / 2, theta: 0, r: wide.nominal / 2 },
      parts: [cover.id, `sections/${section.id}`],
      state: 'every state',
      why: `${mm(inside.nominal)} inside, over ${mm(wide.nominal)} outside: ${mm(margins.worst)} to ${mm(margins.best)} is left on the diameter.`,
      source: 'a sleeve goes over what it lies on',
      fix: holds(margins)
        ? []
        : [
            {
              text: `An inside of at least ${mm(upTo(inside.nominal - margins.worst))} mm goes over it.`,
              path,
              value: upTo(inside.nominal - margins.worst),
            },
            ...reading(world, { contributions, margins }),
          ],
    }),
  ]
}
