/** A point or direction in the frame of the hilt, mm. */
export interface V3 {
  readonly x: number
  readonly y: number
  readonly z: number
}

export const v3 = (x: number, y: number, z: number): V3 => ({ x, y, z })
export const minus = (a: V3, b: V3): V3 => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z })
export const plus = (a: V3, b: V3): V3 => ({ x: a.x + b.x, y: a.y + b.y, z: a.z + b.z })
export const times = (a: V3, k: number): V3 => ({ x: a.x * k, y: a.y * k, z: a.z * k })
export const dot = (a: V3, b: V3): number => a.x * b.x + a.y * b.y + a.z * b.z
export const cross = (a: V3, b: V3): V3 => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
})

/** A point of the cross-section. */
export interface V2 {
  readonly x: number
  readonly y: number
}

/** At radius r and clock angle θ (degrees). */
export const atClock = (r: number, theta: number): V2 => ({
  x: r * Math.cos((theta * Math.PI) / 180),
  y: r * Math.sin((theta * Math.PI) / 180),
})
