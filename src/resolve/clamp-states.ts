import { plausible } from '../entry/plausible.ts'
import type { SectionInput } from '../project/schema/hilt.ts'
import type { Quantity } from '../quantity/quantity.ts'
import { type Context, wrong } from './context.ts'
import { quantityOf } from './quantity.ts'
import { questionSize } from './suspicions.ts'

/** The bore of a section in the states named: all where none are. */
export interface Variant {
  readonly id: string | undefined
  readonly diameter: Quantity | undefined
  readonly states: readonly string[] | undefined
}

/** A clamp has two bores: open in the states that say so, closed in all others. */
export function clampStates(ctx: Context, id: string, input: NonNullable<SectionInput['clamp']>): Variant[] {
  const path = `sections/${id}/clamp`
  const openIn = input.openIn ?? ['stripped']
  const open = quantityOf(ctx, input.open, { path: `${path}/open`, as: 'bore' })
  const closed = quantityOf(ctx, input.closed, { path: `${path}/closed`, as: 'bore' })
  questionSize(ctx, input.open, open, plausible.bore, `${path}/open`)
  questionSize(ctx, input.closed, closed, plausible.bore, `${path}/closed`)
  if (open && closed && closed.nominal > open.nominal)
    wrong(
      ctx,
      'contradiction',
      `${path}/closed`,
      closed.nominal,
      `at most the open bore, ${open.nominal}`,
      'Swap the two readings.',
    )
  return [
    { id: 'closed', diameter: closed, states: openIn.map((state) => `!${state}`) },
    { id: 'open', diameter: open, states: openIn },
  ]
}
