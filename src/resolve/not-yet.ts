import type { Context } from './context.ts'

/** Fields that a file keeps and no check looks at yet: whoever filled them in might believe that one does. */
export function tellNotYet(ctx: Context): void {
  const { insertions, joints, sleeves, wires } = ctx.project
  const named = ({ id, name = id }: { id: string; name?: string | undefined }) => `"${name}"`
  const found = [
    ...insertions.filter((i) => i.mayTurn).map((i) => `that ${named(i)} may turn`),
    ...joints
      .filter((j) => j.wiresCross === false && wires.length > 0)
      .map((j) => `that no wire may cross ${named(j)}`),
    ...wires.filter((w) => w.from ?? w.to).map((w) => `where ${named(w)} lead`),
    ...sleeves
      .filter((s) => s.outside ?? s.standoff ?? s.rearEnd ?? s.bladeEnd ?? s.sliding)
      .map((s) => `outside, gap, ends and sliding of ${named(s)}`),
  ]
  if (found.length > 0) ctx.assumptions.push(`Kept for later, and not looked at yet: ${found.join('; ')}.`)
}
