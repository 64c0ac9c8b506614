import { slabsOf } from '../../../geometry/plan/cross-section.ts'
import { itemNumber } from '../../../geometry/plan/one-item.ts'
import { type Dimension, type PlanItem, type Plate, planSpan } from '../../../geometry/plan/plan.ts'
import { polar, radians, turnBetween } from '../../../geometry/region/point.ts'
import { remember } from '../../../geometry/remember.ts'
import { dimension } from '../dimensions.ts'
import { cannot, drawnAt, innerRadius, outerRadius, type SledJob } from '../job.ts'
import { strokeItems, strokesOf } from './strokes.ts'

/** Letters 3.5 high, 0.5 deep, strokes of 0.6: readable in black plastic (0.5 deep: from memory). */
const usual = { height: 3.5, depth: 0.5, stroke: 0.6 }

interface Mark {
  readonly id: string
  readonly text: string
  readonly z: number
  readonly theta: number | undefined
  readonly height: number | undefined
  readonly depth: number | undefined
  readonly stroke: number | undefined
  /** The program's own marks are left out where there is no room for them; typed ones must be there. */
  readonly typed: boolean
}

/** Engraved texts and marks on the outside, read along the axis: each stroke a shallow slot. */
export function markItems(job: SledJob, items: readonly PlanItem[]): PlanItem[] {
  const { sled } = job
  const typed = (sled.input.marks ?? []).flatMap((m): Mark[] => {
    const z = drawnAt(sled, 'marks', m.id, 'z')
    const { id, text, theta, height, depth, stroke } = m
    return z === undefined ? [] : [{ id, text, z, theta, height, depth, stroke, typed: true }]
  })
  const marks = [...typed, ...(sled.input.standardMarks ? standardMarks(job) : [])]
  return marks.reduce<PlanItem[]>((written, m) => [...written, ...engraved(job, items, written, m)], [])
}

/** + and − at the ends of every cell, an arrow towards the blade, and the revision. */
function standardMarks(job: SledJob): Mark[] {
  const { sled, parts } = job
  const plain = { theta: undefined, height: undefined, depth: undefined, stroke: undefined, typed: false }
  const cells = parts.filter((p) => p.kind === 'cell')
  const ends = cells.flatMap((p): Mark[] => [
    { ...plain, id: `plus-${p.id.split('/')[1]}`, text: '+', z: p.ends.blade.nominal - 6 },
    { ...plain, id: `minus-${p.id.split('/')[1]}`, text: '-', z: p.ends.rear.nominal + 3 },
  ])
  const middle = (sled.ends.rear.nominal + sled.ends.blade.nominal) / 2
  return [...ends, { ...plain, id: 'up', text: `${sled.input.revision ?? 'R1'} ->`, z: middle - 5 }]
}

/** `written`: the marks before it, which it must not run into. */
function engraved(job: SledJob, items: readonly PlanItem[], written: readonly PlanItem[], m: Mark): PlanItem[] {
  const { sled } = job
  const path = (field: string) => `sleds/${sled.id}/marks/${m.id}/${field}`
  const height = dimension('letter height', m.height, usual.height, path('height'), 'common practice, no source')
  const depth = dimension('engraving depth', m.depth, usual.depth, path('depth'), '0.5 deep: from memory')
  const stroke = dimension('line width', m.stroke, usual.stroke, path('stroke'), 'common practice, no source')
  if (!writable(job, m, path('text'))) return []
  const strokes = strokesOf({ text: m.text, height: height.value })
  const length = Math.max(0, ...strokes.flat().map(([a]) => a))
  const half = Math.max(0, ...strokes.flat().map(([, b]) => Math.abs(b))) + stroke.value / 2
  const R = innerRadius(sled, m.z, m.z + length)
  if (!legible(job, height, depth, stroke, R)) return []
  const [z0, z1] = [m.z, m.z + length]
  const isNear = ({ solid }: PlanItem) => {
    const span = planSpan(solid)
    return span.z1 > z0 - 1 && span.z0 < z1 + 1
  }
  const near = items.filter(isNear)
  const taken = written.filter(isNear).flatMap(({ solid }) => (solid.shape === 'plate' ? [strokeOf(solid)] : []))
  const deep = depth.value + sled.print.leastWall
  if (m.typed && !onSled(job, m, path('z'), length)) return []
  const found = m.theta ?? plainSide({ near, taken, z0, z1, halfWidth: half, R, deep })
  if (found === undefined) {
    const hint = 'Choose another height, smaller letters, or type a clock angle.'
    if (m.typed) cannot(job, path('z'), `z ${m.z}`, `a height beside ${length.toFixed(1)} mm of plain outside`, hint, 1)
    return []
  }
  const theta = dimension('clock angle', m.theta, found, path('theta'), 'where the outside is plain', '°')
  const radii = strokes.map((line) =>
    // A stroke over a step of the body is as deep as the wider piece asks, so that no skin closes it.
    line.slice(1).map(([a1], k) => {
      const a0 = (line[k] as [number, number])[0]
      return outerRadius(sled, m.z + Math.min(a0, a1) - stroke.value, m.z + Math.max(a0, a1) + stroke.value)
    }),
  )
  return strokeItems({
    sled: sled.id,
    mark: m.id,
    text: m.text,
    z: m.z,
    radii,
    half,
    dimensions: [height, depth, stroke, theta],
  })
}

