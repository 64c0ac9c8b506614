import { bounds } from '../presets/bounds.ts'
import { citation } from '../presets/known.ts'
import type { PresetOf } from '../presets/schema/kinds.ts'
import type { PrinterInput } from '../project/schema/project.ts'
import type { QuantityInput } from '../project/schema/quantity.ts'
import type { SledInput } from '../project/schema/sled.ts'
import { known, type Quantity, type SpreadKind } from '../quantity/quantity.ts'
import type { PrintMaterial, PrintProcess } from './assembly.ts'
import { type Context, wrong } from './context.ts'
import { quantityOf } from './quantity.ts'
import { hasSpread } from './typed-limit.ts'

/** The printer a sled is made on: its own figures where it has them, else those of its process's preset. */
export function printProcessOf(ctx: Context, sled: SledInput): PrintProcess | undefined {
  const printers = ctx.project.printer
  const own = sled.printer === undefined ? printers[0] : printers.find((p) => p.id === sled.printer)
  if (sled.printer !== undefined && !own)
    return wrong(
      ctx,
      'unknown-reference',
      `sleds/${sled.id}/printer`,
      sled.printer,
      printers.map((p) => p.id).join(', ') || 'a printer of the project',
      'Add it to the list "printer".',
    )
  const path = own ? `printer/${own.id}` : 'printer'
  const processId = own?.process ?? 'process-filament'
  const process = ctx.presets.byId(processId)
  if (process?.kind !== 'process')
    return wrong(
      ctx,
      'unknown-preset',
      `${path}/process`,
      processId,
      ctx.presets
        .ofKind('process')
        .map((p) => p.id)
        .join(', '),
      'Name a print process.',
    )
  const source = `${process.name}: ${process.source}`
  const typed =
    own?.error === undefined ? undefined : quantityOf(ctx, own.error, { path: `${path}/error`, as: 'offset' })
  return {
    id: own?.id ?? processId,
    name: own?.name ?? process.name,
    error: typed ? spreadFrom(typed, own?.error, `${path}/error`) : presetError(process, `${path}/error`),
    holeShrink: bounds(process.holeShrink).nominal,
    leastWall: own?.leastWall ?? process.minWall,
    leastWallSource: own?.leastWall === undefined ? source : `typed in ${path}/leastWall`,
    bead: own?.bead ?? process.bead,
    fit: {
      press: bounds(process.fitDiametral.press),
      snug: bounds(process.fitDiametral.snug),
      slide: bounds(process.fitDiametral.slide),
      free: bounds(process.fitDiametral.free),
    },
    source,
    material: materialOf(ctx, own, `${path}/material`),
  }
}

/** What the printer prints with, for weights; undefined where nobody said. */
function materialOf(ctx: Context, own: PrinterInput | undefined, path: string): PrintMaterial | undefined {
  if (own?.material === undefined) return undefined
  const found = ctx.presets.byId(own.material)
  if (found?.kind === 'material')
    return {
      id: found.id,
      name: found.name,
      path,
      density: found.density ? bounds(found.density) : undefined,
      source: citation(found, 'density'),
    }
  const known = ctx.presets.ofKind('material').map((p) => p.id)
  return wrong(ctx, 'unknown-preset', path, own.material, known.join(', '), 'Name a material.')
}

/** The kind a person wrote beside the number. */
function statedKind(input: QuantityInput | undefined): SpreadKind {
  return typeof input === 'object' && input.kind === 'unknown' ? 'unknown' : 'varies'
}

function presetError(process: PresetOf<'process'>, path: string): Quantity {
  const b = bounds(process.error)
  return known(0, {
    path,
    kind: 'varies',
    minus: Math.max(0, -b.min),
    plus: Math.max(0, b.max),
    distribution: 'rectangular',
    source: 'preset',
    from: `${process.name}: ${process.source}`,
  })
}

/**
 * A typed error of 0.1 means faces may lie 0.1 either way; a ± of its own comes on top. It varies from print to print
 * unless the person says that it is the unknown error of this printed piece.
 */
function spreadFrom(q: Quantity, input: QuantityInput | undefined, path: string): Quantity {
  const own = hasSpread(input) ? q.terms[0]?.spread : undefined
  const half = Math.abs(q.nominal)
  return known(0, {
    path,
    kind: statedKind(input),
    minus: half + (own?.minus ?? 0),
    plus: half + (own?.plus ?? 0),
    distribution: 'rectangular',
    source: 'measured',
    from: "this printer's error",
  })
}
