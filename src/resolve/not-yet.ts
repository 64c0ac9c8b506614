import type { Context } from './context.ts'

/** What a file tells, or leaves out, and no check looks at yet: whoever reads the verdict might believe that one does. */
export function tellNotYet(ctx: Context): void {
  const { insertions, joints, parts, sleeves, wires } = ctx.project
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
    ...parts
      .filter((p) => (p.kind === 'port' || p.kind === 'switch') && p.through === undefined)
      .map((p) => `how ${named(p)} is reached from outside, as no opening is told for it`),
  ]
  if (found.length > 0) ctx.assumptions.push(`Not looked at yet: ${found.join('; ')}.`)
}
