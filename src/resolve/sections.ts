import { plausible } from '../entry/plausible.ts'
import { suspectWall } from '../entry/suspicion.ts'
import type { SectionInput } from '../project/schema/hilt.ts'
import { add, exact, known, most, type Quantity, sub } from '../quantity/quantity.ts'
import { stepLengths, stepsOf } from './bore.ts'
import { ask, type Context, limitOf, wrong } from './context.ts'
import type { Heights } from './heights.ts'
import type { Section } from './metal.ts'
import { quantityOf } from './quantity.ts'
import { walls } from './rare.ts'
import { jointOf, seamSlack } from './seam.ts'
import { questionLengths, questionSize } from './suspicions.ts'

/** Tells every section where it lies: where it says so, else behind the one before it, less what the joint engages. */
export function placeSections(ctx: Context, heights: Heights, sections: readonly SectionInput[]): void {
  for (const [i, s] of sections.entries()) {
    const path = `sections/${s.id}`
    heights.define(path, () => {
      const length = quantityOf(ctx, s.length, { path: `${path}/length`, as: 'length' })
      const rear = s.z !== undefined ? heights.place(s.z, `${path}/z`) : following(ctx, heights, sections[i - 1], s)
      return rear && length && { rear, blade: add(rear, length) }
    })
  }
}

function following(
  ctx: Context,
  heights: Heights,
  before: SectionInput | undefined,
  s: SectionInput,
): Quantity | undefined {
  if (!before) return exact(0)
  const ends = heights.ends(`sections/${before.id}`, `sections/${s.id}/z`)
  const joint = jointOf(ctx, before.id, s.id)
  const engaged =
    joint?.engagement === undefined
      ? exact(0)
      : quantityOf(ctx, joint.engagement, { path: `joints/${joint.id}/engagement`, as: 'length', min: 0 })
  return ends && engaged && sub(ends.blade, engaged)
}

const hasAssumedLength = ({ length }: SectionInput): boolean =>
  typeof length === 'object' && length.source === 'assumed'

/** The sections with their bores, checked against each other. */
export function resolveSections(ctx: Context, heights: Heights, inputs: readonly SectionInput[]): Section[] {
  for (const j of ctx.project.joints)
    for (const end of ['rear', 'blade'] as const)
      if (!ctx.project.sections.some((s) => s.id === j[end]))
        wrong(
          ctx,
          'unknown-reference',
          `joints/${j.id}/${end}`,
          j[end],
          ctx.project.sections.map((s) => s.id).join(', ') || 'a section',
          'Name a section of the project.',
        )
  const sections = inputs.flatMap((s): Section[] => {
    const ends = heights.ends(`sections/${s.id}`, `sections/${s.id}`)
    if (!ends) return []
    const play = playOf(ctx, inputs, s)
    const steps = stepsOf(ctx, s, ends, play)
    for (const step of steps) heights.define(step.id, () => ({ rear: step.z0, blade: step.z1 }))
    return [
      {
        id: s.id,
        name: s.name ?? s.id,
        input: s,
        ends,
        outside: outsideOf(ctx, s, ends.rear, ends.blade),
        material: s.material,
        steps,
        play,
      },
    ]
  })
  if (ctx.project.joints.length > 0 || inputs.some(hasAssumedLength)) walls().tellSections(ctx, inputs)
  checkSeams(ctx, inputs, sections)
  questionLengths(ctx, inputs, sections)
  for (const s of sections) checkWalls(ctx, s)
  return sections
}

/** Play of every joint between the first section and this one adds up. */
function playOf(ctx: Context, inputs: readonly SectionInput[], s: SectionInput): Quantity | undefined {
  const behind = inputs.slice(0, inputs.indexOf(s) + 1).map((o) => o.id)
  const plays = ctx.project.joints.flatMap((j) => {
    if (j.play === undefined || !behind.includes(j.blade)) return []
    const path = `joints/${j.id}/play`
    const q = quantityOf(ctx, j.play, { path, as: 'offset', min: 0, max: 5 })
    return q
      ? [
          known(0, {
            path,
            kind: 'varies',
            minus: most(q),
            plus: most(q),
            distribution: 'rectangular',
            source: q.terms[0]?.spread.source ?? 'measured',
            from: 'play of the joint',
          }),
        ]
      : []
  })
  return plays.length > 0 ? add(...plays) : undefined
}

