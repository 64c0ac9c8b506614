import type { Body } from '../body/body.ts'
import { isThere } from '../body/there.ts'
import type { Assembly, Part } from '../resolve/assembly.ts'
import { type CutMetal, metalSection } from './metal-section.ts'
import { bodyAt, nominalSolid, nominalSpan } from './nominal.ts'
import { shadow, spansOnLine } from './plane-line.ts'
import { bodiesOf } from './plans.ts'
import { type CutMaterial, sledSection } from './sled-section.ts'
import { type Span, within } from './spans.ts'
import type { Point2 } from './thread-profile.ts'

/** The lengthwise section to scale, as plain numbers: points are [z, height above the axis towards θ], mm. */
export interface LengthwiseView {
  readonly theta: number
  /** What is drawn: from, to along the hilt, and how far from the axis. */
  readonly z0: number
  readonly z1: number
  readonly reach: number
  readonly metal: readonly CutMetal[]
  /** Stretches whose bore nobody measured. */
  readonly unmeasured: readonly Span[]
  readonly sleds: readonly SledSection[]
  readonly contents: readonly SectionedPart[]
  readonly intrusions: readonly SectionedPart[]
  readonly sections: readonly NamedStretch[]
  /** Where each part lies along the hilt, whether the plane meets it or not. */
  readonly parts: readonly NamedStretch[]
  /** Free bores along the axis, for dimensions. */
  readonly bores: readonly BoreStretch[]
}

export interface SledSection extends CutMaterial {
  readonly id: string
  readonly name: string
  readonly z0: number
  readonly z1: number
  readonly radius: number
}

/** Something in the bore: where the plane cuts it, and what is seen of it beside the plane. */
export interface SectionedPart {
  readonly id: string
  readonly name: string
  readonly kind: Part['kind'] | 'intrusion'
  /** It sits in the wall and passes it by its own hole. */
  readonly inWall: boolean
  readonly cut: readonly (readonly Point2[])[]
  readonly seen: readonly (readonly Point2[])[]
}

/** A stretch of the hilt with its name. */
export interface NamedStretch {
  readonly id: string
  readonly name: string
  readonly z0: number
  readonly z1: number
}

export interface BoreStretch {
  readonly id: string
  readonly name: string
  readonly z0: number
  readonly z1: number
  readonly d0: number
  readonly d1: number
  readonly thread: string | undefined
}

/** The assembly cut along the plane at clock angle θ (degrees), with what is there in a state (the first where left out). */
export function lengthwiseView(
  assembly: Assembly,
  theta: number,
  state = assembly.states[0]?.id ?? '',
): LengthwiseView {
  const metal = metalSection(assembly, theta, state)
  const points = metal.flatMap((m) => m.ring)
  const steps = assembly.sections.flatMap((s) => s.steps)
  const reach = Math.max(1, ...points.map(([, v]) => Math.abs(v)))
  // What was not measured has no metal to show, and what does not fit may stand out of the hilt.
  const inside = [
    ...assembly.sleds,
    ...assembly.parts,
    ...assembly.sections.filter((s) => s.steps.some((t) => !t.r0)),
  ].map((o) => o.ends)
  const gone = assembly.states.find((s) => s.id === state)?.without
  return {
    theta,
    z0: Math.min(...points.map(([z]) => z), ...inside.map((e) => e.rear.nominal)),
    z1: Math.max(...points.map(([z]) => z), ...inside.map((e) => e.blade.nominal)),
    reach,
    metal,
    unmeasured: steps.filter((s) => !s.r0 || !s.r1).map((s): Span => [s.z0.nominal, s.z1.nominal]),
    sleds: assembly.sleds.map((sled) => ({
      id: `sleds/${sled.id}`,
      name: sled.name,
      z0: sled.ends.rear.nominal,
      z1: sled.ends.blade.nominal,
      radius: Math.max(0, ...sled.pieces.map((p) => p.radius), ...sled.rings.map((r) => r.radius)),
      ...sledSection(bodiesOf(assembly, sled), theta),
    })),
    contents: assembly.parts
      .filter((p) => !gone?.has(p.id))
      .map((p) => ({
        id: p.id,
        name: p.name,
        kind: p.kind,
        inWall: p.section !== undefined,
        ...sectioned(p.bodies, theta, reach),
      })),
    intrusions: assembly.intrusions
      .filter(({ body }) => isThere(body.states, state) && !gone?.has(body.of))
      .map(({ body }) => ({
        id: body.of,
        name: body.name,
        kind: 'intrusion' as const,
        inWall: true,
        ...sectioned([body], theta, reach),
      })),
    sections: assembly.sections.map(({ id, name, ends }) => stretchOf(`sections/${id}`, name, ends)),
    parts: assembly.parts.filter((p) => !gone?.has(p.id)).map(({ id, name, ends }) => stretchOf(id, name, ends)),
    bores: steps.flatMap((s): BoreStretch[] =>
      s.kind === 'solid' || !s.r0 || !s.r1 || !isThere(s.states, state)
        ? []
        : [
            {
              id: s.id,
              name: s.name,
              z0: s.z0.nominal,
              z1: s.z1.nominal,
              d0: 2 * s.r0.nominal,
              d1: 2 * s.r1.nominal,
              thread: s.thread?.name,
            },
          ],
    ),
  }
}

const stretchOf = (id: string, name: string, ends: Part['ends']): NamedStretch => ({
  id,
  name,
  z0: ends.rear.nominal,
  z1: ends.blade.nominal,
})

function sectioned(bodies: readonly Body[], theta: number, reach: number): Pick<SectionedPart, 'cut' | 'seen'> {
  const limits: Span = [-reach, reach]
  const cut: Point2[][] = []
  const seen: Point2[][] = []
  for (const body of bodies) {
    const { z0, z1 } = nominalSpan(body)
    const turned = nominalSolid(body).kind === 'turned'
    const ends = (turned ? [z0, z1] : [(z0 + z1) / 2, (z0 + z1) / 2]).map((z) => bodyAt(body, z))
    const [rear, blade] = ends
    if (!rear || !blade) continue
    const [first, last] = [within(spansOnLine(rear, theta), limits), within(spansOnLine(blade, theta), limits)]
    if (first.length === last.length) for (const [i, s] of first.entries()) cut.push(quad(z0, z1, s, last[i] as Span))
    const shade = shadow(rear, theta)
    if (shade) for (const s of within([shade], limits)) seen.push(quad(z0, z1, s, s))
  }
  return { cut, seen }
}

const quad = (z0: number, z1: number, [a, b]: Span, [c, d]: Span): Point2[] => [
  [z0, a],
  [z1, c],
  [z1, d],
  [z0, b],
]
