import { describe, expect, it } from 'vitest'
import type { Fix } from '../../../src/checks/finding.ts'
import { fetchRare } from '../../../src/checks/rare.ts'
import { answer } from '../../../src/job/answer.ts'
import { provenFixes } from '../../../src/job/proven-fixes.ts'
import { quickProject } from '../../../src/job/quick.ts'
import type { Project } from '../../../src/project/schema/project.ts'
import { quickPresets } from '../presets/quick-presets.ts'

/** What helps where a lug sticks in to a radius, behind the cell of a sled about 16 mm in radius. */
async function windowFor(tip: number): Promise<Fix | undefined> {
  await fetchRare()
  const quick = quickProject({ bore: '33.2', depth: '148', cell: 'cell-18650-flat' }, 'in line')
  const project: Project = {
    ...quick,
    sleds: quick.sleds.map((s) => ({ ...s, to: 130 })),
    features: [
      {
        id: 'lug',
        kind: 'intrusion',
        on: 'sections/tube',
        at: { z: 110, theta: 0 },
        shape: { form: 'block', length: 12, width: 20, tip },
      },
    ],
  }
  const answerTo = (p: Project) => answer(p, quickPresets())
  const judged = answerTo(project)
  if (!judged.ok) throw new Error(JSON.stringify(judged.problems))
  const proven = provenFixes({ project, presets: quickPresets(), ...judged.value, answerTo })
  return [...proven.values()].flat().find((f) => f.path === 'sleds/sled/windows')
}

describe('a window that a fix cuts', () => {
  it('is said to go deep where it goes more than half way to the axis, also in the note after', async () => {
    const fix = await windowFor(4)
    const said =
      'It goes in to radius 4.00 mm or deeper, more than half way to the axis: look at what is left of the sled there.'
    expect(fix?.text).toContain(said)
    expect(fix?.spoils).toMatchObject({ text: expect.stringContaining(said) })
  })

  it('says nothing of that where it stays near the outside', async () => {
    const fix = await windowFor(14)
    expect(fix?.text).toMatch(/^Cut a window/)
    expect(fix?.text).not.toContain('axis')
    // However often it was taken farther.
    expect(fix?.text.match(/Widen its window/g)).toHaveLength(1)
  })
})
