import { describe, expect, it } from 'vitest'
import { draftOf, emptyRow, faultOf, inputOf, sameInput, withRows } from '../../../src/app/readings/draft.ts'

const row = (value: string, theta = '', z = '') => ({ z, theta, value })

describe('the sheet of readings', () => {
  it('starts from what the job has, with one empty line at least', () => {
    expect(draftOf(undefined).rows).toEqual([emptyRow])
    expect(draftOf({ value: 44.9, tool: 'calliper-depth' })).toMatchObject({
      rows: [row('44.9')],
      tool: 'calliper-depth',
    })
    expect(draftOf({ readings: [{ value: '30,02', theta: 60 }], jawFlat: 0.4 })).toMatchObject({
      rows: [row('30,02', '60')],
      flat: '0.4',
    })
  })

  it('goes back into the job as typed; a line without a reading says nothing', () => {
    const draft = {
      ...draftOf(undefined),
      rows: [row('30,02', '60°', '1in'), row('', '120'), row('30', 'so')],
      flat: '0,4',
    }
    expect(inputOf(draft)).toEqual({
      readings: [{ value: '30,02', z: 25.4, theta: 60 }, { value: '30' }],
      jawFlat: 0.4,
    })
    expect(inputOf({ ...draft, rows: [row('30')], flat: '' })).toBe('30')
    expect(inputOf({ ...draft, rows: [row('30 ±0.2')], assumed: true })).toMatchObject({ source: 'assumed', plus: 0.2 })
  })

  it('reads what it wrote as the same', () => {
    const draft = { ...draftOf('30'), rows: [row('30', '0'), row('30.1', '60')], tool: 'telescoping-gauge' }
    expect(sameInput(inputOf(draftOf(inputOf(draft))), inputOf(draft))).toBe(true)
    expect(sameInput(undefined, '')).toBe(true)
    expect(sameInput('30', '30.0')).toBe(false)
  })

  it('lines that are pasted take the place of an empty one, and else follow', () => {
    const draft = { ...draftOf('30'), rows: [row('30'), emptyRow] }
    expect(withRows(draft, 1, [row('31'), row('32')]).rows.map((r) => r.value)).toEqual(['30', '31', '32'])
    expect(withRows(draft, 0, [row('31')]).rows.map((r) => r.value)).toEqual(['30', '31', ''])
  })

  it('a cell is wrong by itself where it is no number, or a reading among others has a spread', () => {
    expect(faultOf(row('wide'), 'value', true, 'p')?.path).toBe('p')
    expect(faultOf(row('30', 'so'), 'theta', true, 'p')?.code).toBe('not-a-number')
    expect(faultOf(row('30 ±0.1'), 'value', true, 'p')).toBeUndefined()
    expect(faultOf(row('30 ±0.1'), 'value', false, 'p')?.code).toBe('contradiction')
    expect(faultOf(emptyRow, 'value', true, 'p')).toBeUndefined()
  })
})
