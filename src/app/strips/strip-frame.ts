import { type Frame, frameOf } from '../drawing/frame.ts'

/** A stretch of the ruler, mm. */
export interface Range {
  readonly z0: number
  readonly z1: number
}

/** Where every strip lies on the one sheet, px. All share `x`. */
export interface StripLayout {
  /** Of the lengthwise section; its x serves all strips. */
  readonly frame: Frame
  readonly range: Range
  readonly left: number
  readonly width: number
  readonly height: number
  readonly ruler: Band
  readonly section: Band
  readonly gap: Band
  readonly unrolled: Band
  /** The section is higher than its strip: only a part of it is shown. */
  readonly cropped: boolean
}

/** From top to bottom, px. */
export interface Band {
  readonly y: number
  readonly height: number
}

export interface LayoutAsk {
  readonly whole: Range
  /** How far from the axis the section reaches, mm. */
  readonly reach: number
  readonly range: Range | undefined
  /** Room on the page, px. */
  readonly width: number
  readonly viewHeight: number
  readonly dimensions: boolean
  /** Height above the axis that lies in the middle of a cropped section, mm. */
  readonly middle: number
}

/** Below this width names stand above their strips, px. */
export const narrow = 700
const right = 16
const rulerHeight = 30
/** Room for diameters above the section and for dimension chains below it, px. */
const above = { with: 20, without: 6 }
const below = { with: 48, without: 6 }

export function layoutOf(ask: LayoutAsk): StripLayout {
  const { whole, reach, width, viewHeight, dimensions } = ask
  const small = width < narrow
  const left = small ? 40 : 112
  const name = small ? 20 : 0
  const room = Math.max(80, width - left - right)
  const tallest = Math.max(150, Math.min(0.225 * viewHeight, 300))
  const shown = ask.range ?? padded(whole)
  const fit = room / (shown.z1 - shown.z0)
  const scale = ask.range ? fit : Math.min(fit, tallest / (2 * reach))
  const range: Range = { z0: shown.z0, z1: Math.max(shown.z1, shown.z0 + room / scale) }
  const half = Math.min(reach, tallest / 2 / scale)
  const middle = Math.max(half - reach, Math.min(reach - half, ask.middle))
  const [top, bottom] = dimensions ? [above.with, below.with] : [above.without, below.without]
  const section: Band = { y: rulerHeight + name, height: top + 2 * half * scale + bottom }
  const gap: Band = { y: section.y + section.height + name + 8, height: Math.round(clamp(0.09 * viewHeight, 66, 120)) }
  const unrolled: Band = { y: gap.y + gap.height + name + 10, height: Math.round(clamp(0.11 * viewHeight, 84, 160)) }
  const base = frameOf({
    ...range,
    reach: half,
    width: left + (range.z1 - range.z0) * scale + right,
    margin: { left, right, top: section.y + top, bottom },
    tallest: Number.POSITIVE_INFINITY,
    leastScale: scale,
  })
  const axis = section.y + top + half * scale
  return {
    frame: { ...base, y: (v) => axis - (v - middle) * scale },
    range,
    left,
    width: base.width,
    height: unrolled.y + unrolled.height + 8,
    ruler: { y: 0, height: rulerHeight },
    section,
    gap,
    unrolled,
    cropped: half < reach - 1e-6,
  }
}

/** A little paper beyond both ends. */
const padded = ({ z0, z1 }: Range): Range => {
  const pad = 0.008 * (z1 - z0)
  return { z0: z0 - pad, z1: z1 + pad }
}

const clamp = (n: number, low: number, high: number): number => Math.min(high, Math.max(low, n))

/** The least stretch one can zoom in to, mm. */
const closest = 10

/** The ruler nearer or farther by a factor about a height that stays where it is; undefined: all of it. */
export function zoomed(now: Range, whole: Range, factor: number, about = (now.z0 + now.z1) / 2): Range | undefined {
  const length = Math.max(closest, (now.z1 - now.z0) / factor)
  if (length >= whole.z1 - whole.z0) return undefined
  const share = (about - now.z0) / (now.z1 - now.z0)
  const z0 = about - share * length
  return kept({ z0, z1: z0 + length }, whole)
}

/** The ruler moved by so many millimetres, never off the hilt. */
export const panned = (now: Range, whole: Range, by: number): Range => kept({ z0: now.z0 + by, z1: now.z1 + by }, whole)

function kept({ z0, z1 }: Range, whole: Range): Range {
  const length = z1 - z0
  const start = Math.max(whole.z0, Math.min(whole.z1 - length, z0))
  return { z0: start, z1: start + length }
}
