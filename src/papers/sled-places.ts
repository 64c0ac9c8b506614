import { type PlanItem, planSpan } from '../../geometry/plan/plan.ts'
import type { Assembly, Sled } from '../resolve/assembly.ts'
import type { SledDimension } from './sled-dimension.ts'

type Place = Omit<SledDimension, 'typeable'>
type Kind = SledDimension['kind']

/** Common practice, no source: as `resolve` and the nests take them where nothing is typed. */
const practice = 'common practice, no source'

/**
 * What a sled's plan does not name with its solids: its ends, and where each of its features lies. Typed ones as
 * they stand, the others as they came out.
 */
export function placesOf(assembly: Assembly, sled: Sled, items: readonly PlanItem[]): readonly Place[] {
  return [...ends(assembly, sled), ...slim(sled), ...features(sled, items), ...pairsOfArms(sled, items)]
}

function ends(assembly: Assembly, sled: Sled): Place[] {
  const { from, to, rearWall, bladeWall } = sled.input
  const wall = assembly.thresholds['end-wall']
  const at = (field: string, name: string, value: number, typed: unknown, source: string): Place =>
    place(sled, field, name, value, 'mm', typed === undefined ? 'default' : 'typed', source, 'body')
  const walls = [
    ...(from === undefined
      ? [at('rearWall', 'wall at the rear end', rearWall ?? wall.value, rearWall, wall.source)]
      : []),
    ...(to === undefined
      ? [at('bladeWall', 'wall at the blade end', bladeWall ?? wall.value, bladeWall, wall.source)]
      : []),
  ]
  return [
    at('from', 'rear end', sled.ends.rear.nominal, from, 'first part, less the wall at the end'),
    at('to', 'blade end', sled.ends.blade.nominal, to, 'last part, and the wall at the end'),
    ...walls,
  ]
}

function slim(sled: Sled): Place[] {
  if (sled.input.outside !== 'slim' || (sled.input.bodies ?? []).length > 0) return []
  const ring = sled.rings.find((r) => r.id === 'rear-ring')
  const [piece] = sled.pieces
  if (!ring || !piece) return []
  const kind = (typed: unknown): Kind => (typed === undefined ? 'default' : 'typed')
  const { slimBy, ringLength } = sled.input
  return [
    place(sled, 'slimBy', 'slimmer than the rings', ring.radius - piece.radius, 'mm', kind(slimBy), practice, 'body'),
    place(sled, 'ringLength', 'length of the end rings', ring.z1 - ring.z0, 'mm', kind(ringLength), practice, 'body'),
  ]
}

interface Known {
  readonly field: string
  readonly name: string
  readonly unit: 'mm' | '°'
  /** What it came to where it was not typed; undefined where nobody can say. */
  readonly found?: (item: PlanItem) => number | undefined
  readonly source?: string
}

const z: Known = { field: 'z', name: 'place along z', unit: 'mm' }
const theta: Known = { field: 'theta', name: 'clock angle', unit: '°' }
const from: Known = {
  field: 'from',
  name: 'rear end',
  unit: 'mm',
  found: (i) => planSpan(i.solid).z0,
  source: 'as far as it has to go',
}
const to: Known = { ...from, field: 'to', name: 'blade end', found: (i) => planSpan(i.solid).z1 }
const distance: Known = {
  field: 'r',
  name: 'distance from the axis',
  unit: 'mm',
  found: ({ solid }) => (solid.shape === 'cylinder' ? Math.hypot(solid.x, solid.y) : undefined),
  source: 'as far out as the wall allows',
}

/** Where the records of each list say that they lie. */
const lists: Readonly<Record<string, { readonly nest: string; readonly fields: readonly Known[] }>> = {
  rings: { nest: 'ring', fields: [z, { field: 'length', name: 'length', unit: 'mm' }] },
  bulkheads: { nest: 'bulkhead', fields: [z] },
  discs: { nest: 'disc', fields: [z] },
  rods: { nest: 'rod', fields: [theta, distance] },
  keys: { nest: 'key', fields: [theta, from, to] },
  towers: { nest: 'switch tower', fields: [theta, from, to] },
  splits: { nest: 'split joint', fields: [z, theta] },
  marks: { nest: 'mark', fields: [z, theta] },
  channels: { nest: 'wire channel', fields: [theta, from, to] },
  windows: { nest: 'window', fields: [from, to] },
  bodies: { nest: 'body', fields: [from, to] },
}

function features(sled: Sled, items: readonly PlanItem[]): Place[] {
  return Object.entries(lists).flatMap(([list, { nest, fields }]) => {
    const records = (sled.input[list] ?? []) as readonly Readonly<Record<string, unknown>>[]
    return records.flatMap((record, i) => {
      const key = typeof record['id'] === 'string' ? record['id'] : String(i)
      const item = items.find((x) => x.id === `sleds/${sled.id}/${list}/${key}`)
      return fields.flatMap((f) => {
        const path = `${list}/${key}/${f.field}`
        const typed = record[f.field]
        const value = typed === undefined ? item && f.found?.(item) : drawn(sled, path, typed)
        if (value === undefined) return []
        const kind = typed === undefined ? 'default' : 'typed'
        return [place(sled, path, f.name, value, f.unit, kind, f.source ?? '', nest)]
      })
    })
  })
}

/** A typed height as it was drawn; any other number as it was typed. */
function drawn(sled: Sled, path: string, typed: unknown): number | undefined {
  return sled.drawn.get(`sleds/${sled.id}/${path}`) ?? (typeof typed === 'number' ? typed : undefined)
}

function pairsOfArms(sled: Sled, items: readonly PlanItem[]): Place[] {
  const cradles = new Set(items.filter((i) => i.nest === 'cradle arm' && i.op === 'add').map((i) => i.by))
  return [...cradles].map((part): Place => {
    const count = items.filter((i) => i.by === part && i.nest === 'cradle arm' && i.id.endsWith('a')).length
    const typed = sled.input.nests?.find((n) => n.part === part)?.arms
    const kind = typed === undefined ? 'default' : 'typed'
    return { ...place(sled, `nests/${part}/arms`, 'pairs of arms', count, '', kind, practice, 'cell cradle'), part }
  })
}

function place(
  sled: Sled,
  field: string,
  name: string,
  value: number,
  unit: Place['unit'],
  kind: Kind,
  source: string,
  nest: string,
): Place {
  const told = kind === 'typed' ? 'typed' : source
  return {
    sled: sled.id,
    path: `sleds/${sled.id}/${field}`,
    name,
    value,
    unit,
    kind,
    source: told,
    nest,
    part: undefined,
  }
}
