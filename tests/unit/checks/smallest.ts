import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { perfect, sure } from './judged.ts'

/** A bore of 30 in a tube of 100, as measured to the last digit. */
export const bore = (extra: object = {}): NonNullable<ProjectInput['sections']>[number] => ({
  id: 'tube',
  length: sure(100),
  bore: [{ id: 'main', diameter: sure(30), ...extra }],
})

/** A sled of 20 from 10 to 60 in it, printed without error. */
export const job = (extra: Partial<ProjectInput>): ProjectInput => ({
  format: 'sledwright',
  version: 1,
  sections: [bore()],
  sleds: [{ id: 'main', from: 10, to: 60, diameter: sure(20) }],
  insertions: [{ id: 'in', moves: 'sleds/main', through: { of: 'sections/tube', end: 'rear' }, lateral: 'axis' }],
  printer: perfect,
  ...extra,
})

/** A pin through the wall at z 50, θ 0. */
export const pin = (shape: object): NonNullable<ProjectInput['features']>[number] => ({
  id: 'pin',
  kind: 'intrusion',
  on: 'sections/tube',
  at: { z: sure(50), theta: sure(0) },
  shape: { form: 'pin', diameter: sure(2), ...shape },
})
