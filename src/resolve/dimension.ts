import { valueAt } from '../project/path.ts'
import type { Project } from '../project/schema/project.ts'

/** What a dimension is, which decides the tool it is usually read with and how readings are taken together. */
export type Dimension = 'bore' | 'outside' | 'length' | 'angle' | 'offset'

export interface Ask {
  /** Path of the field in the project. */
  readonly path: string
  readonly as: Dimension
  /** For sizes that a preset names: its source, and whether the part will be swapped. */
  readonly preset?: string
  readonly swapped?: boolean
  /** Least and most believed, mm; by default above 0 (sizes), or any (offsets and angles), and at most 2000. */
  readonly min?: number
  readonly max?: number
}

export const usualTool: Record<Dimension, string> = {
  bore: 'calliper-inside',
  outside: 'calliper-outside',
  length: 'calliper-depth',
  angle: '',
  offset: 'calliper-depth',
}

/** Fields of the project by their paths, ids and places in lists left out as `*`; the first that fits. */
const fields: readonly (readonly [RegExp, Pick<Ask, 'as' | 'min' | 'max'>])[] = [
  [/^sections\/\*\/length$/, { as: 'length' }],
  [/^sections\/\*\/outside\/\*\/length$/, { as: 'length' }],
  [/^sections\/\*\/outside\/\*\/(diameter|diameterEnd)$/, { as: 'outside' }],
  [/^sections\/\*\/bore\/\*\/length$/, { as: 'length' }],
  [/^sections\/\*\/bore\/\*\/(diameter|diameterEnd)$/, { as: 'bore' }],
  [/^sections\/\*\/bore\/\*\/allowance$/, { as: 'offset', min: 0, max: 5 }],
  [/^sections\/\*\/eccentricity\/offset$/, { as: 'offset', min: 0, max: 20 }],
  [/^sections\/\*\/clamp\/(open|closed)$/, { as: 'bore' }],
  [/^joints\/\*\/engagement$/, { as: 'length', min: 0 }],
  [/^joints\/\*\/play$/, { as: 'offset', min: 0, max: 5 }],
  [/^features\/\*\/shape\/half$/, { as: 'angle', min: 0.1, max: 180 }],
  [/^features\/\*\/shape\/tip$/, { as: 'offset', min: 0, max: 200 }],
  [/^features\/\*\/shape\/round$/, { as: 'offset', min: 0, max: 20 }],
  [/^features\/\*\/shape\/(reach|depth)$/, { as: 'length' }],
  [/^features\/\*\/shape\/(diameter|length|width)$/, { as: 'outside' }],
  [/^screws\/\*\/tip$/, { as: 'offset', min: 0, max: 200 }],
  [/^sleeves\/\*\/length$/, { as: 'length' }],
  [/^sleeves\/\*\/inside$/, { as: 'bore' }],
  [/^sleeves\/\*\/outside$/, { as: 'outside' }],
  [/^sleeves\/\*\/standoff$/, { as: 'offset', min: 0 }],
  [/^parts\/\*\/body\/inner$/, { as: 'offset' }],
  [/^parts\/\*\/body\/half$/, { as: 'angle' }],
  [/^parts\/\*\/body\/components\/\*\/[zx]$/, { as: 'offset' }],
  [/^parts\/\*\/body\/(components\/\*\/)?[a-z]+$/i, { as: 'outside' }],
  [/^parts\/\*\/(solid|free|preload)$/, { as: 'length', min: 0 }],
  [/^parts\/\*\/(tags|wireBend|at\/outer)$/, { as: 'offset', min: 0 }],
  [/^wires\/\*\/diameter$/, { as: 'outside' }],
  [/\/(theta|facing|pushed|half)$/, { as: 'angle' }],
  [/\/(z|by|x|y|r|gap)$/, { as: 'offset' }],
]

/**
 * How the size at a path is read: as what, which decides its usual tool, and within which limits. Undefined for what is
 * no size. The resolver asks for each field itself; this is for whoever has only its path.
 */
export function dimensionOf(project: Project, path: string): Pick<Ask, 'as' | 'min' | 'max'> | undefined {
  const names = path.split('/')
  const bare = names.map((n, i) => (i === 1 || /^\d+$/.test(n) || inBore(names, i) ? '*' : n)).join('/')
  // The width of a slot is read with the inside jaws, like a bore.
  if (/^features\/\*\/shape\/width$/.test(bare) && valueAt(project, path.replace(/width$/, 'form')) === 'slot')
    return { as: 'bore' }
  return fields.find(([pattern]) => pattern.test(bare))?.[1]
}

const inBore = (names: readonly string[], i: number): boolean => i === 3 && names[2] === 'bore'
