import type { SectionInput } from '../project/schema/hilt.ts'
import type { Context } from './context.ts'
import { jointOf } from './seam.ts'

/** What is taken for granted of sections because nobody said otherwise. */
export function tellSections(ctx: Context, inputs: readonly SectionInput[]): void {
  tellClosed(ctx, inputs)
  tellUnengaged(ctx, inputs)
  askThreads(ctx, inputs)
}

/** A joint's thread is in one of its two bores, and what passes has to pass its crests there. */
function askThreads(ctx: Context, inputs: readonly SectionInput[]): void {
  for (const { id, name = id, rear, blade, thread } of ctx.project.joints) {
    const bores = inputs.filter((s) => s.id === rear || s.id === blade).flatMap((s) => s.bore)
    if (thread !== undefined && !bores.some((step) => step.thread !== undefined || step.kind === 'threaded'))
      ctx.missing.push({
        path: `joints/${id}/thread`,
        what: `which bore has the thread of ${name}`,
        hint: `Make the step threaded that ${thread} is cut in: its crests are narrower than a plain bore.`,
        of: `sections/${rear}`,
      })
  }
}

/** Metal that closes the bore, and that nobody has measured. */
function tellClosed(ctx: Context, inputs: readonly SectionInput[]): void {
  for (const { id, name = id, length, bore } of inputs)
    if (typeof length === 'object' && length.source === 'assumed' && bore.every((step) => step.kind === 'solid'))
      ctx.assumptions.push(
        `The bore is taken to be closed by "${name}", which nobody has measured: take it out where the bore goes on.`,
      )
}

/** Sections that stand end to end because nobody said otherwise. */
function tellUnengaged(ctx: Context, inputs: readonly SectionInput[]): void {
  const pairs = inputs.slice(1).flatMap((s, i) => {
    const before = inputs[i] as SectionInput
    const joint = jointOf(ctx, before.id, s.id)
    if (!joint || joint.engagement !== undefined || s.z !== undefined) return []
    return [`${before.name ?? before.id} and ${s.name ?? s.id}`]
  })
  if (pairs.length > 0)
    ctx.assumptions.push(
      `These are taken to stand end to end, because their joint does not say how far they engage: ${pairs.join('; ')}.`,
    )
}
