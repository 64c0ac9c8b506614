import type { ProjectInput } from '../../../src/project/schema/project.ts'

/** Small invented projects, one for each verdict. */

const readings = [30.01, 30.0, 30.02].map((value, i) => ({ value, theta: 60 * i }))

const tube = (diameter: object | undefined, mouth = {}): ProjectInput => ({
  format: 'sledwright',
  version: 1,
  job: [{ id: 'skiff', name: 'Skiff lantern', invented: true }],
  hilts: [{ id: 'hilt', name: 'Skiff lantern' }],
  sections: [
    {
      id: 'body',
      name: 'body',
      length: 150,
      outside: [{ diameter: 36 }],
      bore: [
        { id: 'mouth', name: 'mouth', length: 10, diameter: { value: 30.4, plus: 0.05, minus: 0.05 }, ...mouth },
        { id: 'main', name: 'main bore', ...(diameter ? { diameter } : {}) } as never,
      ],
    },
  ],
  sleds: [{ id: 'main', name: 'sled', from: 20, to: 100, diameter: 29 }],
  insertions: [
    { id: 'in', name: 'sled in', moves: 'sleds/main', through: { of: 'sections/body', end: 'rear' }, lateral: 'axis' },
  ],
  parts: [{ id: 'cell', name: '18650 cell', kind: 'cell', preset: 'cell-18650-flat', at: { z: 25 } }],
})

/** Everything goes in. */
export const clear = tube({ readings, tool: 'calliper-inside', jawFlat: 0.4 })
/** The main bore was never read. */
export const unsure = tube(undefined)
/** The mouth is narrower than the sled. */
export const clash = tube({ readings, tool: 'calliper-inside' }, { diameter: { value: 28, plus: 0.05, minus: 0.05 } })
