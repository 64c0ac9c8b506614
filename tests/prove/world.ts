import { bounds } from '../../src/presets/bounds.ts'
import type { Presets } from '../../src/presets/presets.ts'
import type { Project } from '../../src/project/schema/project.ts'
import type { SledInput } from '../../src/project/schema/sled.ts'
import { Draw } from './draw.ts'
import { type DrawnSled, Heights } from './heights.ts'
import { type LoadWorld, type PartTruth, partsAt, type Shift } from './load.ts'
import { type HiltTruth, hiltAt } from './metal.ts'
import { mostOf, type Reality } from './sizes.ts'
import type { SledMesh } from './sled-mesh.ts'

/** A sled as it is drawn and as the kernel built it: the same in every draw. */
export interface BuiltSled extends DrawnSled {
  readonly id: string
  readonly mesh: SledMesh
}

export interface SledTruth {
  readonly id: string
  readonly input: SledInput
  readonly built: BuiltSled
  readonly shift: Shift
  /** How far its faces lie outside where they were drawn. */
  readonly error: number
  /** Degrees by which it is off its clock angle, and what it carries with it. */
  readonly turn: number
}

/** Everything about a job as it truly is in one draw. */
export interface World {
  readonly r: Reality
  readonly heights: Heights
  readonly hilt: HiltTruth
  readonly parts: readonly PartTruth[]
  readonly sleds: readonly SledTruth[]
}

export interface Job {
  readonly project: Project
  readonly presets: Presets
  readonly sleds: ReadonlyMap<string, BuiltSled>
}

/** The world of a job in one draw. Without values everything is nominal. */
export function worldAt(job: Job, values: ReadonlyMap<string, number> = new Map()): World {
  const nothingOff = loadOf(job, new Draw(), undefined)
  const w = loadOf(job, new Draw(values), nothingOff.heights)
  const sleds = job.project.sleds.flatMap((input): SledTruth[] => {
    const built = job.sleds.get(input.id)
    return built
      ? [{ id: input.id, input, built, shift: w.shift(input.id), error: errorOf(w.r, input), turn: turnOf(w.r, input) }]
      : []
  })
  return { r: w.r, heights: w.heights, hilt: w.hilt, parts: partsAt(w, nothingOff), sleds }
}

function loadOf(job: Job, draw: Draw, nominal: Heights | undefined): LoadWorld & { readonly hilt: HiltTruth } {
  const r: Reality = { project: job.project, presets: job.presets, draw }
  const heights = new Heights(r, nominal, job.sleds)
  const hilt = hiltAt(r, heights)
  const turn = (id: string): number => turnOf(r, job.project.sleds.find((s) => s.id === id) as SledInput)
  const shift = (id: string): Shift => shiftOf(job, r, heights, nominal, id)
  return { r, heights, hilt, drawn: job.sleds, aside: hilt.aside, shift, turn }
}

function turnOf(r: Reality, s: SledInput): number {
  if (s.clocking === undefined) return 0
  const path = `sleds/${s.id}/clocking`
  const most = mostOf(r, s.clocking, { path, as: 'angle', drawn: true })
  return r.draw.off(path, 'varies', most, most)
}

/** A sled lies where its rear end was said to lie; one that is seated with a face lies where the shoulder stops it. */
function shiftOf(job: Job, r: Reality, heights: Heights, nominal: Heights | undefined, id: string): Shift {
  const s = job.project.sleds.find((o) => o.id === id) as SledInput
  const built = job.sleds.get(id) as BuiltSled
  const seat = s.seats?.find((o) => o.face !== 'around')
  if (seat && nominal) {
    const step = heights.ends(seat.against)
    const error = errorOf(r, s)
    return { x: 0, y: 0, z: seat.face === 'blade' ? step.rear - built.blade - error : step.blade - built.rear + error }
  }
  if (s.from === undefined) return { x: 0, y: 0, z: 0 }
  const path = `sleds/${id}/from`
  return { x: 0, y: 0, z: heights.at(s.from, path, true) - (nominal ?? heights).at(s.from, path, true) }
}

function errorOf(r: Reality, s: SledInput): number {
  const own = s.printer === undefined ? r.project.printer[0] : r.project.printer.find((p) => p.id === s.printer)
  const path = own ? `printer/${own.id}/error` : 'printer/error'
  if (own?.error !== undefined) {
    const typed = own.error
    if (typeof typed === 'number') return r.draw.off(path, 'varies', Math.abs(typed), Math.abs(typed))
    const spread = typed as { value: number; plus?: number; minus?: number; kind?: 'unknown' | 'varies' }
    const more = mostOf(r, typed, { path, as: 'offset' }) - spread.value
    const kind = spread.kind === 'unknown' ? 'unknown' : 'varies'
    return r.draw.off(path, kind, Math.abs(spread.value) + (spread.minus ?? more), Math.abs(spread.value) + more)
  }
  const process = r.presets.byId(own?.process ?? 'process-filament') as unknown as {
    error: Parameters<typeof bounds>[0]
  }
  const b = bounds(process.error)
  return r.draw.off(path, 'varies', -b.min, b.max)
}
