import type { ThresholdInput } from '../project/schema/project.ts'
import { usual } from '../rules/usual.ts'

/** A setting of the job: its default, unit and where that comes from. Every one can be changed per project. */
export interface ThresholdDefinition {
  readonly id: string
  readonly what: string
  readonly value: number
  readonly unit: 'mm' | '°' | '' | 'N'
  readonly min: number
  readonly max: number
  readonly source: string
}

const practice = 'common practice, no source'

/** Clearances are one-sided gaps. */
export const thresholdDefinitions = [
  {
    id: 'clearance',
    what: 'least gap between the sled with its contents and the hilt',
    value: usual.clearance,
    unit: 'mm',
    min: 0,
    max: 5,
    source: practice,
  },
  {
    id: 'part-gap',
    what: 'least gap between two parts in the sled',
    value: usual.partGap,
    unit: 'mm',
    min: 0,
    max: 10,
    source: practice,
  },
  {
    id: 'fitted-gap',
    what: 'least gap between a part fitted after and the sled with its contents',
    value: 0.3,
    unit: 'mm',
    min: 0,
    max: 10,
    source: practice,
  },
  {
    id: 'wire-gap',
    what: 'play of a wire bundle in its channel, on the diameter',
    value: 0.3,
    unit: 'mm',
    min: 0,
    max: 10,
    source: practice,
  },
  {
    id: 'ovality',
    what: 'how far an unread diameter of a bore may be off the one read',
    value: 0.05,
    unit: 'mm',
    min: 0,
    max: 2,
    source: practice,
  },
  {
    id: 'outline',
    what: 'how far a board edge given by its outline may be off',
    value: 0.15,
    unit: 'mm',
    min: 0,
    max: 2,
    source: practice,
  },
  {
    id: 'angle',
    what: 'how far a clock angle set by eye may be off, each way',
    value: 2,
    unit: '°',
    min: 0,
    max: 45,
    source: practice,
  },
  {
    id: 'coverage',
    what: 'how sure an interval from readings is meant to be',
    value: 0.99,
    unit: '',
    min: 0.5,
    max: 0.9999,
    source: 'JCGM 100 (GUM), chosen high because a false clear costs most',
  },
  {
    id: 'seat-shift',
    what: 'how far off its drawn place a sled may come to sit on a shoulder',
    value: 0.5,
    unit: 'mm',
    min: 0,
    max: 10,
    source: practice,
  },
  {
    id: 'least-wall',
    what: 'a metal wall thinner than this is taken for a slip of the pen',
    value: 0.3,
    unit: 'mm',
    min: 0,
    max: 5,
    source: practice,
  },
  {
    id: 'end-wall',
    what: 'sled material before the first and after the last part',
    value: 2,
    unit: 'mm',
    min: 0.4,
    max: 50,
    source: practice,
  },
  {
    id: 'preload',
    what: 'least compression of a contact that still presses',
    value: usual.preload,
    unit: 'mm',
    min: 0,
    max: 10,
    source: practice,
  },
  {
    id: 'axial-gap',
    what: 'length left over in a closed pocket',
    value: 0.4,
    unit: 'mm',
    min: 0,
    max: 10,
    source: practice,
  },
] as const satisfies readonly ThresholdDefinition[]

export type ThresholdId = (typeof thresholdDefinitions)[number]['id']

export interface Threshold extends ThresholdDefinition {
  /** True where the project sets it. */
  readonly typed: boolean
}

export type Thresholds = Readonly<Record<ThresholdId, Threshold>>

/** The settings of a job: the defaults, with what the project changes. Unknown ids and bad values are left to the caller. */
export function thresholdsOf(given: readonly ThresholdInput[]): Thresholds {
  const typed = new Map(given.map((t) => [t.id, t]))
  const entries = thresholdDefinitions.map((d): [ThresholdId, Threshold] => {
    const own = typed.get(d.id)
    return [
      d.id,
      own
        ? {
            ...d,
            value: own.value,
            typed: true,
            source: own.note ? `set in this project: ${own.note}` : 'set in this project',
          }
        : { ...d, typed: false },
    ]
  })
  return Object.fromEntries(entries) as Record<ThresholdId, Threshold>
}
