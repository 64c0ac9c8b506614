import { describe, expect, it } from 'vitest'
import { answer } from '../../../src/job/answer.ts'
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

describe('a speaker from the list that nothing narrower helps', () => {
  it('names no other part', () => {
    const { fixes } = fixesFor({ ...tube, bore: { value: 19.4, plus: 0.05, minus: 0.05 }, speaker: 'speaker-28-thin' })
    const named = [...fixes.values()].flat().filter((f) => f.path === 'parts/speaker/preset' && f.value !== undefined)
    for (const fix of named) expect(fix.text).toMatch(/From the list: /)
    expect(fixes.size).toBeGreaterThan(0)
  })
})
