import type { Dimension, Plan } from '../../geometry/plan/plan.ts'
import type { Problem } from '../problem/problem.ts'
import { type BodyReport, bodyReport, type Mass, massOf } from './body-report.ts'
import type { FileLayout } from './lay-out.ts'
import { type Report, tidy } from './report.ts'
import { ending, type NamedFile, type PlacedSled, type SledSet } from './sled-files.ts'

/** A dimension of the plan, with the nest it belongs to and the part that asked for it. */
export interface PlannedDimension extends Dimension {
  readonly sled: string
  readonly nest: string
  readonly by: string
}

/** A file beside the report, and what it should be found to be. */
export interface FileReport {
  readonly name: string
  readonly bytes: number
  /** Hexadecimal. */
  readonly sha256: string
}

export interface OneSled {
  readonly id: string
  readonly name: string
  /** The 3MF of all its bodies; null where none was asked for. */
  readonly threeMf: string | null
  readonly bodies: readonly BodyReport[]
  /** What it is printed in; null where the project does not say. */
  readonly material: { readonly name: string; readonly source: string } | null
  /** Of all its bodies. */
  readonly mass: Mass | null
  readonly massHint: string | null
}

/** What stands in the JSON file beside the bodies. */
export interface SledReport {
  readonly format: 'sledwright-sled-report'
  readonly version: 1
  readonly units: 'mm'
  readonly layout: FileLayout
  /** What the layout means, in words. */
  readonly frame: string
  /** False where the files were forced out in spite of a clash or of the gate. */
  readonly proven: boolean
  readonly sleds: readonly OneSled[]
  readonly files: readonly FileReport[]
  readonly dimensions: readonly PlannedDimension[]
  /** What the gate had against the bodies that were forced out. */
  readonly problems: readonly Problem[]
  readonly report: Report
}

/** What a layout means, in words. */
export const frames: Readonly<Record<FileLayout, string>> = {
  printed: 'as printed: every body turned the way it prints best and standing on z = 0, those of a sled side by side',
  assembled: 'as assembled: every body where it is in the hilt, z along its axis from the rear datum',
}

/** The report on a set of sleds and the files made of them. */
export async function sledReport(set: SledSet, files: readonly NamedFile[], report: Report): Promise<SledReport> {
  return {
    format: 'sledwright-sled-report',
    version: 1,
    units: 'mm',
    layout: set.layout,
    frame: frames[set.layout],
    proven: set.proven,
    sleds: set.sleds.map((s) => oneSled(s, files)),
    files: await Promise.all(files.map(fileReport)),
    dimensions: set.sleds.flatMap(({ plan }) => dimensionsOf(plan)),
    problems: set.problems,
    report,
  }
}

/** The report as the file that stands beside the others. */
export function reportFile(report: SledReport, base: string): { name: string; bytes: Uint8Array } {
  const bytes = new TextEncoder().encode(`${JSON.stringify(report, null, 2)}\n`)
  return { name: `${base}${ending(report)}.sled.json`, bytes }
}

function oneSled({ sled, plan, bodies }: PlacedSled, files: readonly NamedFile[]): OneSled {
  const own = files.filter((f) => f.sled === sled.id)
  const told = bodies.map((b) => bodyReport(b, sled, plan, own.find((f) => f.body === b.body.id)?.name ?? null))
  const { material } = sled.print
  return {
    id: sled.id,
    name: sled.name,
    threeMf: own.find((f) => f.body === undefined)?.name ?? null,
    bodies: told,
    material: material ? { name: material.name, source: material.source } : null,
    mass: massOf(tidy(told.reduce((sum, b) => sum + b.volume, 0)), sled),
    massHint: massHint(sled.print.material),
  }
}

function massHint(material: PlacedSled['sled']['print']['material']): string | null {
  if (!material)
    return 'Name what the printer prints with, for example "material": "material-petg" in "printer"; the mass follows.'
  return material.density
    ? null
    : `The density of ${material.name} is not known; name another material in ${material.path}.`
}

async function fileReport({ name, bytes }: NamedFile): Promise<FileReport> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes))
  return { name, bytes: bytes.length, sha256: Array.from(digest, (b) => b.toString(16).padStart(2, '0')).join('') }
}

/** Each dimension once, in the order of the plan. */
function dimensionsOf(plan: Plan): PlannedDimension[] {
  const seen = new Set<string>()
  return plan.bodies
    .flatMap((b) => b.items)
    .flatMap((item) => item.dimensions.map((d) => ({ ...d, sled: plan.id, nest: item.nest, by: item.by })))
    .filter((d) => {
      const key = JSON.stringify([d.by, d.nest, d.name, d.path, d.value])
      return !seen.has(key) && seen.add(key)
    })
}
