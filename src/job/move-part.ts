import { nominalOf } from '../checks/fix-value.ts'
import { parseAngle } from '../entry/entry.ts'
import { applyFix } from '../project/apply-fix.ts'
import { isBeside, isPushed, isRelative, isXy } from '../project/forms.ts'
import { withValue } from '../project/path.ts'
import type { Project } from '../project/schema/project.ts'
import type { QuantityInput } from '../project/schema/quantity.ts'

/** A place in the cross-section, mm. */
interface Spot {
  readonly x: number
  readonly y: number
}

/**
 * The project with a part (`parts/cell`) moved along the axis by so many mm, in the form in which its place was given:
 * a place measured from something keeps that, and what is added to it changes. Undefined where its place is not a
 * number: it is left out, or rests on readings.
 */
export function movedAlong(project: Project, id: string, by: number): Project | undefined {
  const part = project.parts.find((p) => `parts/${p.id}` === id)
  const z = part?.at?.z
  if (z === undefined) return undefined
  const relative = isRelative(z)
  const now = relative ? (z.by === undefined ? 0 : nominalOf(z.by)) : nominalOf(z)
  return now === undefined
    ? undefined
    : applyFix(project, { path: `${id}/at/z${relative ? '/by' : ''}`, value: rounded(now + by) })
}

/** Where a part now lies in the cross-section, where it shall lie, and the middle of the part it is placed beside. */
export interface Across {
  readonly from: Spot
  readonly to: Spot
  readonly around?: Spot | undefined
}

/**
 * The project with a part moved in the cross-section, in the form in which its place was given: x and y, radius and
 * clock angle, pushed towards an angle, or beside another part. A part on the axis without a word gets x and y.
 */
export function movedAcross(project: Project, id: string, { from, to, around }: Across): Project | undefined {
  const part = project.parts.find((p) => `parts/${p.id}` === id)
  if (!part) return undefined
  const path = `${id}/at/across`
  const across = part.at?.across
  const put = (values: Readonly<Record<string, number>>): Project | undefined =>
    Object.entries(values).reduce<Project | undefined>(
      (p, [field, value]) => p && applyFix(p, { path: `${path}/${field}`, value: rounded(value) }),
      project,
    )
  if (across === undefined) return withValue(project, path, { x: rounded(to.x), y: rounded(to.y) })
  if (isXy(across)) return put({ x: to.x, y: to.y })
  if (isPushed(across)) {
    const gap = nominalOf(across.gap)
    if (gap === undefined) return undefined
    const out = Math.hypot(to.x, to.y)
    return put({
      pushed: out < onAxis ? (angleOf(across.pushed) ?? 0) : clock(to.x, to.y),
      gap: Math.max(0, gap + Math.hypot(from.x, from.y) - out),
    })
  }
  if (isBeside(across)) {
    const gap = nominalOf(across.gap)
    if (gap === undefined || !around) return undefined
    const [was, is] = [
      { x: from.x - around.x, y: from.y - around.y },
      { x: to.x - around.x, y: to.y - around.y },
    ]
    return put({ theta: clock(is.x, is.y), gap: Math.max(0, gap + Math.hypot(is.x, is.y) - Math.hypot(was.x, was.y)) })
  }
  return put({ r: Math.hypot(to.x, to.y), theta: clock(to.x, to.y) })
}

/** Nearer to the axis than this there is no direction, mm. */
const onAxis = 0.05

const rounded = (n: number): number => Number(n.toFixed(3))
const clock = (x: number, y: number): number => ((Math.atan2(y, x) * 180) / Math.PI + 360) % 360

function angleOf(input: QuantityInput): number | undefined {
  if (typeof input !== 'string') return nominalOf(input)
  const read = parseAngle(input)
  return read.ok ? read.value.value : undefined
}
