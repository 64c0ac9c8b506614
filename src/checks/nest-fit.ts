import { contributionsOf, marginsOf } from '../quantity/margins.ts'
import { combine, exact, most, type Quantity, scale, sub } from '../quantity/quantity.ts'
import type { Part } from '../resolve/assembly.ts'
import { fitClassOf, nestGap } from '../sled/fit.ts'
import { type NestJob, nestJob, sledJob } from '../sled/job.ts'
import { isPocket } from '../sled/nests/nest-of.ts'
import { contactRoom } from './contact-room.ts'
import { type Finding, finding } from './finding.ts'
import { reading } from './reading.ts'
import { holds } from './verdict.ts'
import { mm } from './words.ts'
import type { Check, World } from './world.ts'

/** A part in its own nest is meant to touch: the fit class's own interval is judged, not the general clearance. */
export const nestFit: Check = {
  name: 'nest-fit',
  title: 'Parts in their nests',
  what: 'Whether each part goes into its own nest with the fit asked for, print error and part size at their worst.',
  run: (world) =>
    world.assembly.sleds.flatMap((sled) =>
      world.assembly.parts
        .filter((p) => p.sled === sled.id && p.goesIn === 'with-sled')
        .flatMap((part) => (part.contact ? contactRoom(world, sled, part) : [judged(world, sled.id, part)])),
    ),
}

function judged(world: World, sledId: string, part: Part): Finding {
  const sled = world.assembly.sleds.find((s) => s.id === sledId) as World['assembly']['sleds'][number]
  const job = nestJob(sledJob(world.assembly, sled), part)
  const fit = fitClassOf(job)
  const size = sizeOf(part)
  const gap = drawnGap(job, size)
  // Diametral, as the classes are: the nest is drawn around the largest part, and each of its two faces may stand in.
  const drawn = 2 * (most(size) + gap.value)
  const printed: Quantity = combine([
    [exact(drawn), 1],
    [size, -2],
    [sled.print.error, -2],
  ])
  const allowed = fit === 'press' || fit === 'snug' ? sled.print.fit.press.min : 0
  const margin = sub(printed, exact(allowed))
  const margins = marginsOf(margin)
  const contributions = contributionsOf(margin)
  const works = Math.ceil(((gap.typedRadius ?? gap.value) - margins.worst / 2) * 100 - 1e-6) / 100
  return finding({
    id: `nest-fit:${part.id}`,
    check: 'nest-fit',
    title: `${part.name} in its nest, ${fit} fit`,
    value: printed.nominal,
    limit: allowed,
    unit: 'mm',
    margins,
    contributions,
    at: {
      z: part.ends.rear.nominal,
      theta: part.across.facing,
      r: Math.hypot(part.across.x.nominal, part.across.y.nominal),
    },
    parts: [part.id, `sleds/${sledId}`],
    state: 'every state',
    why: `${drawnText(part, drawn, size)}, print error ±${mm(most(sled.print.error))} a face: ${mm(printed.nominal)} as drawn, ${mm(margins.worst + allowed)} at the worst; ${allowed < 0 ? `ribs give way down to ${mm(allowed)}` : 'it must go in by hand'}.`,
    source: `${fit} fit: ${sled.print.source}`,
    fix: holds(margins)
      ? []
      : [
          {
            text: `Draw the ${gap.typedRadius ? 'pocket with radius' : 'nest with'} ${mm(works)} mm${gap.typedRadius ? '' : ' on each side'}.`,
            path: gap.path,
            value: works,
          },
          ...reading(world, { contributions, margins }),
        ],
  })
}

interface DrawnGap {
  readonly value: number
  readonly path: string
  readonly typedRadius: number | undefined
}

/** One-sided gap as drawn: a typed pocket radius says it, whatever the gap would be. */
function drawnGap(job: NestJob, size: Quantity): DrawnGap {
  const typedRadius = isPocket(job) ? job.typed?.pocketRadius : undefined
  return typedRadius === undefined
    ? { value: nestGap(job).value, path: job.path('gap'), typedRadius }
    : { value: typedRadius - most(size), path: job.path('pocketRadius'), typedRadius }
}

/** Half of what the nest is drawn around; a ring sector lies on the floor of its recess, which must not be too high. */
function sizeOf(part: Part): Quantity {
  const shape = part.bodies[0]?.shape
  return shape?.kind === 'sector' ? scale(shape.rIn, -1) : part.extent.halfU
}

function drawnText(part: Part, drawn: number, size: Quantity): string {
  if (part.bodies[0]?.shape.kind === 'sector')
    return `Floor of the recess drawn at radius ${mm(-drawn / 2)}, part from radius ${mm(-size.nominal)} (both doubled below)`
  return part.extent.round
    ? `Pocket drawn ${mm(drawn)} across, part ${mm(2 * size.nominal)}`
    : `Shelf drawn ${mm(drawn)} wide, part ${mm(2 * size.nominal)}`
}
