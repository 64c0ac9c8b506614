import type { Interval } from './schema/interval.ts'

export interface Bounds {
  readonly min: number
  readonly nominal: number
  readonly max: number
}

/** The two ends of an interval and its nominal, in the interval's own unit; the middle where no nominal is published. */
export function bounds(i: Interval): Bounds {
  if ('value' in i) return { min: i.value - i.minus, nominal: i.value, max: i.value + i.plus }
  return { min: i.min, nominal: i.nominal ?? (i.min + i.max) / 2, max: i.max }
}

/** `18.2–18.6`, `6.2 ±0.2`, `16 +0.2/−0`. */
export function intervalText(i: Interval): string {
  if ('min' in i) return i.min === i.max ? String(i.min) : `${i.min}–${i.max}`
  if (i.plus === 0 && i.minus === 0) return String(i.value)
  return i.plus === i.minus ? `${i.value} ±${i.plus}` : `${i.value} +${i.plus}/−${i.minus}`
}
