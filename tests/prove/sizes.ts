import { parseAngle, parseLength } from '../../src/entry/entry.ts'
import type { Presets } from '../../src/presets/presets.ts'
import { isBetween, isFromReadings } from '../../src/project/forms.ts'
import type { Project } from '../../src/project/schema/project.ts'
import type { QuantityInput } from '../../src/project/schema/quantity.ts'
import { type ThresholdId, thresholdDefinitions } from '../../src/resolve/thresholds.ts'
import { lengthFromReadings } from '../../src/rules/length.ts'
import { boreFromReadings, outsideFromReadings } from '../../src/rules/round.ts'
import { freeBore } from '../../src/rules/thread.ts'
import { parseThread } from '../../src/rules/thread-designation.ts'
import type { Tool } from '../../src/rules/tool.ts'
import type { Draw, Kind } from './draw.ts'

/** The project as written, and one draw of everything in it that is not sure. */
export interface Reality {
  readonly project: Project
  readonly presets: Presets
  readonly draw: Draw
}

export type As = 'bore' | 'outside' | 'length' | 'angle' | 'offset'

export interface Ask {
  readonly path: string
  readonly as: As
  /** Something the sled is drawn by: a bare number is exact. */
  readonly drawn?: boolean
  /** From a preset: a bare number is exact. */
  readonly preset?: boolean
  /** Will be swapped for another. */
  readonly swapped?: boolean
}

/** A setting of the project: its own or the default. */
export function setting(project: Project, id: ThresholdId): number {
  const own = project.thresholds.find((t) => t.id === id)
  return own?.value ?? (thresholdDefinitions.find((d) => d.id === id) as { value: number }).value
}

interface Known {
  readonly nominal: number
  readonly offs: readonly {
    readonly path: string
    readonly kind: Kind
    readonly minus: number
    readonly plus: number
  }[]
}

/** A dimension's true value in this draw, mm or degrees. */
export function sizeAt(r: Reality, input: QuantityInput, ask: Ask): number {
  const k = knownOf(r, input, ask)
  return k.offs.reduce((sum, o) => sum + r.draw.off(o.path, o.kind, o.minus, o.plus), k.nominal)
}

/** Its largest value in any draw. */
export function mostOf(r: Reality, input: QuantityInput, ask: Ask): number {
  const k = knownOf(r, input, ask)
  return k.offs.reduce((sum, o) => sum + o.plus, k.nominal)
}

function knownOf(r: Reality, input: QuantityInput, ask: Ask): Known {
  const spread = (nominal: number, minus: number, plus: number, kind?: Kind): Known => ({
    nominal,
    offs: [{ path: ask.path, kind: kind ?? (ask.swapped ? 'varies' : 'unknown'), minus, plus }],
  })
  if (typeof input === 'number') return ask.drawn || ask.preset ? spread(input, 0, 0) : reading(r, [input], ask)
  if (typeof input === 'string') {
    const parsed = ask.as === 'angle' ? parseAngle(input) : parseLength(input)
    if (!parsed.ok) throw new Error(`the generator wrote "${input}"`)
    const { value, plus, minus } = parsed.value
    return plus === undefined && minus === undefined ? reading(r, [value], ask) : spread(value, minus ?? 0, plus ?? 0)
  }
  if (isBetween(input)) {
    const nominal = input.nominal ?? (input.min + input.max) / 2
    return spread(nominal, nominal - input.min, input.max - nominal, input.kind)
  }
  if (isFromReadings(input)) return fromReadings(r, input, ask)
  if (input.plus === undefined && input.minus === undefined)
    return input.source === undefined || input.source === 'measured'
      ? reading(r, [input.value], ask, input.tool)
      : spread(input.value, 0, 0, input.kind)
  return spread(input.value, input.minus ?? input.plus ?? 0, input.plus ?? input.minus ?? 0, input.kind)
}

const usual: Record<As, string> = {
  bore: 'calliper-inside',
  outside: 'calliper-outside',
  length: 'calliper-depth',
  angle: 'calliper-depth',
  offset: 'calliper-depth',
}

/** Values read with a tool. What readings tell of a size is the rules' part, tested there against published values. */
function reading(r: Reality, values: readonly number[], ask: Ask, toolId = usual[ask.as]): Known {
  const [value] = values as [number]
  if (ask.as === 'angle') {
    const half = setting(r.project, 'angle')
    return { nominal: value, offs: [{ path: ask.path, kind: 'unknown', minus: half, plus: half }] }
  }
  const tool = r.presets.ofKind('tool').find((t) => t.id === toolId) as unknown as Tool
  if (ask.as === 'offset')
    return { nominal: value, offs: [{ path: ask.path, kind: 'unknown', minus: tool.mpe, plus: tool.mpe }] }
  return fromReadings(r, { readings: values.map((v) => ({ value: v })), tool: toolId }, ask)
}

function fromReadings(
  r: Reality,
  input: {
    readings: readonly { value: number | string; z?: number | undefined; theta?: number | undefined }[]
    tool?: string | undefined
    jawFlat?: number | undefined
  },
  ask: Ask,
): Known {
  const tool = r.presets.ofKind('tool').find((t) => t.id === (input.tool ?? usual[ask.as])) as unknown as Tool
  const readings = input.readings.map((o) => ({ value: Number(o.value), z: o.z, theta: o.theta }))
  const options = { tool, path: ask.path, coverage: setting(r.project, 'coverage') }
  const round = { ...options, jawFlat: input.jawFlat, ovalityAllowance: setting(r.project, 'ovality') }
  const found =
    ask.as === 'bore'
      ? boreFromReadings(readings, round)
      : ask.as === 'outside' && readings.length > 1
        ? outsideFromReadings(readings, { ...round, ovalityAllowance: 0 })
        : lengthFromReadings(readings, options)
  if (!found.ok) throw new Error(`the generator wrote readings that say nothing: ${ask.path}`)
  const { nominal, terms } = found.value.quantity
  return {
    nominal,
    offs: terms.map(({ spread: s }) => ({ path: s.path, kind: s.kind, minus: s.minus, plus: s.plus })),
  }
}

/** The free bore of a thread, on the diameter. */
export function threadAt(r: Reality, designation: string, toleranceClass: string | undefined, path: string): number {
  const thread = parseThread(designation, path)
  const limits = thread.ok ? freeBore(thread.value, toleranceClass ?? thread.value.toleranceClass, path) : thread
  if (!limits.ok) throw new Error(`the generator wrote the thread "${designation}"`)
  const { nominal, min, max } = limits.value
  return nominal + r.draw.off(path, 'unknown', nominal - min, max - nominal)
}
