import { type Frame, round } from './frame.ts'

/** How far a freehand line sways, and how long its waves are, px. */
const sway = 1.8
const wave = 13

/** A line drawn by hand: here the drawing breaks off (ISO 128-2, continuous freehand line). The same each time. */
export function breakLine(points: readonly (readonly [number, number])[], frame: Frame): string {
  const pixels = points.map(([z, v]) => [frame.x(z), frame.y(v)] as const)
  const [first] = pixels
  if (!first) return ''
  let path = `M${round(first[0])} ${round(first[1])}`
  let n = 0
  for (const [i, [bx, by]] of pixels.entries()) {
    const from = pixels[i - 1]
    if (!from) continue
    const [ax, ay] = from
    const length = Math.hypot(bx - ax, by - ay)
    const waves = Math.max(1, Math.round(length / wave))
    const [nx, ny] = length > 0 ? [-(by - ay) / length, (bx - ax) / length] : [0, 0]
    for (let w = 1; w <= waves; w++, n++) {
      const off = sway * (n % 2 === 0 ? 1 : -1) * (1 + 0.7 * Math.sin(2.7 * n))
      const [m, e] = [(w - 0.5) / waves, w / waves]
      path += `Q${round(ax + m * (bx - ax) + off * nx)} ${round(ay + m * (by - ay) + off * ny)} `
      path += `${round(ax + e * (bx - ax))} ${round(ay + e * (by - ay))}`
    }
  }
  return path
}
