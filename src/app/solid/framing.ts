import type { Eye } from './eye.ts'
import type { Offset, Placed } from './placing.ts'

/** A block of room in the picture: along the hilt, up, to the eye. */
export interface Frame {
  readonly min: Offset
  readonly max: Offset
}

/** The room that everything takes up together. */
export function frameOf(all: readonly Placed[]): Frame {
  const of = (pick: (p: Placed) => Offset, best: (...n: number[]) => number): Offset => {
    const points = all.map(pick)
    return [0, 1, 2].map((k) => best(...points.map((p) => p[k as 0 | 1 | 2]))) as unknown as Offset
  }
  if (all.length === 0) return { min: [-50, -15, -15], max: [50, 15, 15] }
  return {
    min: of(({ room, offset: [a, u, o] }) => [room.z0 + a, u - room.r, o - room.r], Math.min),
    max: of(({ room, offset: [a, u, o] }) => [room.z1 + a, u + room.r, o + room.r], Math.max),
  }
}

/** Both together. */
export const joined = (a: Frame, b: Frame): Frame => ({
  min: a.min.map((v, k) => Math.min(v, b.min[k] as number)) as unknown as Offset,
  max: a.max.map((v, k) => Math.max(v, b.max[k] as number)) as unknown as Offset,
})

/** Where the eye looks from, along what it sees to the right and up: unit vectors. */
export function looking({ turn, rise }: Pick<Eye, 'turn' | 'rise'>): Record<'from' | 'right' | 'up', Offset> {
  const [t, r] = [(turn * Math.PI) / 180, (rise * Math.PI) / 180]
  return {
    from: [Math.sin(t) * Math.cos(r), Math.sin(r), Math.cos(t) * Math.cos(r)],
    right: [Math.cos(t), 0, -Math.sin(t)],
    up: [-Math.sin(t) * Math.sin(r), Math.cos(r), -Math.cos(t) * Math.sin(r)],
  }
}

/** How wide and how high a frame looks from there, mm. */
export function seenSize(
  frame: Frame,
  eye: Pick<Eye, 'turn' | 'rise'>,
): { readonly wide: number; readonly high: number } {
  const { right, up } = looking(eye)
  const along = (v: Offset) =>
    v.reduce((sum, x, k) => sum + Math.abs(x) * ((frame.max[k] ?? 0) - (frame.min[k] ?? 0)), 0)
  return { wide: along(right), high: along(up) }
}

export const middleOf = ({ min, max }: Frame): Offset =>
  min.map((v, k) => (v + (max[k] as number)) / 2) as unknown as Offset
