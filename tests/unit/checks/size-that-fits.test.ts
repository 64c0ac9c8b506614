import { describe, expect, it } from 'vitest'
import type { Fix } from '../../../src/checks/finding.ts'
import { type QuickInput, quickCheck } from '../../../src/job/quick.ts'
import { quickPresets } from '../presets/quick-presets.ts'

const speaker = { diameter: '28', length: '5.4' }
const input: QuickInput = { bore: '27.2', depth: '148', cell: 'cell-18650-flat', speaker }

function fixesOf(given: QuickInput, start: string): readonly Fix[] {
  const checked = quickCheck(given, quickPresets())
  if (!checked.ok) throw new Error(JSON.stringify(checked.problems))
  const found = checked.value.answer.findings.find((f) => f.title.startsWith(start))
  if (!found) throw new Error(`nothing found: ${start}`)
  return found.fix
}
const sizes = (fixes: readonly Fix[]) => fixes.flatMap((f) => (f.value === undefined ? [] : [[f.path, f.value]]))

describe('a speaker too large for the sled that its bore allows', () => {
  // The sled comes out 26.4 wide. A wall of 1.2 and a gap of 0.275 on each side leave 23.45 for the largest speaker.
  it.each([
    ['sled cannot be built', 23.4],
    ['speaker inside the sled', 26.35],
    ['speaker in place', 26.7],
  ])('is told the largest that fits: %s', (start, value) => {
    expect(sizes(fixesOf(input, start))).toContainEqual(['parts/speaker/body/diameter', value])
  })

  it('is offered no wider sled: that is as wide as its way in allows', () => {
    const offered = ['sled cannot', 'speaker inside'].flatMap((start) => fixesOf(input, start))
    expect(offered.filter((f) => f.path === 'sleds/sled/diameter')).toEqual([])
  })

  it('is offered a wider one where its width was typed', () => {
    const typed = { ...input, bore: '33.2', sledDiameter: '27' }
    expect(sizes(fixesOf(typed, 'speaker inside'))).toContainEqual(['sleds/sled/diameter', 28.05])
    expect(sizes(fixesOf(typed, 'sled cannot'))).toContainEqual(['sleds/sled/diameter', 31])
  })

  it('is offered a number also where a wall is too thin for it', () => {
    const wide = { bore: '31', depth: '200', cell: { diameter: '25', length: '65' } }
    expect(sizes(fixesOf(wide, 'Thinnest')).map(([path]) => path)).toContain('parts/cell/body/diameter')
    expect(fixesOf(wide, 'Thinnest').filter((f) => /wider sled|apart/.test(f.text))).toEqual([])
  })

  it('is told once: what its nest lacks is no second finding about the wall beside it', () => {
    expect(() => fixesOf(input, 'Thinnest')).toThrow('nothing found')
  })

  it('is told so also where it is one of the list', () => {
    const texts = fixesOf({ ...input, speaker: 'speaker-28-thin' }, 'sled cannot').map((f) => f.text)
    expect(texts).toEqual(['Use another speaker: the largest that fits here is 23.25 mm in diameter.'])
  })

  it('and so is a cell', () => {
    const texts = fixesOf({ bore: '18.5', depth: '148', cell: 'cell-18650-flat' }, 'sled cannot').map((f) => f.text)
    expect(texts).toEqual([
      expect.stringMatching(/^Use another cell: the largest that fits here is 1\d\.\d\d mm in diameter\.$/),
    ])
  })
})