function outsideOf(ctx: Context, s: SectionInput, rear: Quantity, blade: Quantity): Section['outside'] {
  let z = rear
  const list = s.outside ?? []
  if (list.length === 0) return []
  const lengths = stepLengths(ctx, `sections/${s.id}/outside`, list, { rear, blade }) ?? []
  return list.flatMap((o, i) => {
    const path = `sections/${s.id}/outside/${i}`
    const z0 = z
    z = i === list.length - 1 ? blade : add(z, lengths[i] ?? exact(0))
    const d0 = quantityOf(ctx, o.diameter, { path: `${path}/diameter`, as: 'outside' })
    const d1 =
      o.diameterEnd === undefined ? d0 : quantityOf(ctx, o.diameterEnd, { path: `${path}/diameterEnd`, as: 'outside' })
    questionSize(ctx, o.diameter, d0, plausible.outside, `${path}/diameter`)
    questionSize(ctx, o.diameterEnd, d1, plausible.outside, `${path}/diameterEnd`)
    return d0 && d1 ? [{ z0, z1: z, d0, d1 }] : []
  })
}

function checkSeams(ctx: Context, inputs: readonly SectionInput[], sections: readonly Section[]): void {
  for (const [i, s] of sections.entries()) {
    for (const o of sections.slice(i + 1)) {
      const shared =
        Math.min(s.ends.blade.nominal, o.ends.blade.nominal) - Math.max(s.ends.rear.nominal, o.ends.rear.nominal)
      const joint = jointOf(ctx, s.id, o.id) ?? jointOf(ctx, o.id, s.id)
      const engaged =
        joint?.engagement === undefined
          ? 0
          : (quantityOf(ctx, joint.engagement, { path: `joints/${joint.id}/engagement`, as: 'length', min: 0 })
              ?.nominal ?? 0)
      if (shared > engaged + seamSlack)
        wrong(
          ctx,
          'overlap',
          `sections/${o.id}`,
          `${shared.toFixed(2)} mm shared with ${s.id}`,
          engaged > 0 ? `${engaged} mm, the joint's engagement` : 'none without a joint that says how far they engage',
          'Correct a length or z, or give the joint’s engagement.',
        )
      else if (joint && shared > seamSlack) walls().tellUnfitting(ctx, joint.id, s, o)
    }
    const next = sections[i + 1]
    if (next && inputs[i + 1]?.z !== undefined && next.ends.rear.nominal - s.ends.blade.nominal > seamSlack)
      ask(
        ctx,
        `sections/${next.id}/z`,
        next.ends.rear.nominal,
        `${s.ends.blade.nominal.toFixed(2)} mm, where ${s.name} ends`,
        'There is a gap between the two sections. Is a section missing?',
      )
  }
}

/** Bore against outside: a slip of units shows here. The setting "least-wall" says how thin is believed. */
function checkWalls(ctx: Context, s: Section): void {
  for (const step of s.steps) {
    if (!step.r0 || !step.r1 || step.kind === 'solid') continue
    for (const o of s.outside) {
      if (Math.min(o.z1.nominal, step.z1.nominal) - Math.max(o.z0.nominal, step.z0.nominal) < 0.01) continue
      const bore = 2 * Math.max(step.r0.nominal, step.r1.nominal)
      const out = Math.min(o.d0.nominal, o.d1.nominal)
      const path = `${step.id.replace(/^sections\/([^/]+)\//, 'sections/$1/bore/')}/diameter`
      const least = limitOf(ctx, 'least-wall')
      const found = (out - bore) / 2 < least ? suspectWall(bore, out, path, least) : undefined
      if (found) ctx.problems.push(found)
    }
  }
}
