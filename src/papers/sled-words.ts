import type { SledInput } from '../project/schema/sled.ts'

/** The lists of a sled whose records a person adds and takes away. */
export type FeatureList =
  | 'bulkheads'
  | 'discs'
  | 'rods'
  | 'keys'
  | 'towers'
  | 'windows'
  | 'channels'
  | 'splits'
  | 'marks'
  | 'rings'
  | 'seats'

/** A number of a feature: what it is called, and whether the feature is nothing without it. */
export interface FeatureField {
  readonly field: string
  readonly name: string
  readonly unit: 'mm' | '°'
  readonly needed?: boolean
  /** Kept as it was typed, with its unit: a height or a size; the others are drawn numbers. */
  readonly text?: boolean
}

export interface FeatureKind {
  readonly list: FeatureList
  readonly word: string
  readonly what: string
  readonly fields: readonly FeatureField[]
}

const z: FeatureField = { field: 'z', name: 'place along z', unit: 'mm', needed: true, text: true }
const theta: FeatureField = { field: 'theta', name: 'clock angle', unit: '°', needed: true }
const from: FeatureField = { field: 'from', name: 'rear end', unit: 'mm', text: true }
const to: FeatureField = { field: 'to', name: 'blade end', unit: 'mm', text: true }
const mm = (field: string, name: string): FeatureField => ({ field, name, unit: 'mm' })

/** What can be put on a sled, in the order in which one thinks of it. */
export const featureKinds: readonly FeatureKind[] = [
  {
    list: 'windows',
    word: 'window',
    what: 'room in the outside for what sticks into the bore',
    fields: [
      { ...theta, needed: false },
      mm('width', 'width'),
      mm('floor', 'radius of the floor'),
      mm('gap', 'gap'),
      from,
      to,
    ],
  },
  {
    list: 'channels',
    word: 'wire channel',
    what: 'a way for the wires, along the sled',
    fields: [theta, mm('width', 'channel width'), mm('r', 'distance from the axis'), from, to],
  },
  {
    list: 'bulkheads',
    word: 'bulkhead',
    what: 'a wall across the sled',
    fields: [z, mm('thickness', 'bulkhead thickness')],
  },
  {
    list: 'rods',
    word: 'rod',
    what: 'a bought rod along the whole sled',
    fields: [theta, mm('r', 'distance from the axis'), mm('diameter', 'rod diameter'), mm('gap', 'rod gap')],
  },
  { list: 'discs', word: 'disc', what: 'one disc of a sled on rods', fields: [z, mm('thickness', 'disc thickness')] },
  {
    list: 'keys',
    word: 'key',
    what: 'a rib for a slot of the hilt, or a groove for a pin of it',
    fields: [theta, mm('width', 'key width'), mm('height', 'key height'), from, to],
  },
  {
    list: 'towers',
    word: 'switch tower',
    what: 'a stand that carries a switch under the wall',
    fields: [
      theta,
      { field: 'half', name: 'tower half-angle', unit: '°' },
      { ...mm('outer', 'tower radius'), needed: true },
      mm('inner', 'tower root'),
      { ...from, needed: true },
      { ...to, needed: true },
    ],
  },
  {
    list: 'splits',
    word: 'split',
    what: 'a cut into two pieces that are printed one by one',
    fields: [
      z,
      mm('pinDiameter', 'pin diameter'),
      mm('pinLength', 'pin length'),
      mm('gap', 'joint gap'),
      { ...theta, needed: false },
    ],
  },
  {
    list: 'marks',
    word: 'mark',
    what: 'engraved text',
    fields: [z, { ...theta, needed: false }, mm('height', 'letter height'), mm('depth', 'engraving depth')],
  },
  {
    list: 'rings',
    word: 'ring',
    what: 'a stretch of its own diameter around the body',
    fields: [
      z,
      { ...mm('length', 'length'), needed: true },
      { ...mm('diameter', 'ring diameter'), needed: true, text: true },
    ],
  },
  { list: 'seats', word: 'seat', what: 'a contact with the hilt that is meant', fields: [] },
]

/** Where a sled lies and how wide it is, as far as it is known, mm. */
export interface SledSpan {
  readonly rear: number
  readonly blade: number
  readonly diameter: number
}

/** A feature as it is first put on a sled: in its middle, to be moved from there. The id is the wanted one. */
export function newFeature(list: FeatureList, { rear, blade, diameter }: SledSpan): Readonly<Record<string, unknown>> {
  const middle = Math.round((rear + blade) / 2)
  const near = { from: middle - 5, to: middle + 5 }
  switch (list) {
    case 'bulkheads':
      return { id: 'wall', z: middle }
    case 'discs':
      return { id: 'disc', z: middle }
    case 'rods':
      return { id: 'rod', theta: 90 }
    case 'keys':
      return { id: 'key', theta: 180 }
    case 'towers':
      return { id: 'tower', theta: 0, outer: Number((diameter / 2 + 1).toFixed(1)), ...near }
    case 'windows':
      return { id: 'window', theta: 0, ...near }
    case 'channels':
      return { id: 'channel', theta: 90 }
    case 'splits':
      return { id: 'split', z: middle }
    case 'marks':
      return { id: 'mark', text: 'R1', z: middle }
    case 'rings':
      return { id: 'ring', z: middle, length: 5, diameter }
    case 'seats':
      return { id: 'seat', face: 'blade' }
  }
}

/** How a sled's outside comes about. */
export type OutsideChoice = 'straight' | 'throat' | 'slim' | 'pieces'

/** Which of them a sled has; pieces that were typed one by one come before all else. */
export function outsideOf(sled: Pick<SledInput, 'outside' | 'bodies'>): OutsideChoice {
  return sled.bodies && sled.bodies.length > 0 ? 'pieces' : (sled.outside ?? 'straight')
}
