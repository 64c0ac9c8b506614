import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { sure } from './judged.ts'
import { job } from './smallest.ts'

/** Parts, places and moves for the smallest projects. */

export const box = (w: number, h: number, l = 10) => ({
  shape: 'box',
  width: sure(w),
  height: sure(h),
  length: sure(l),
})
export const rod = (d: number, l = 10) => ({ shape: 'cylinder', diameter: sure(d), length: sure(l) })
export const part = (id: string, body: object, at: object, more: object = {}) => ({
  id,
  kind: 'other',
  body,
  at,
  ...more,
})
export const inWall = { on: 'sections/tube' }
export const xy = (x: number, y: number) => ({ x: sure(x), y: sure(y) })
export const made = (extra: object): ProjectInput => job(extra as Partial<ProjectInput>)
export const sled = (more: object = {}) => [{ id: 'main', from: 10, to: 60, diameter: sure(20), ...more }]
export const moves = (lateral: string) => [
  { id: 'in', moves: 'sleds/main', through: { of: 'sections/tube', end: 'rear' }, lateral },
]
