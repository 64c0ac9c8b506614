import { describe, expect, it } from 'vitest'
import { fieldOf, ownSizes, withFix } from '../../../src/app/quick/field-paths.ts'
import { placeName } from '../../../src/app/quick/place-name.ts'
import { emptyForm, exampleForm, isEmpty, type QuickForm } from '../../../src/app/quick/quick-form.ts'
import { readForm } from '../../../src/app/quick/read-form.ts'
import { quickCheck } from '../../../src/job/quick.ts'
import { quickPresets } from '../presets/quick-presets.ts'

describe('reading the form', () => {
  it('says what an empty one lacks, in the words of its labels', () => {
    expect(isEmpty(emptyForm)).toBe(true)
    expect(readForm(emptyForm)).toEqual({ kind: 'lacking', lacks: ['bore', 'depth', 'cell'], unread: [] })
  })

  it('tells a text that is no size from one that is not there', () => {
    expect(readForm({ ...exampleForm, bore: 'abc', depth: ' ', thread: 'G1/2' })).toEqual({
      kind: 'lacking',
      lacks: ['depth'],
      unread: ['bore', 'thread at the mouth'],
    })
  })

  it('hands texts on as typed', () => {
    expect(readForm({ ...exampleForm, bore: ' 1 5/16" ' })).toMatchObject({ input: { bore: ' 1 5/16" ' } })
  })

  it('asks for own sizes where they were chosen', () => {
    const board = { choice: 'own', width: '18', height: '', length: '42' }
    expect(readForm({ ...exampleForm, board })).toEqual({ kind: 'lacking', lacks: ['height of the board'], unread: [] })
  })

  it('asks how long a thread is', () => {
    expect(readForm({ ...exampleForm, threadLength: '' })).toMatchObject({ lacks: ['length of the thread'] })
  })

  it('leaves the length of a thread out where there is no thread', () => {
    const reading = readForm({ ...exampleForm, thread: '', threadLength: '9' })
    expect(reading.kind === 'ready' && 'threadLength' in reading.input).toBe(false)
  })
})

describe('the example', () => {
  it('is complete and clear', () => {
    const reading = readForm(exampleForm)
    if (reading.kind !== 'ready') throw new Error(reading.lacks.join())
    expect(quickCheck(reading.input, quickPresets())).toMatchObject({ value: { answer: { verdict: 'clear' } } })
  })
})

describe('paths and fields', () => {
  it.each([
    ['sections/tube/bore/bore/diameter/readings/0/value', 'bore'],
    ['sections/tube/bore/mouth/thread', 'thread'],
    ['sections/tube/bore/mouth/length', 'threadLength'],
    ['sections/tube/length', 'depth'],
    ['parts/cell/preset/diameter', 'cell'],
    ['parts/speaker/body/diameter', 'speaker.diameter'],
    ['sleds/sled/diameter', 'sledDiameter'],
    ['printer/error', undefined],
    ['parts/cellar', undefined],
  ])('%s belongs to %s', (path, field) => expect(fieldOf(path)).toBe(field))

  it('applies the numbers of fixes to the fields they are about, and to no others', () => {
    const speaker: QuickForm['speaker'] = { choice: 'speaker-28-thin', diameter: '', length: '' }
    const form = { ...exampleForm, speaker }
    expect(withFix(form, 'sleds/sled/diameter', 31.75)?.sledDiameter).toBe('31.75')
    expect(withFix(form, 'parts/speaker/body/diameter', 26.7)).toEqual({
      ...form,
      speaker: { choice: 'own', diameter: '26.7', length: '4.5..6' },
    })
    expect(withFix(form, 'sleds/sled/nests/parts/cell/gap', 0.4)).toBeUndefined()
    expect(readForm(withFix(form, 'parts/speaker/body/diameter', 26.7) as QuickForm).kind).toBe('ready')
    expect(withFix(form, 'parts/speaker/preset', 'speaker-24')?.speaker.choice).toBe('speaker-24')
    expect(withFix(form, 'parts/board/preset', 'board-sound-small')).toBeUndefined()
  })

  it('writes the sizes of a preset out as one would type them', () => {
    const form = { ...exampleForm, cell: { choice: 'cell-18650-flat', diameter: '', length: '' } }
    expect(ownSizes(form, 'cell')).toEqual({ choice: 'own', diameter: '18.2..18.6', length: '64.5..65.5' })
  })

  it.each([
    ['printer/error', 'print error'],
    ['sections/tube/bore/bore/diameter', 'bore'],
    ['sections/tube/bore/bore/diameter/ovality', 'roundness of the bore'],
    ['parts/board/preset/components/0/height', 'height of what stands on the board'],
    ['parts/speaker/body/diameter', 'diameter of the speaker'],
    ['parts/speaker/preset/length', 'length of the speaker'],
    ['parts/board/preset/outline', 'outline of the board'],
    ['wires/wires/preset', 'wires'],
    ['sections/tube/length', 'depth'],
    ['parts/rear-contact/solid', 'fully pressed length of the rear contact'],
  ])('%s is called "%s"', (path, name) => expect(placeName(path)).toBe(name))
})
