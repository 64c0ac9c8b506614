import { type PlanItem, planSpan } from '../../../geometry/plan/plan.ts'
import type { Body } from '../../body/body.ts'
import { least, most, reachOf } from '../../quantity/quantity.ts'
import type { Sled } from '../../resolve/assembly.ts'
import { dimension } from '../dimensions.ts'
import { type Around, beyond, cannot, drawnAt, outerRadius, type SledJob, tooShort } from '../job.ts'

type WindowInput = NonNullable<Sled['input']['windows']>[number]

/**
 * Room in the sled's outside for something that sticks into the bore. It follows what it is for: as wide and as deep
 * as that reaches at its worst, plus the gap. What is there before the sled goes in needs its way cut through to the
 * sled's leading end; what is fitted after needs room only around itself.
 */
export function windowItems(job: SledJob): PlanItem[] {
  const { assembly, sled } = job
  return (sled.input.windows ?? []).flatMap((w) => {
    const found = w.for === undefined ? undefined : target(assembly, w.for)
    const made = found || w.for === undefined ? item(assembly, sled, w, found) : undefined
    if (!made || faulty(job, w, made)) return []
    return beside(sled, made) ? [made] : []
  })
}

/** A window of no width or no length. */
function faulty(job: SledJob, w: WindowInput, { solid }: PlanItem): boolean {
  const path = `sleds/${job.sled.id}/windows/${w.id}`
  const { z0, z1 } = planSpan(solid)
  // One that follows what it is for, past the sled's end, is not cut; only typed heights can be wrong.
  const typed = w.from !== undefined || w.to !== undefined
  if (typed && tooShort(job, `${path}/to`, z0, z1)) return true
  const least = 0.1
  if (solid.shape !== 'box' || solid.width >= least) return false
  const hint = 'Leave the width out: it then follows what the window is for.'
  cannot(job, `${path}/width`, `${solid.width} mm`, `at least ${least} mm`, hint, least - solid.width)
  return true
}

/** A window that the sled does not reach needs no cutting. */
function beside(sled: Sled, { solid }: PlanItem): boolean {
  const { z0, z1 } = planSpan(solid)
  if (solid.shape === 'box' && solid.height <= beyond) return false
  return z1 > sled.ends.rear.nominal && z0 < sled.ends.blade.nominal
}

interface Target {
  readonly theta: number
  readonly half: number
  readonly tip: number
  readonly z0: number
  readonly z1: number
  readonly before: boolean
}

function item(assembly: Around, sled: Sled, w: WindowInput, t: Target | undefined): PlanItem {
  const path = (field: string) => `sleds/${sled.id}/windows/${w.id}/${field}`
  const gapSource = assembly.thresholds['fitted-gap'].source
  const own = assembly.thresholds['fitted-gap'].value + most(sled.print.error)
  const gap = dimension('gap', w.gap, own, path('gap'), `least gap to fitted parts plus print error: ${gapSource}`)
  const theta = dimension('theta', w.theta, t?.theta ?? 0, path('theta'), 'where what it is for sits', '°')
  const width = dimension(
    'width',
    w.width,
    t ? 2 * (t.half + gap.value) : 8,
    path('width'),
    'as wide as what it is for, plus gap',
  )
  const floor = dimension(
    'floor',
    w.floor,
    Math.max(0, (t?.tip ?? 8) - gap.value),
    path('floor'),
    'as deep as what it is for reaches, plus gap',
  )
  const { z0, z1 } = spanOf(assembly, sled, w, t, gap.value)
  const top = outerRadius(sled, z0, z1) + beyond
  const a = (theta.value * Math.PI) / 180
  const middle = (floor.value + top) / 2
  return {
    id: `sleds/${sled.id}/windows/${w.id}`,
    op: 'cut',
    by: w.for ?? `sleds/${sled.id}`,
    nest: 'window',
    dimensions: [gap, theta, width, floor],
    solid: {
      shape: 'box',
      x: middle * Math.cos(a),
      y: middle * Math.sin(a),
      z0,
      z1,
      width: width.value,
      height: top - floor.value,
      facing: theta.value,
    },
  }
}

function spanOf(
  assembly: Around,
  sled: Sled,
  w: WindowInput,
  t: Target | undefined,
  gap: number,
): { z0: number; z1: number } {
  const [rear, blade] = [sled.ends.rear.nominal - beyond, sled.ends.blade.nominal + beyond]
  const leading = assembly.insertions.find((i) => i.moves === `sleds/${sled.id}`)?.heading ?? 'blade'
  const around = t ? { z0: t.z0 - gap, z1: t.z1 + gap } : { z0: rear, z1: blade }
  const through = t?.before
    ? leading === 'blade'
      ? { z0: around.z0, z1: blade }
      : { z0: rear, z1: around.z1 }
    : around
  return {
    z0: drawnAt(sled, 'windows', w.id, 'from') ?? through.z0,
    z1: drawnAt(sled, 'windows', w.id, 'to') ?? through.z1,
  }
}

function target(assembly: Around, ref: string): Target | undefined {
  const intrusion = assembly.intrusions.find((i) => i.body.id === ref)
  const part = assembly.parts.find((p) => p.id === ref)
  const body = intrusion?.body ?? part?.bodies[0]
  const before = intrusion ? intrusion.fitted === 'before' : part?.goesIn !== 'after'
  return body && fromBody(body, before)
}

/** The room a body takes up at its worst, doubt about its place included. */
function fromBody(b: Body, before: boolean): Target | undefined {
  const s = b.shape
  const arc = Math.sin((reachOf(b.turn) * Math.PI) / 180)
  if (s.kind === 'pin') {
    const r = most(s.radius)
    const half = r + most(s.rOut) * arc
    return { theta: s.theta, half, tip: least(s.rIn) - half * arc, z0: least(s.z) - r, z1: most(s.z) + r, before }
  }
  if (s.kind === 'box') {
    const [hw, hh] = [most(s.halfWidth), most(s.halfHeight)]
    const middle = Math.hypot(s.x.nominal, s.y.nominal)
    const half = hw + (middle + hh) * arc
    return { theta: s.facing, half, tip: middle - hh - half * arc, z0: least(s.z0), z1: most(s.z1), before }
  }
  if (s.kind === 'sector' && s.half.nominal < 90) {
    const wide = most(s.half) + reachOf(b.turn)
    const half = Math.sin((wide * Math.PI) / 180) * (s.rOut ? most(s.rOut) : most(s.rIn) * 1.3)
    return {
      theta: s.theta,
      half,
      tip: least(s.rIn) * Math.cos((wide * Math.PI) / 180),
      z0: least(s.z0),
      z1: most(s.z1),
      before,
    }
  }
  return undefined
}
