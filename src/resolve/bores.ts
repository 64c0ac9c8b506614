import type { Body, Opening } from '../body/body.ts'
import { exact, type Quantity } from '../quantity/quantity.ts'
import type { BoreBody } from './assembly.ts'
import type { WallOpening } from './features.ts'
import type { Section, Step } from './metal.ts'

/** The bore walls as bodies: each step one, cut along z where a slot in the wall begins or ends. */
export function boresOf(sections: readonly Section[], openings: readonly WallOpening[]): BoreBody[] {
  return sections.flatMap((section) =>
    section.steps.flatMap((step): BoreBody[] => {
      if (!step.r0 || !step.r1) return []
      const own = openings.filter(
        (o) => o.section === section.id && o.z1.nominal > step.z0.nominal && o.z0.nominal < step.z1.nominal,
      )
      return pieces(step, own).map((body) => ({
        body,
        section: section.id,
        step: step.id,
        solid: step.kind === 'solid',
      }))
    }),
  )
}

function pieces(step: Step, openings: readonly WallOpening[]): Body[] {
  const cuts = openings
    .flatMap((o) => [o.z0, o.z1])
    .filter((q) => q.nominal > step.z0.nominal && q.nominal < step.z1.nominal)
  const stations = [step.z0, ...cuts.sort((a, b) => a.nominal - b.nominal), step.z1]
  return stations.slice(1).map((z1, i) => {
    const z0 = stations[i] as Quantity
    const middle = (z0.nominal + z1.nominal) / 2
    const here = openings.filter((o) => o.z0.nominal < middle && o.z1.nominal > middle).map((o) => o.opening)
    return body(step, z0, z1, here, i, stations.length > 2)
  })
}

function body(step: Step, z0: Quantity, z1: Quantity, openings: readonly Opening[], i: number, several: boolean): Body {
  return {
    id: several ? `${step.id}-${i + 1}` : step.id,
    of: step.id,
    name: step.name,
    shape: {
      kind: 'bore',
      z0,
      z1,
      r0: step.r0 ?? exact(0),
      r1: step.r1 ?? exact(0),
      x: step.x,
      y: step.y,
      ...(openings.length > 0 ? { openings } : {}),
    },
    ...(step.sway ? { sway: step.sway } : {}),
    ...(step.states ? { states: step.states } : {}),
  }
}
