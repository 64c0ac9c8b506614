import type { ProjectInput } from '../../src/project/schema/project.ts'
import { randomSize } from './random-size.ts'
import type { Rng } from './rng.ts'

type Sections = NonNullable<ProjectInput['sections']>
type Joints = NonNullable<ProjectInput['joints']>

/** A stretch of the random hilt at nominal, for choosing sizes near their limits. */
export interface Stretch {
  readonly section: string
  readonly step: string
  readonly z0: number
  readonly z1: number
  /** Least free radius of the stretch. */
  readonly r: number
  readonly straight: boolean
}

export interface RandomHilt {
  readonly sections: Sections
  readonly joints: Joints
  readonly stretches: readonly Stretch[]
}

/** Internal threads with their minor radius, mm: D − 1.0825 P, halved. */
const threads = [
  ['M20x1.5', 9.188],
  ['M22x1', 10.459],
  ['M24x1.5', 11.188],
  ['M27x1', 12.959],
  ['M28x1.5', 13.188],
  ['M30x1', 14.459],
  ['M33x1.5', 15.688],
  ['1-14 UNS', 11.718],
  ['1 1/4-18 UNEF', 15.111],
] as const

/** One to four sections, each with one to three steps: plain, tapered, threaded. */
export function randomHilt(rng: Rng): RandomHilt {
  const sections: Sections = []
  const joints: Joints = []
  const stretches: Stretch[] = []
  const n = rng.pick([1, 1, 2, 2, 3, 4])
  const base = rng.between(9.5, 15)
  let rear = 0
  for (let i = 0; i < n; i++) {
    const id = `s${i}`
    const engagement = i > 0 && rng.chance(0.35) ? rng.between(2, 6, 1) : 0
    rear -= engagement
    const made = randomSection(rng, id, rear, base)
    sections.push(made.section)
    stretches.push(...made.stretches)
    rear += made.length
    if (i > 0 && (engagement > 0 || rng.chance(0.5)))
      joints.push({
        id: `j${i}`,
        kind: rng.pick(['threaded', 'slip', 'clamped'] as const),
        rear: `s${i - 1}`,
        blade: id,
        ...(engagement > 0
          ? { engagement: rng.chance(0.5) ? engagement : { value: engagement, plus: 0.1, minus: 0.2 } }
          : {}),
        ...(rng.chance(0.25) ? { play: { value: rng.between(0, 0.1), plus: 0.05, minus: 0 } } : {}),
      })
  }
  return { sections, joints, stretches }
}

function randomSection(
  rng: Rng,
  id: string,
  rear: number,
  base: number,
): { section: Sections[number]; stretches: Stretch[]; length: number } {
  const steps = rng.pick([1, 1, 2, 2, 3])
  const clamp = steps === 1 && rng.chance(0.12)
  const bore: Sections[number]['bore'] = []
  const stretches: Stretch[] = []
  let z = rear
  let widest = 0
  for (let k = 0; k < steps; k++) {
    const length = rng.between(18, 55, 1)
    const step = clamp
      ? { input: { id: 'b0' }, r0: base, r1: base }
      : randomStep(rng, `b${k}`, base + rng.pick([0, 0, 0, -1.5, 1.5, rng.between(-2.5, 2)]))
    bore.push({ ...step.input, ...(k < steps - 1 ? { length: randomSize(rng, length, 'length', 0.4) } : {}) })
    stretches.push({
      section: id,
      step: `sections/${id}/b${k}`,
      z0: z,
      z1: z + length,
      r: Math.min(step.r0, step.r1),
      straight: step.r0 === step.r1,
    })
    widest = Math.max(widest, step.r0, step.r1)
    z += length
  }
  const length = z - rear
  const section: Sections[number] = {
    id,
    length: randomSize(rng, length, 'length', 0.4),
    bore,
    outside: [{ diameter: Number((2 * widest + rng.between(2.5, 6)).toFixed(2)) }],
  }
  if (clamp)
    section.clamp = {
      open: randomSize(rng, 2 * base + rng.between(0, 0.4), 'bore'),
      closed: { value: Number((2 * base - 0.2).toFixed(2)), plus: 0.05, minus: 0.05 },
      ...(rng.chance(0.5) ? { openIn: ['stripped', 'service'] } : {}),
    }
  if (rng.chance(0.18))
    section.eccentricity = {
      offset: rng.chance(0.5) ? { value: rng.between(0, 0.3), plus: 0.05, minus: 0 } : { min: 0, max: 0.2 },
      ...(rng.chance(0.7)
        ? { theta: rng.chance(0.5) ? rng.whole(0, 359) : { value: rng.whole(0, 359), plus: 5, minus: 5 } }
        : {}),
    }
  return { section, stretches, length }
}

function randomStep(
  rng: Rng,
  id: string,
  r: number,
): { input: Sections[number]['bore'][number]; r0: number; r1: number } {
  if (rng.chance(0.2)) {
    const [thread, minor] = rng.pick(threads.filter(([, m]) => Math.abs(m - r) < 3))
    return { input: { id, kind: 'threaded', thread }, r0: minor, r1: minor }
  }
  const allowance = rng.chance(0.1) ? { allowance: { value: 0.03, plus: 0.02, minus: 0.02 } } : {}
  if (rng.chance(0.2)) {
    const end = r + rng.pick([-1, 1]) * rng.between(0.1, 1.2)
    return {
      input: {
        id,
        diameter: randomSize(rng, 2 * r, 'bore'),
        diameterEnd: randomSize(rng, 2 * end, 'bore'),
        ...allowance,
      },
      r0: r,
      r1: end,
    }
  }
  return { input: { id, diameter: randomSize(rng, 2 * r, 'bore'), ...allowance }, r0: r, r1: r }
}
