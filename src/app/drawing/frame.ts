/** Where millimetres lie on the sheet: one scale for both directions, so that every drawing is to scale. */
export interface Frame {
  /** Pixels of one millimetre. */
  readonly scale: number
  readonly width: number
  readonly height: number
  /** Heights along the hilt to pixels, and back. */
  readonly x: (z: number) => number
  readonly z: (x: number) => number
  /** Height above the axis to pixels. */
  readonly y: (v: number) => number
}

export interface FrameAsk {
  readonly z0: number
  readonly z1: number
  /** How far from the axis is drawn, mm. */
  readonly reach: number
  /** Room there is, px. */
  readonly width: number
  /** Left free around the drawing, px. */
  readonly margin: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number }
  /** The drawing is not made higher than this, px. */
  readonly tallest: number
  /** Nor smaller than this, px a millimetre: then it is wider than the room, and scrolls. */
  readonly leastScale: number
}

/** Left free around a lengthwise section: dimensions below and beside it, the ruler above, px. Strips share it. */
export const sheetMargin = { left: 58, right: 18, top: 38, bottom: 50 }

export function frameOf({ z0, z1, reach, width, margin, tallest, leastScale }: FrameAsk): Frame {
  const room = Math.max(1, width - margin.left - margin.right)
  const scale = Math.max(leastScale, Math.min(room / Math.max(1, z1 - z0), tallest / (2 * reach)))
  const height = margin.top + 2 * reach * scale + margin.bottom
  const middle = margin.top + reach * scale
  return {
    scale,
    width: margin.left + (z1 - z0) * scale + margin.right,
    height,
    x: (z) => margin.left + (z - z0) * scale,
    z: (x) => z0 + (x - margin.left) / scale,
    y: (v) => middle - v * scale,
  }
}

/** Points in millimetres as an SVG path. */
export function pathOf(points: readonly (readonly [number, number])[], frame: Frame, close = false): string {
  const text = points.map(([z, v], i) => `${i === 0 ? 'M' : 'L'}${round(frame.x(z))} ${round(frame.y(v))}`).join('')
  return close ? `${text}Z` : text
}

/** A tenth of a pixel is finer than any screen shows; the rest only makes the page heavy. */
export const round = (n: number): number => Math.round(n * 10) / 10
