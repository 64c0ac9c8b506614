import type { PresetChoices } from '../presets/preset-choices.ts'
import { freshId } from '../project/path.ts'
import type { BodyInput, PartInput } from '../project/schema/part.ts'
import type { ZPlaceInput } from '../project/schema/place.ts'
import type { Project } from '../project/schema/project.ts'
import { type FreeStretch, freeStretch } from './free-stretch.ts'
import { lengthAlong } from './part-forms.ts'
import { heightAlone, heightFrom, type PlaceOf, throughWall } from './place-forms.ts'
import { usualLayout } from './usual-layout.ts'

export type PartKind = PartInput['kind']

/** In the order in which a hilt is usually filled. */
export const partKinds = ['cell', 'contact', 'board', 'speaker', 'switch', 'port', 'connector', 'other'] as const

/** The size each kind is tried with first; common practice, no source. */
const firstPreset: Readonly<Record<Exclude<PartKind, 'other'>, string>> = {
  cell: 'cell-18650-flat',
  contact: 'contact-leaf',
  board: 'board-sound-small',
  speaker: 'speaker-24',
  switch: 'switch-tact-6x6-h5',
  port: 'port-usb-c',
  connector: 'connector-blade-pins',
}

const names: Readonly<Record<PartKind, string>> = {
  cell: 'cell',
  contact: 'contact',
  board: 'sound board',
  speaker: 'speaker',
  switch: 'switch',
  port: 'charge port',
  connector: 'blade connector',
  other: 'part',
}

/** A switch is pushed to the wall, with room for its stem, mm; common practice, no source. */
const stemRoom = 2

export interface Added {
  readonly project: Project
  /** Id of the new part. */
  readonly id: string
  /** So many mm found no free stretch: it lies over others. */
  readonly noRoom?: number
}

/**
 * The project with one more part of a kind, in its usual size and in the first stretch where it fits; a contact at the
 * first end of a cell that has none. Where everything lies is taken from the newest answer.
 */
export function addPart(
  project: Project,
  kind: PartKind,
  presets: PresetChoices['parts'] | undefined,
  placeOf: PlaceOf,
): Added {
  const bare = kind === 'contact' ? bareEnd(project) : undefined
  const name = freshName(project, bare ? (bare.end === 'rear' ? 'rear contact' : 'front contact') : names[kind])
  const id = freshId(project.parts, name)
  const wanted = bare?.end === 'rear' ? 'contact-coil' : kind === 'other' ? undefined : firstPreset[kind]
  const preset = kind === 'other' ? undefined : (presets?.[kind].find((p) => p.id === wanted) ?? presets?.[kind][0])
  const { noRoom, ...place }: Placing = bare
    ? { presses: { part: bare.part, end: bare.end } }
    : placed(project, kind, preset?.body ?? plain, placeOf)
  const part: PartInput = { id, name, kind, ...(preset ? { preset: preset.id } : { body: plain }), ...place }
  return {
    project: { ...project, parts: [...project.parts, part] },
    id,
    ...(noRoom === undefined ? {} : { noRoom }),
  }
}

/** A like part right after it, on its own in the list: what presses or is fitted is not what the first is. */
export function duplicatePart(project: Project, id: string, placeOf: PlaceOf): Added | undefined {
  const first = project.parts.find((p) => p.id === id)
  if (!first) return undefined
  const name = freshName(project, (first.name ?? id).replace(/ \d+$/, ''))
  const { presses: _, at, ...rest } = first
  const { z: _z, face: _face, across, ...turned } = at ?? {}
  const beside = placeOf(`parts/${id}`)?.across
  const part: PartInput = {
    ...rest,
    id: freshId(project.parts, name),
    name,
    at: {
      ...turned,
      ...(across ? { across } : beside && first.presses ? { across: { x: beside.x, y: beside.y } } : {}),
      z: { of: `parts/${id}`, end: 'blade', by: usualLayout.between },
      face: 'rear',
    },
  }
  const i = project.parts.indexOf(first) + 1
  return {
    project: { ...project, parts: [...project.parts.slice(0, i), part, ...project.parts.slice(i)] },
    id: part.id,
  }
}

