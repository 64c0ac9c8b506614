import type { Tightest } from './group.ts'

/** Numbers as a person reads them: hundredths of a millimetre, a true minus sign. */
export function mm(n: number): string {
  if (!Number.isFinite(n)) return n > 0 ? '∞' : '−∞'
  const text = Math.abs(n).toFixed(2)
  return n < 0 && Number(text) !== 0 ? `−${text}` : text
}

/** The reason of a gap finding, to be followed with a pocket calculator. */
export function gapReason(t: Tightest): string {
  const { pair, limit } = t
  const { nominal, margins } = t
  const gap = nominal.hi < 0 ? `overlap by ${mm(-nominal.hi)}` : `gap ${mm(nominal.hi)}`
  return `${pair.a.name} to ${pair.b.name}: ${gap} mm as measured, ${mm(margins.worst + limit)} at the worst; ${mm(limit)} needed, so ${mm(margins.worst)} to ${mm(margins.best)} is left.`
}
