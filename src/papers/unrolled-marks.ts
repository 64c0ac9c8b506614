import type { Body } from '../body/body.ts'
import { isThere } from '../body/there.ts'
import type { Assembly, State } from '../resolve/assembly.ts'

/** Something in, through or over the wall, as it lies on the unrolled outside: its middle and half sizes. */
export interface UnrolledMark {
  /** `features/rivet`, `screws/retention`, `parts/switch`, `sleeves/grip`. */
  readonly id: string
  readonly name: string
  readonly kind: 'intrusion' | 'screw' | 'part' | 'hole' | 'slot' | 'sleeve'
  readonly form: 'round' | 'block'
  readonly z: number
  readonly theta: number
  readonly halfZ: number
  /** Degrees; 180 where it goes all around. */
  readonly halfTheta: number
}

/** Features, screws, sleeves and what sits in the wall, as they are in a state. */
export function unrolledMarks(assembly: Assembly, state: State): UnrolledMark[] {
  const here = (id: string, states?: readonly string[]) => !state.without.has(id) && isThere(states, state.id)
  const outside = (z: number): number => outsideAt(assembly, z)
  const ofBody = (b: Body, kind: UnrolledMark['kind']): UnrolledMark[] => {
    const mark = markOf(b, outside)
    return mark ? [{ id: b.of, name: b.name, kind, ...mark }] : []
  }
  return [
    ...assembly.covers
      .filter((c) => here(c.id))
      .map(({ id, name, ends, theta, half }): UnrolledMark => {
        const [rear, blade] = [ends.rear.nominal, ends.blade.nominal]
        return {
          id,
          name,
          kind: 'sleeve',
          form: 'block',
          z: (rear + blade) / 2,
          theta: theta.nominal,
          halfZ: (blade - rear) / 2,
          halfTheta: half ? Math.min(180, half.nominal) : 180,
        }
      }),
    ...assembly.openings
      .filter((o) => here(o.id))
      .map(({ id, name, z0, z1, opening }): UnrolledMark => {
        const z = (z0.nominal + z1.nominal) / 2
        return {
          id,
          name,
          kind: 'slot',
          form: 'block',
          z,
          theta: opening.theta,
          halfZ: (z1.nominal - z0.nominal) / 2,
          halfTheta: around(opening.halfWidth.nominal, outside(z)),
        }
      }),
    ...assembly.roundHoles
      .filter((h) => here(h.id))
      .map(({ id, name, ends, theta, radius }): UnrolledMark => {
        const z = (ends.rear.nominal + ends.blade.nominal) / 2
        return {
          id,
          name,
          kind: 'hole',
          form: 'round',
          z,
          theta: theta.nominal,
          halfZ: radius.nominal,
          halfTheta: around(radius.nominal, outside(z)),
        }
      }),
    ...assembly.intrusions
      .filter(({ body }) => here(body.of, body.states))
      .flatMap(({ body }) => ofBody(body, body.of.startsWith('screws/') ? 'screw' : 'intrusion')),
    ...assembly.parts
      .filter((p) => p.section !== undefined && here(p.id))
      .flatMap((p) => p.bodies.slice(0, 1).flatMap((b) => ofBody(b, 'part'))),
  ]
}

type Placed = Pick<UnrolledMark, 'form' | 'z' | 'theta' | 'halfZ' | 'halfTheta'>

function markOf({ shape: s }: Body, outside: (z: number) => number): Placed | undefined {
  if (s.kind === 'pin') {
    const [z, half] = [s.z.nominal, s.radius.nominal]
    return { form: 'round', z, theta: s.theta, halfZ: half, halfTheta: around(half, outside(z)) }
  }
  if (s.kind === 'bore' || s.kind === 'outline') return undefined
  const z = (s.z0.nominal + s.z1.nominal) / 2
  const halfZ = (s.z1.nominal - s.z0.nominal) / 2
  if (s.kind === 'sector') return { form: 'block', z, theta: s.theta, halfZ, halfTheta: s.half.nominal }
  const theta = clock(s.x.nominal, s.y.nominal)
  const half = s.kind === 'round' ? Math.max(s.r0.nominal, s.r1.nominal) : s.halfWidth.nominal
  return { form: 'block', z, theta, halfZ, halfTheta: around(half, outside(z)) }
}

const clock = (x: number, y: number): number => ((Math.atan2(y, x) * 180) / Math.PI + 360) % 360

/** Half a width across θ as an angle on the outside. */
const around = (half: number, radius: number): number => (Math.asin(Math.min(1, half / radius)) * 180) / Math.PI

/** Radius of the outside; of the bore and a usual wall where nobody measured it. */
function outsideAt(assembly: Assembly, z: number): number {
  const measured = assembly.sections
    .flatMap((s) => s.outside)
    .filter((o) => o.z0.nominal <= z && z <= o.z1.nominal)
    .map((o) => Math.max(o.d0.nominal, o.d1.nominal) / 2)
  const bore = assembly.sections
    .flatMap((s) => s.steps)
    .filter((s) => s.z0.nominal <= z && z <= s.z1.nominal)
    .map((s) => (s.r0?.nominal ?? 0) + usualWall)
  return Math.max(1, ...(measured.length > 0 ? measured : bore))
}

/** Drawn where no outside was measured, mm. */
const usualWall = 2.6