/** The list of parts with one of them moved up or down by one; undefined where it is at that end. */
export function reordered<T extends { readonly id: string }>(
  list: readonly T[],
  id: string,
  by: -1 | 1,
): T[] | undefined {
  const from = list.findIndex((r) => r.id === id)
  const [one, other] = [list[from], list[from + by]]
  if (!one || !other) return undefined
  return list.map((r) => (r === one ? other : r === other ? one : r))
}

function freshName(project: Project, wanted: string): string {
  const taken = new Set(project.parts.map((p) => p.name ?? p.id))
  for (let n = 1; ; n++) {
    const name = n === 1 ? wanted : `${wanted} ${n}`
    if (!taken.has(name)) return name
  }
}

interface BareEnd {
  readonly part: string
  readonly end: 'rear' | 'blade'
}

/** The first end of a cell on which nothing presses: rear ends before front ends of each cell. */
function bareEnd(project: Project): BareEnd | undefined {
  for (const cell of project.parts.filter((p) => p.kind === 'cell'))
    for (const end of ['rear', 'blade'] as const)
      if (!project.parts.some((p) => p.presses?.part === `parts/${cell.id}` && p.presses.end === end))
        return { part: `parts/${cell.id}`, end }
  return undefined
}

/** What a part without a preset is tried with. */
const plain: BodyInput = { shape: 'box', width: '10', height: '5', length: '10' }

type Placing = Pick<PartInput, 'at' | 'on' | 'goesIn' | 'presses'> & Pick<Added, 'noRoom'>

function placed(project: Project, kind: PartKind, body: BodyInput, placeOf: PlaceOf): Placing {
  const before = kind === 'cell' ? usualLayout.rearContact : 0
  const inWall = throughWall(body)
  const mouth = mouthOf(project)
  const long = before + (lengthAlong(body) ?? 0)
  const free = freeStretch(project, long, inWall, mouth, placeOf)
  const z = free ? startOf(free, before) : afterLast(project, before, placeOf)
  const noRoom = free && !free.fits ? { noRoom: long } : {}
  if (inWall) return { on: free?.section ?? mouth, goesIn: 'after', at: { z, face: 'rear', theta: 0 }, ...noRoom }
  return { at: { z, ...(kind === 'switch' ? { across: { pushed: 0, gap: stemRoom }, facing: 0 } : {}) }, ...noRoom }
}

/** Measured from the part before it, as one lays it down; the first by its height. */
const startOf = ({ rear, after }: FreeStretch, room: number): ZPlaceInput =>
  after ? heightFrom(rear + room, after, 'blade') : heightAlone(rear + room)

/** Before all places are known: a wall after the last part, or an end wall inside the mouth where it is the first. */
function afterLast(project: Project, room: number, placeOf: PlaceOf): ZPlaceInput {
  const sled = project.sleds[0]
  const all = project.parts.filter((p) => !p.on?.startsWith('sleds/') || p.on === `sleds/${sled?.id}`)
  // Before anything is judged, what presses on a rear end is the one thing known not to be the last.
  const on = all.filter((p) => p.presses?.end !== 'rear')
  const reach = (p: PartInput) => placeOf(`parts/${p.id}`)?.blade
  const last = on.reduce<PartInput | undefined>(
    (a, b) => (a === undefined || (reach(b) ?? Number.POSITIVE_INFINITY) >= (reach(a) ?? 0) ? b : a),
    undefined,
  )
  if (last) return { of: `parts/${last.id}`, end: 'blade', by: usualLayout.between + room }
  const from = mouthOf(project)
  const rear = placeOf(from)?.rear
  const by = usualLayout.mouth + usualLayout.endWall + room
  return rear === undefined ? { of: from, end: 'rear', by } : heightAlone(rear + by)
}

/** The section whose mouth the first sled goes through. */
function mouthOf(project: Project): string {
  const move = project.insertions.find((i) => i.moves === `sleds/${project.sleds[0]?.id}`)
  return move?.through?.of ?? `sections/${project.sections[0]?.id}`
}
