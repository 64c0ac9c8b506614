import type { PartInput } from '../project/schema/part.ts'
import { type Context, wrong } from './context.ts'

/** The way a leaf faces is not its own to say: it goes into its slot from where its cell goes in. */
export function refuseFacing(ctx: Context, { id, at, presses }: PartInput): void {
  const hint = `Leave it empty. To turn leaf and slot, type where the nest of ${presses?.part} opens.`
  wrong(ctx, 'contradiction', `parts/${id}/at/facing`, at?.facing, 'nothing, for a leaf lies as its slot does', hint)
}
