import { beforeAll, expect } from 'vitest'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import { buildBody, type Kernel } from '../../../geometry/kernel/manifold.ts'
import { type Bounds, boundsOf, type Mesh, volume } from '../../../geometry/mesh/mesh.ts'
import { circumscribed, facetsFor, leastFacets } from '../../../geometry/plan/facets.ts'
import type { Dimension, Plan, PlanItem, PlanSolid } from '../../../geometry/plan/plan.ts'
import { trySled } from '../../../src/job/build-sled.ts'
import type { Problem } from '../../../src/problem/problem.ts'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import type { SledInput } from '../../../src/project/schema/sled.ts'
import { planSled, type SledPlan } from '../../../src/sled/plan-sled.ts'
import { perfect, sure } from '../checks/judged.ts'
import { assemblyOf } from '../resolve/project-of.ts'

/** A tube of 30 × 120 and in it a sled of ⌀ 28 from 10 to 100, printed without error in walls of 1.2 and beads of 0.45. */
export const job = (sled: Partial<SledInput>, extra: Partial<ProjectInput> = {}): ProjectInput => ({
  format: 'sledwright',
  version: 1,
  sections: [{ id: 'tube', length: sure(120), bore: [{ id: 'main', diameter: sure(30) }] }],
  sleds: [{ id: 'main', name: 'sled', from: 10, to: 100, diameter: sure(28), ...sled } as SledInput],
  insertions: [{ id: 'in', moves: 'sleds/main', through: { of: 'sections/tube', end: 'rear' }, lateral: 'axis' }],
  printer: perfect,
  ...extra,
})

type PartInput = NonNullable<ProjectInput['parts']>[number]
const part = (p: object): PartInput => p as PartInput

/** A cell of ⌀ 18 × 65 from 20 to 85, on the axis. */
export const cell = (extra: object = {}): PartInput =>
  part({
    id: 'cell',
    name: 'cell',
    kind: 'cell',
    body: { shape: 'cylinder', diameter: sure(18), length: sure(65) },
    at: { z: sure(20) },
    ...extra,
  })
/** A board of 16 × 4 × 30 from 40 to 70, facing θ = 0. */
export const board = (extra: object = {}): PartInput =>
  part({
    id: 'board',
    name: 'board',
    kind: 'board',
    body: { shape: 'box', width: sure(16), height: sure(4), length: sure(30) },
    at: { z: sure(40) },
    ...extra,
  })
/** A round part of ⌀ 20 × 5 from 92 to 97, that looks out of the blade end behind a cell. */
export const round = (kind: string, extra: object = {}): PartInput =>
  part({
    id: kind,
    name: kind,
    kind,
    body: { shape: 'cylinder', diameter: sure(20), length: sure(5) },
    at: { z: sure(92) },
    ...extra,
  })
/** A spring of ⌀ 8 standing at z 15 behind the cell: 2 long pressed solid, 8 long free. */
export const spring = (extra: object = {}): PartInput =>
  part({
    id: 'spring',
    name: 'spring',
    kind: 'contact',
    body: { shape: 'cylinder', diameter: sure(8), length: sure(5) },
    presses: { part: 'parts/cell', end: 'rear' },
    solid: sure(2),
    free: sure(8),
    preload: sure(0.5),
    at: { z: sure(15) },
    ...extra,
  })
/** A leaf of 8 × 10 standing at z 87 before the cell. */
export const leaf = (extra: object = {}): PartInput =>
  part({
    id: 'leaf',
    name: 'leaf',
    kind: 'contact',
    body: { shape: 'box', width: sure(8), height: sure(10), length: sure(2) },
    presses: { part: 'parts/cell', end: 'blade' },
    solid: sure(0.5),
    free: sure(3),
    preload: sure(0.5),
    at: { z: sure(87), face: 'blade' },
    ...extra,
  })

/** What was typed for the nest of a part. */
export const nest = (of: string, typed: object) => ({ part: `parts/${of}`, ...typed })

/** Area of the polygon that a round becomes, mm²: inscribed where it is added, circumscribed where it is cut. */
export function roundArea(r: number, op: 'add' | 'cut' = 'add'): number {
  const n = facetsFor(r, r > 3 ? leastFacets : 32)
  return (n / 2) * (op === 'add' ? r : circumscribed(r, n)) ** 2 * Math.sin((2 * Math.PI) / n)
}

