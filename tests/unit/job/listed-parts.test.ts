import { describe, expect, it } from 'vitest'
import { answer } from '../../../src/job/answer.ts'
import { listedParts } from '../../../src/job/listed-parts.ts'
import { provenFixes } from '../../../src/job/proven-fixes.ts'
import { type QuickInput, quickCheck } from '../../../src/job/quick.ts'
import { applyFix } from '../../../src/project/apply-fix.ts'
import { quickPresets } from '../presets/quick-presets.ts'

const presets = quickPresets()

function fixesFor(input: QuickInput) {
  const quick = quickCheck(input, presets)
  if (!quick.ok) throw new Error(JSON.stringify(quick.problems))
  const { project, answer: judged } = quick.value
  const answerTo = (p: typeof project) => answer(p, presets)
  return { project, judged, fixes: provenFixes({ project, presets, ...judged, answerTo }) }
}

const bore = { value: 30.05, plus: 0.05, minus: 0.05 }
const tube = { bore, depth: 250, cell: 'cell-18650-protected' }

describe('a speaker from the list that is too wide', () => {
  const { project, judged, fixes } = fixesFor({ ...tube, speaker: 'speaker-28-thin' })

  it('is refused in the words of what it lacks: diameters, the part, and where it stands', () => {
    const refused = judged.findings.find((f) => f.check === 'buildable')
    expect(refused?.title).toBe('sled cannot be built: no room in it for speaker')
    expect(refused?.why).toMatch(/mm across\. It is no wider because of bore, in place/)
    expect(refused?.parts).toContain('parts/speaker')
    expect(refused?.at?.z).toBeGreaterThan(0)
  })

  it('is offered the widest of the list that works, and it works', () => {
    const refused = judged.findings.find((f) => f.check === 'buildable')
    const [first] = fixes.get(refused?.id ?? '') ?? []
    expect([first?.path, first?.value]).toEqual(['parts/speaker/preset', 'speaker-24'])
    const next = first && applyFix(project, first)
    const after = next && answer(next, presets)
    expect(after?.ok && after.value.findings.filter((f) => f.status === 'clash')).toEqual([])
  })
})

describe('what the list holds instead of a part', () => {
  const { project } = fixesFor({ ...tube, speaker: 'speaker-28-thin' })
  const told = { text: 'Use another speaker.', path: 'parts/speaker/preset' }

  it('is all that is narrower, the widest first', () => {
    // Most over the frame: 28.2 for the one in hand; 24.2, 23.2, 20.2 and 15.2 of those below it (presets/speakers.json).
    const ids = listedParts(project, presets, told).map((f) => f.value)
    expect(ids).toEqual(['speaker-24', 'speaker-23', 'speaker-20', 'speaker-15'])
  })

  it('is nothing for what is no choice from the list', () => {
    expect(listedParts(project, presets, { ...told, path: 'parts/speaker/body/diameter' })).toEqual([])
    expect(listedParts(project, presets, { ...told, value: 'speaker-15' })).toEqual([])
  })
})

describe('a speaker and a cell from the list that are the narrowest, or that nothing narrower helps', () => {
  it('name no other part, and the size that would fit is told all the same', () => {
    const { fixes } = fixesFor({ ...tube, bore: { value: 14, plus: 0.05, minus: 0.05 }, speaker: 'speaker-28-thin' })
    const all = [...fixes.values()].flat()
    expect(all.filter((f) => /^parts\/\w+\/preset$/.test(f.path) && f.value !== undefined)).toEqual([])
    expect(all.map((f) => f.text)).toContainEqual(expect.stringMatching(/^Use another speaker: the largest that fits/))
  })
})
