import { least, most } from '../quantity/quantity.ts'
import type { Assembly, PrintProcess } from '../resolve/assembly.ts'
import { thresholdDefinitions } from '../resolve/thresholds.ts'

/** A setting of the job: what holds now, what would hold without it, and where that comes from. */
export interface Setting {
  readonly id: string
  /** Where it is typed: `thresholds/clearance/value`. */
  readonly path: string
  readonly what: string
  readonly value: number
  readonly usual: number
  readonly unit: 'mm' | '°' | '' | 'N'
  readonly min: number
  readonly max: number
  readonly kind: 'typed' | 'default'
  /** Of the default. */
  readonly source: string
}

/** What the printer of one sled does, mm. */
export interface PrintFigures {
  readonly sled: string
  readonly process: string
  /** How far a printed face may lie inside and outside of where it was drawn. */
  readonly error: { readonly inside: number; readonly outside: number; readonly from: string }
  readonly leastWall: number
  readonly leastWallSource: string
  readonly bead: number | undefined
  /** Gap on the diameter between a part and its pocket, by fit class. */
  readonly fit: PrintProcess['fit']
  readonly source: string
  /** g/cm³; undefined where the material or its density is not known. */
  readonly density: { readonly min: number; readonly max: number; readonly source: string } | undefined
}

/** Every setting of the job in the order of the rules. */
export function settingsOf({ thresholds }: Assembly): readonly Setting[] {
  return thresholdDefinitions.map((d) => ({
    id: d.id,
    path: `thresholds/${d.id}/value`,
    what: d.what,
    value: thresholds[d.id].value,
    usual: d.value,
    unit: d.unit,
    min: d.min,
    max: d.max,
    kind: thresholds[d.id].typed ? 'typed' : 'default',
    source: d.source,
  }))
}

/** What each sled is printed with. */
export function printFiguresOf({ sleds }: Assembly): readonly PrintFigures[] {
  return sleds.map(({ id, print: p }) => ({
    sled: id,
    process: p.name,
    error: {
      inside: -least(p.error) + 0,
      outside: most(p.error),
      from: p.error.terms.map((t) => t.spread.from).join('; '),
    },
    leastWall: p.leastWall,
    leastWallSource: p.leastWallSource,
    bead: p.bead,
    fit: p.fit,
    source: p.source,
    density: p.material?.density && { ...range(p.material.density), source: p.material.source },
  }))
}

const range = ({ min, max }: { readonly min: number; readonly max: number }) => ({ min, max })
