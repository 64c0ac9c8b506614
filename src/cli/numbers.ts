import { farAway } from '../job/report.ts'

/** Numbers as a person reads them, with a true minus sign. */

/**
 * What is left over a limit: hundredths, and thousandths where hundredths would say nothing. Something that is
 * lacking never reads as zero. A count has no unit.
 */
export function left(n: number, unit = 'mm'): string {
  if (Math.abs(n) >= farAway) return n > 0 ? '∞' : '−∞'
  if (unit === '') return plain(n, 0)
  const size = Math.abs(n)
  const small = size > 1e-9 && size < 0.01
  const text = small && n < 0 ? Math.max(size, 0.001).toFixed(3) : size.toFixed(small ? 3 : 2)
  const sign = n < 0 && Number(text) !== 0 ? '−' : ''
  return `${sign}${text}${unit === 'mm' ? '' : unit}`
}

/** A number without idle zeros: 12, 0.35, −7.5. At most `digits` behind the point. */
export function plain(n: number, digits = 4): string {
  const text = String(Number(Math.abs(n).toFixed(digits)))
  return n < 0 && Number(text) !== 0 ? `−${text}` : text
}

/** A place along the hilt: tenths of a millimetre, the points one under the other. */
export function tenths(n: number): string {
  const text = Math.abs(n).toFixed(1)
  return n < 0 && Number(text) !== 0 ? `−${text}` : text
}

/** 0…1 as whole per cent; what is not nothing and not all never reads as 0 % or 100 %. */
export function percent(share: number): string {
  const p = Math.round(share * 100)
  if (p === 0 && share > 0) return 'under 1 %'
  if (p === 100 && share < 1) return 'over 99 %'
  return `${p} %`
}
