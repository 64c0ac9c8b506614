import type { Outline } from '../../papers/outline.ts'
import { round } from './frame.ts'

/** Where a cross-section lies on the sheet: θ = 0 up, θ growing clockwise, as seen from the rear. */
export interface CrossFrame {
  readonly scale: number
  readonly cx: number
  readonly cy: number
}

/** A point of the cross-section (x towards θ = 0, y towards θ = 90°) on the sheet. */
export const place = (f: CrossFrame, p: { readonly x: number; readonly y: number }): readonly [number, number] => [
  round(f.cx + p.y * f.scale),
  round(f.cy - p.x * f.scale),
]

/** An outline as an SVG path. Growing θ turns clockwise on the sheet, which is SVG's positive sweep. */
export function outlinePath(o: Outline, f: CrossFrame): string {
  const start = place(f, o)
  const steps = o.steps.map((s) => {
    const [x, y] = place(f, s)
    if (s.r === undefined) return `L${x} ${y}`
    const r = round(s.r * f.scale)
    return `A${r} ${r} 0 ${s.large ? 1 : 0} ${s.forward ? 1 : 0} ${x} ${y}`
  })
  return `M${start[0]} ${start[1]}${steps.join('')}${o.closed ? 'Z' : ''}`
}

export const outlinePaths = (list: readonly Outline[], f: CrossFrame): string =>
  list.map((o) => outlinePath(o, f)).join('')