export const planned = (project: ProjectInput, sled = 'main'): SledPlan => {
  const assembly = assemblyOf(project)
  const own = assembly.sleds.find((s) => s.id === sled)
  if (!own) throw new Error(`no sled ${sled}`)
  return planSled(assembly, own)
}

export const itemsOf = ({ bodies }: Plan): readonly PlanItem[] => bodies.flatMap((b) => b.items)

/** The item of an id, which must be there. */
export function itemOf(project: ProjectInput, id: string): PlanItem {
  const all = itemsOf(planned(project).plan)
  const found = all.find((x) => x.id === id)
  if (!found) throw new Error(`no ${id} among ${all.map((x) => x.id).join(', ')}`)
  return found
}

type Shape<K extends PlanSolid['shape']> = Extract<PlanSolid, { shape: K }>

/** The solid of an item, which must be of that shape. */
export function solidOf<K extends PlanSolid['shape']>(project: ProjectInput, id: string, shape: K): Shape<K> {
  const { solid } = itemOf(project, id)
  expect(solid.shape).toBe(shape)
  return solid as Shape<K>
}

/** How far a box reaches along the clock angle it faces: [inner, outer]. */
export const heightsOf = ({ x, y, height, facing }: Shape<'box'>): [number, number] => {
  const a = (facing * Math.PI) / 180
  const v = x * Math.cos(a) + y * Math.sin(a)
  return [v - height / 2, v + height / 2]
}

export function dimensionOf(item: PlanItem, name: string): Dimension {
  const found = item.dimensions.find((d) => d.name === name)
  if (!found) throw new Error(`no ${name} among ${item.dimensions.map((d) => d.name).join(', ')}`)
  return found
}

/** What cannot be built, as a person reads it. */
export const faultsOf = (project: ProjectInput): readonly Problem[] => planned(project).faults.map((f) => f.problem)

/** The one fault there must be: where, what was got, what is allowed; its hint holds the number that works. */
export function onlyFault(project: ProjectInput): Problem {
  const faults = faultsOf(project)
  expect(faults.map((f) => f.path)).toHaveLength(1)
  return faults[0] as Problem
}

export interface Built {
  readonly meshes: readonly Mesh[]
  readonly volume: number
  readonly bounds: readonly Bounds[]
  readonly problems: readonly Problem[]
}

/** Loads the kernel for a file of tests; what it gives builds the sled of a project through its gate. */
export function builder(): (project: ProjectInput, sled?: string) => Built {
  let kernel: Kernel
  beforeAll(async () => {
    kernel = await loadKernel()
  })
  return (project, sled = 'main') => {
    const tried = trySled(kernel, assemblyOf(project), sled)
    if (!tried.ok) throw new Error(JSON.stringify(tried.problems))
    const meshes = tried.value.bodies.map((b) => b.mesh)
    return {
      meshes,
      volume: meshes.reduce((sum, m) => sum + volume(m), 0),
      bounds: meshes.map(boundsOf),
      problems: tried.value.problems,
    }
  }
}

/** Whether material is at a point of the built sled: a plan's mesh cut with a pin of 0.02 there. */
export function prober(): (project: ProjectInput) => (x: number, y: number, z: number) => boolean {
  let kernel: Kernel
  beforeAll(async () => {
    kernel = await loadKernel()
  })
  return (project) => {
    const { bodies } = planned(project).plan
    const sizeOf = (extra: readonly PlanItem[]): number =>
      bodies.reduce((sum, b) => {
        const built = buildBody(kernel, { ...b, items: [...b.items, ...extra] })
        return sum + (built.ok ? volume(built.mesh) : 0)
      }, 0)
    const whole = sizeOf([])
    return (x, y, z) => {
      const solid = { shape: 'cylinder', x, y, z0: z - 0.2, z1: z + 0.2, r0: 0.2, r1: 0.2 } as const
      const probe = { id: 'probe', op: 'cut', stage: 2, solid, by: '', nest: 'probe', dimensions: [] } as const
      return whole - sizeOf([probe]) > 0.01
    }
  }
}
