import { contributionsOf, marginsOf } from '../quantity/margins.ts'
import { add, combine, exact, least, most, type Quantity, sub } from '../quantity/quantity.ts'
import type { Contact, Part } from '../resolve/assembly.ts'
import { nestJob, sledJob } from '../sled/job.ts'
import { pocketSpan } from '../sled/nests/round-nest.ts'
import { rare } from '../sled/rare.ts'
import { type Finding, type Fix, finding } from './finding.ts'
import { heightFix } from './fix-value.ts'
import { reading } from './reading.ts'
import { holds } from './verdict.ts'
import { mm } from './words.ts'
import type { Check, Result, World } from './world.ts'

interface Chain {
  readonly id: string
  /** From the rear, each touching the next. */
  readonly cells: readonly Part[]
  readonly contacts: readonly Part[]
  /** Room between the faces at both ends. */
  readonly room: Quantity
  /** The last one, where nothing stops it. */
  readonly open: Part | undefined
}

type End = 'rear' | 'blade'

/** Along the axis: contacts between solid and free length, for the longest and for the shortest cells. */
export const axialChain: Check = {
  name: 'axial-chain',
  title: 'Along the axis',
  what: 'Contacts and springs: not solid with the longest cell, still pressing with the shortest.',
  run: (world) => chains(world).flatMap((c) => judged(world, c)),
}

function chains(world: World): Chain[] {
  const { parts } = world.assembly
  const at = (cell: Part, end: End) => parts.filter((p) => p.contact?.presses === cell.id && p.contact.end === end)
  const all = parts.flatMap((cell) => {
    const beyond = (end: End) =>
      at(cell, end).length > 0 ? [] : pushed(world, cell, end, (p) => at(p, end).length > 0)
    if (at(cell, 'rear').length + at(cell, 'blade').length === 0) return []
    const cells = [...beyond('rear').reverse(), cell, ...beyond('blade')]
    return chainsOf(world, cells, at(cells[0] as Part, 'rear'), at(cells.at(-1) as Part, 'blade'))
  })
  // Those with a contact at either end are found from both.
  return all.filter((c, i) => all.findIndex((o) => o.id === c.id) === i)
}

/** What a cell pushes along where no contact stops it. */
function pushed(world: World, cell: Part, end: End, isPressed: (p: Part) => boolean): Part[] {
  const { assembly, plans } = world
  const sled = assembly.sleds.find((s) => s.id === cell.sled)
  const plan = sled && plans.get(sled.id)
  return plan ? rare().inLine(assembly, sled, plan, cell, end, isPressed) : []
}

function chainsOf(world: World, cells: readonly Part[], rears: readonly Part[], blades: readonly Part[]): Chain[] {
  const [first, last] = [cells[0] as Part, cells.at(-1) as Part]
  const [near, far] = [stopsOf(world, first), stopsOf(world, last)]
  const face = (cell: Part, contact: Part | undefined, stop: Quantity) =>
    inHilt(world, (contact ?? cell).sled, contact?.contact?.base ?? stop)
  const several = rears.length > 1 || blades.length > 1
  // Two at one end press side by side, not one behind the other.
  return orNone(rears).flatMap((rear) =>
    orNone(blades).map((blade): Chain => {
      const room = combine([
        [face(last, blade, far.blade), 1],
        [face(first, rear, near.rear), -1],
        [near.error, -2],
      ])
      const contacts = [rear, blade].filter((p) => p !== undefined)
      const members = [first.id, ...cells.slice(1).map((c) => c.input.id)]
      const id = [...members, ...(several ? contacts.map((p) => p.input.id) : [])].join(':')
      const open = !rear && isOpen(world, first, near.rear, 'rear') ? first : undefined
      return { id, cells, contacts, room, open: !blade && isOpen(world, last, far.blade, 'blade') ? last : open }
    }),
  )
}

/** Whether a sled ends, or has a gap between its discs, where a part in it would be stopped. */
function isOpen({ plans }: World, { sled }: Part, stop: Quantity, end: End): boolean {
  const plan = sled === undefined ? undefined : plans.get(sled)
  return plan !== undefined && !rare().isStopped(plan, stop.nominal, end)
}

const orNone = (list: readonly Part[]): readonly (Part | undefined)[] => (list.length > 0 ? list : [undefined])

/** Where a height of a sled truly lies: the sled may come to lie elsewhere than it is drawn. */
function inHilt(world: World, sled: string | undefined, q: Quantity): Quantity {
  const shift = world.assembly.sleds.find((s) => s.id === sled)?.shift
  return shift ? add(q, shift) : q
}

