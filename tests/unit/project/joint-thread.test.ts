import { describe, expect, it } from 'vitest'
import { boreThreadOf } from '../../../src/project/joint-thread.ts'
import { demo, projectOf } from '../job/demo-answer.ts'

const pier = projectOf(demo('pier-lantern'))
const [joint] = pier.joints
if (!joint) throw new Error('no joint')

describe('the thread of a joint', () => {
  it('is the one that the bore says where the two sections meet', () => {
    expect(boreThreadOf(pier, joint)).toEqual({ thread: 'M32x1', step: 'sections/body/mouth' })
  })

  it('may be cut into the blade end of the rear section', () => {
    const turned = { ...joint, rear: 'tube', blade: 'cap' }
    const sections = [
      { id: 'tube', length: 90, bore: [{ id: 'main' }, { thread: 'M30x1' }] },
      { id: 'cap', length: 20, bore: [{ id: 'hollow' }] },
    ]
    expect(boreThreadOf({ sections }, turned)).toEqual({ thread: 'M30x1', step: 'sections/tube/1' })
  })

  it('is not a thread elsewhere in the bore', () => {
    const sections = pier.sections.map((s) => ({ ...s, bore: [{ id: 'neck' }, ...s.bore, { id: 'end' }] }))
    expect(boreThreadOf({ sections }, joint)).toBeUndefined()
  })
})
