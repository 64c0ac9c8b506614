import { least, most, sub } from '../quantity/quantity.ts'
import type { Context } from './context.ts'
import type { Section, Step } from './metal.ts'
import { seamSlack } from './seam.ts'

/**
 * Two sections that engage: one must go into the other. Where neither surely does, what is drawn there cannot be, and
 * nothing around it is sure until the outside is told that goes in. Where an outside or a bore was not measured, nothing
 * can be told.
 */
export function tellUnfitting(ctx: Context, joint: string, a: Section, b: Section): void {
  const [first, second] = [tooWide(a, b), tooWide(b, a)]
  if (!first || !second) return
  const [inner, outer, found] = first.by <= second.by ? [a, b, first] : [b, a, second]
  ctx.missing.push({
    path: `joints/${joint}/engagement`,
    what: `how ${inner.name} goes into ${outer.name}`,
    hint: `Its outside, ${found.outside.toFixed(2)} at the least, does not go into the ${found.room.toFixed(2)} at most there: add the narrower outside step that does, or correct how far they engage.`,
    of: `sections/${inner.id}`,
  })
}

interface TooWide {
  readonly outside: number
  readonly room: number
  readonly by: number
}

/** Where the outside of one is surely wider than the other's bore around it, at its widest such place. */
function tooWide(inner: Section, outer: Section): TooWide | undefined {
  const found = inner.outside.flatMap((o) =>
    outer.steps.flatMap((s): TooWide[] => {
      const along = Math.min(least(sub(o.z1, s.z0)), least(sub(s.z1, o.z0)))
      const room = 2 * Math.max(...outer.steps.filter((t) => t.z0.nominal === s.z0.nominal).map(roomOf))
      const outside = Math.min(least(o.d0), least(o.d1))
      return along > seamSlack && outside > room ? [{ outside, room, by: outside - room }] : []
    }),
  )
  return found.reduce<TooWide | undefined>((a, b) => (a && a.by >= b.by ? a : b), undefined)
}

/** The widest that a bore may be, to the roots of a thread: a clamp is asked for open and closed. */
function roomOf({ kind, r0, r1, thread }: Step): number {
  if (kind === 'solid') return 0
  if (thread) return thread.major / 2
  return r0 && r1 ? Math.max(most(r0), most(r1)) : Number.POSITIVE_INFINITY
}
