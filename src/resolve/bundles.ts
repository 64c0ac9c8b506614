import { bounds } from '../presets/bounds.ts'
import { exact, known, type Quantity, scale } from '../quantity/quantity.ts'
import { bundleFactor } from '../rules/bundle.ts'
import type { Bundle } from './assembly.ts'
import { type Context, wrong } from './context.ts'
import { quantityOf } from './quantity.ts'

/** Wire bundles with the diameter they take up. */
export function bundlesOf(ctx: Context): Bundle[] {
  return ctx.project.wires.flatMap((w): Bundle[] => {
    const path = `wires/${w.id}`
    const d =
      w.diameter === undefined
        ? fromPreset(ctx, w.preset, path)
        : quantityOf(ctx, w.diameter, { path: `${path}/diameter`, as: 'outside' })
    if (!d) return []
    const count = w.count ?? 1
    return [
      {
        id: w.id,
        name: w.name ?? w.id,
        sled: w.sled ?? ctx.project.sleds[0]?.id,
        diameter: scale(d, bundleFactor(count)),
        count,
      },
    ]
  })
}

function fromPreset(ctx: Context, id: string | undefined, path: string): Quantity | undefined {
  const preset = id === undefined ? undefined : ctx.presets.byId(id)
  if (preset?.kind !== 'wire')
    return wrong(
      ctx,
      id === undefined ? 'missing' : 'unknown-preset',
      `${path}/preset`,
      id,
      ctx.presets
        .ofKind('wire')
        .map((p) => p.id)
        .slice(0, 6)
        .join(', '),
      'Name a wire, or give its outside diameter.',
    )
  const b = bounds(preset.outside)
  return b.min === b.max
    ? exact(b.nominal)
    : known(b.nominal, {
        path: `${path}/preset`,
        kind: 'unknown',
        minus: b.nominal - b.min,
        plus: b.max - b.nominal,
        distribution: 'rectangular',
        source: 'preset',
        from: `${preset.name}: ${preset.source}`,
      })
}