/** The vector font knows the printable letters of ASCII; it would write any other as a question mark. */
function writable(job: SledJob, m: Mark, path: string): boolean {
  const odd = m.text.match(/[^ -~]/u)?.[0]
  if (odd === undefined && m.text.trim() !== '') return true
  const where = m.typed ? path : `sleds/${job.sled.id}/revision`
  const got = odd === undefined ? 'only spaces' : `the letter ${odd}`
  cannot(job, where, got, 'letters A to Z, digits and signs of ASCII', 'Write it without this letter.', 1)
  return false
}

/** Letters too large for the body, or too small, too shallow or too deep to be read. */
function legible(job: SledJob, height: Dimension, depth: Dimension, stroke: Dimension, R: number): boolean {
  const limits = [
    { d: height, lo: 2, hi: R },
    { d: depth, lo: 0.1, hi: R / 2 },
    { d: stroke, lo: 0.2, hi: height.value / 3 },
  ]
  const wrong = limits.filter(({ d, lo, hi }) => d.value < lo || d.value > hi)
  for (const { d, lo, hi } of wrong) {
    const nearest = d.value < lo ? lo : hi
    cannot(
      job,
      d.path,
      `${d.value} mm`,
      `${lo} to ${hi.toFixed(1)} mm`,
      `The nearest that works is ${nearest.toFixed(1)}.`,
      d.value - nearest,
    )
  }
  return wrong.length === 0
}

/** A typed text must lie on the sled from its first letter to its last. */
function onSled(job: SledJob, m: Mark, path: string, length: number): boolean {
  const [rear, blade] = [job.sled.ends.rear.nominal, job.sled.ends.blade.nominal]
  if (m.z >= rear && m.z + length <= blade) return true
  const nearest = m.z < rear ? rear : blade - length
  const limit = `z ${rear.toFixed(1)} to ${(blade - length).toFixed(1)}, for ${length.toFixed(1)} mm of text`
  cannot(job, path, `z ${m.z}`, limit, `The nearest is z ${nearest.toFixed(1)}.`, m.z - nearest)
  return false
}

/** Where across a text its ground is looked at, in half widths; the middle first, which is often missing. */
const probes = [0, -1, 1, -0.5, 0.5]

/** Plain outside kept around a text, mm. */
const plain = 1

/** A stroke already written: its clock angle, and how far it reaches to either side of it, mm. */
interface Stroke {
  readonly theta: number
  readonly half: number
}

const strokeOf = ({ theta, points }: Plate): Stroke => ({ theta, half: Math.max(...points.map(([t]) => Math.abs(t))) })

interface PlainAsk {
  readonly near: readonly PlanItem[]
  /** Strokes beside it along the axis. */
  readonly taken: readonly Stroke[]
  readonly z0: number
  readonly z1: number
  readonly halfWidth: number
  readonly R: number
  readonly deep: number
}

/** A clock angle at which the outside is whole over the text's length and width; undefined where there is none. */
const plainSide = remember(
  64,
  ({ near, ...a }: PlainAsk) => JSON.stringify([near.map(itemNumber), a]),
  ({ near, taken, z0, z1, halfWidth, R, deep }: PlainAsk): number | undefined => {
    const beside = slabsOf(near, true).filter((s) => s.z1 > z0 - 1 && s.z0 < z1 + 1)
    if (beside.length === 0) return undefined
    const half = (Math.asin(Math.min(1, (halfWidth + plain) / R)) * 180) / Math.PI
    const whole = (radius: number, theta: number): boolean => {
      const p = polar(radius, theta)
      return beside.every((s) => s.region.contains(p))
    }
    for (let k = 0; k < 72; k++) {
      // From the back (θ = 180) outwards to both sides.
      const theta = (180 + (k % 2 === 0 ? 1 : -1) * Math.ceil(k / 2) * 5 + 360) % 360
      const plainAt = (s: number) => whole(R - 0.05, theta + s * half) && whole(R - deep, theta + s * half)
      const isFree = (s: Stroke) => radians(Math.abs(turnBetween(theta, s.theta))) * R >= halfWidth + s.half + plain
      if (taken.every(isFree) && probes.every(plainAt)) return theta
    }
    return undefined
  },
)
