import { describe, expect, it } from 'vitest'
import { demos } from '../../../src/job/demos/index.ts'
import { readProject } from '../../../src/project/read.ts'
import { referrersOf } from '../../../src/project/referrers.ts'

const read = readProject(JSON.stringify(demos.find((d) => d.name === 'pier-lantern')?.project))
if (!read.ok) throw new Error('the demo reads')
const { project } = read.value

describe('what names a record', () => {
  it('a section: its joint, what sits on it, what goes in through it', () => {
    expect(referrersOf(project, 'sections/body')).toEqual(['joints/pommel-body', 'parts/switch', 'insertions/sled-in'])
    expect(referrersOf(project, 'sections/pommel')).toEqual(['joints/pommel-body'])
  })

  it('a part: what presses it, and the window of the sled alone', () => {
    expect(referrersOf(project, 'parts/cell')).toEqual(['parts/spring', 'parts/leaf'])
    expect(referrersOf(project, 'parts/switch')).toEqual(['sleds/main/windows/switch'])
  })

  it('a bore step by its own name, and a state by its place in a list', () => {
    const more = {
      ...project,
      features: [
        {
          id: 'pin',
          kind: 'intrusion' as const,
          on: 'sections/body',
          at: { z: { of: 'sections/body/neck', by: 2 } },
          shape: { form: 'pin' as const, diameter: 3 },
        },
      ],
      states: [{ id: 'closed', without: ['features/pin'] }],
    }
    expect(referrersOf(more, 'sections/body/neck')).toEqual(['features/pin'])
    expect(referrersOf(more, 'sections/body/main')).toEqual([])
    expect(referrersOf(more, 'features/pin')).toEqual(['states/closed/without/0'])
  })

  it('words that happen to read like an id name nothing', () => {
    const more = { ...project, hilts: [{ id: 'hilt', name: 'body', note: 'pommel' }] }
    expect(referrersOf(more, 'sections/pommel')).toEqual(['joints/pommel-body'])
  })
})