/** Where the cell is stopped at an end without a contact, and how far each of the two printed faces may stand in. */
function stopsOf(world: World, cell: Part): { rear: Quantity; blade: Quantity; error: Quantity } {
  const sled = world.assembly.sleds.find((s) => s.id === cell.sled)
  if (!sled) return { rear: cell.ends.rear, blade: exact(cell.ends.blade.nominal), error: exact(0) }
  const { z0, z1 } = pocketSpan(nestJob(sledJob(world.assembly, sled), cell))
  return { rear: exact(z0), blade: exact(z1), error: sled.print.error }
}

function judged(world: World, chain: Chain): Result[] {
  const { cells, contacts, open } = chain
  const all = contacts.map((p) => p.contact as Contact)
  const lacking = contacts.find((p) => !p.contact?.solid || !p.contact?.free)
  const id = `axial-chain:${chain.id}`
  const rest = { id, check: 'axial-chain', title: `Contacts of ${namesOf(cells)}` }
  if (open)
    return [
      {
        ...rest,
        parts: [...cells, ...contacts].map((p) => p.id),
        missing: `what stops ${open.name}`,
        path: `${open.id}/at/z`,
        hint: 'The sled has no wall there: make it longer, or put a contact or a disc there.',
      },
    ]
  if (lacking) {
    const what = lacking.contact?.solid ? 'free' : 'solid'
    return [
      {
        ...rest,
        parts: [...cells.map((c) => c.id), lacking.id],
        missing: `${what} length of ${lacking.name}`,
        path: `${lacking.id}/${what}`,
        hint: what === 'solid' ? 'Squeeze it flat and measure it.' : 'Measure it with nothing pressing.',
      },
    ]
  }
  const length = add(...cells.map((c) => sub(c.ends.blade, c.ends.rear)))
  const what = cells.length > 1 ? 'cells' : 'cell'
  const spare = sub(chain.room, length)
  const solid = add(...all.map((c) => c.solid as Quantity))
  const free = add(...all.map((c) => c.free as Quantity))
  const preload = add(...all.map((c) => c.preload ?? exact(0)))
  const practice = world.assembly.thresholds.preload.source
  return [
    linked(
      world,
      chain,
      'longest',
      sub(spare, solid),
      spare,
      solid,
      `longest ${what}: room ${mm(chain.room.nominal)} − ${what} ${mm(most(length))} leaves ${mm(chain.room.nominal - most(length))} for the contacts, ${mm(solid.nominal)} when fully compressed`,
      'a contact compressed solid bends or pushes the sled apart',
    ),
    linked(
      world,
      chain,
      'shortest',
      sub(sub(free, preload), spare),
      spare,
      sub(free, preload),
      `shortest ${what}: room ${mm(chain.room.nominal)} − ${what} ${mm(least(length))} leaves ${mm(chain.room.nominal - least(length))} for the contacts; free they reach ${mm(free.nominal)}, and need ${mm(preload.nominal)} of that to press`,
      `preload: ${practice}`,
    ),
  ]
}

function linked(
  world: World,
  chain: Chain,
  which: 'longest' | 'shortest',
  margin: Quantity,
  spare: Quantity,
  limit: Quantity,
  why: string,
  source: string,
): Finding {
  const margins = marginsOf(margin)
  const contributions = contributionsOf(margin)
  const { cells, contacts } = chain
  const name = namesOf(cells)
  const base = contacts[0] as Part
  const lack = -margins.worst
  const towards = which === 'longest' ? 'away from' : 'towards'
  return finding({
    id: `axial-chain:${chain.id}:${which}`,
    check: 'axial-chain',
    title:
      which === 'longest' ? `Contacts not solid with the longest ${name}` : `Contacts press with the shortest ${name}`,
    value: spare.nominal,
    limit: limit.nominal,
    unit: 'mm',
    margins,
    contributions,
    at: { z: base.ends.rear.nominal, theta: 0, r: 0 },
    parts: [...cells, ...contacts].map((p) => p.id),
    state: 'every state',
    why: `${why[0]?.toUpperCase()}${why.slice(1)}; ${mm(margins.worst)} to ${mm(margins.best)} is left.`,
    source,
    fix: holds(margins)
      ? []
      : [
          ...faceMoved(base, which === 'longest' ? lack : -lack, towards),
          ...reading(world, { contributions, margins }),
        ],
  })
}

const namesOf = (cells: readonly Part[]): string => cells.map((c) => c.name).join(' and ')

/** The face a contact stands on, so much farther from the cell (or nearer, below 0). */
function faceMoved({ id, name, input, contact }: Part, away: number, towards: string): Fix[] {
  const by = contact?.end === 'rear' ? -away : away
  const change = heightFix(`${id}/at/z`, input.at?.z, contact?.base.nominal ?? 0, by)
  return change
    ? [{ text: `Set the face ${name} stands on ${mm(Math.abs(away))} mm ${towards} the cell.`, ...change }]
    : []
}
