import { least, most, type Quantity, type SourceKind, scale, sub } from '../quantity/quantity.ts'
import type { Assembly } from '../resolve/assembly.ts'

/** A size as the program takes it: what was typed or chosen became this interval. mm. */
export interface Size {
  /** Where it stands: `sections/tube/bore/bore/diameter`, `parts/cell/length`. */
  readonly path: string
  readonly low: number
  readonly nominal: number
  readonly high: number
  readonly source: SourceKind | undefined
  /** In words: the tool and readings, or the preset's source. */
  readonly from: string
}

/** The sizes of bores, sections and parts, so that a form can echo what its entries came to. */
export function sizesOf(assembly: Assembly): Size[] {
  const bores = assembly.sections.flatMap((s) => [
    ...s.steps.flatMap((step) =>
      step.r0 && step.kind !== 'solid'
        ? [size(`${step.id.replace(/^(sections\/[^/]+)\//, '$1/bore/')}/diameter`, scale(step.r0, 2))]
        : [],
    ),
    size(`sections/${s.id}/length`, sub(s.ends.blade, s.ends.rear)),
  ])
  const parts = assembly.parts.flatMap((p) => [
    ...(p.extent.round
      ? [size(`${p.id}/diameter`, scale(p.extent.halfU, 2))]
      : [size(`${p.id}/width`, scale(p.extent.halfU, 2)), size(`${p.id}/height`, scale(p.extent.halfV, 2))]),
    size(`${p.id}/length`, sub(p.ends.blade, p.ends.rear)),
  ])
  return [...bores, ...parts]
}

/** A quantity as the size that a field echoes. */
export function size(path: string, q: Quantity): Size {
  const widest = q.terms.toSorted((a, b) => reachOf(b) - reachOf(a))[0]
  return {
    path,
    low: least(q),
    nominal: q.nominal,
    high: most(q),
    source: widest?.spread.source,
    from: [...new Set(q.terms.map((t) => t.spread.from))].join('; '),
  }
}

const reachOf = (t: Quantity['terms'][number]): number => Math.abs(t.gain) * (t.spread.minus + t.spread.plus)
