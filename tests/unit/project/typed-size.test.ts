import { describe, expect, it } from 'vitest'
import { assumed, fromReadings, readingsOf, retyped, textOf } from '../../../src/project/typed-size.ts'

describe('a dimension in its field', () => {
  it.each([
    [undefined, ''],
    [22.05, '22.05'],
    ['1 1/2"', '1 1/2"'],
    [{ value: 44.9, tool: 'calliper-depth' }, '44.9'],
    [{ value: 3.1, plus: 0.1, minus: 0.1 }, '3.1 ±0.1'],
    [{ value: 3.1, plus: 0.1 }, '3.1 ±0.1'],
    [{ value: 3.1, plus: 0.1, minus: 0 }, '3.1 +0.1 -0'],
    [{ value: 133.35, text: '5 1/4 in' }, '5 1/4 in'],
    [{ min: 18.2, max: 18.6 }, '18.2..18.6'],
    [{ readings: [{ value: '30,02' }] }, '30,02'],
    [{ readings: [{ value: 30 }, { value: 30.1 }] }, ''],
  ])('%j reads %s', (input, text) => {
    expect(textOf(input)).toBe(text)
  })

  it('keeps what is typed as it is typed', () => {
    expect(retyped(22.05, '1 1/')).toBe('1 1/')
    expect(retyped({ value: 3.1, plus: 0.1 }, '3.2')).toBe('3.2')
    expect(retyped({ min: 1, max: 2 }, '1..3')).toBe('1..3')
  })

  it('keeps the tool while another value is typed, until a spread says more than the tool', () => {
    const half = retyped({ value: 44.9, tool: 'calliper-depth' }, '1 3/')
    expect(half).toEqual({ readings: [{ value: '1 3/' }], tool: 'calliper-depth' })
    const whole = retyped(half, '1 3/4"')
    expect(whole).toEqual({ readings: [{ value: '1 3/4"' }], tool: 'calliper-depth' })
    expect(textOf(whole)).toBe('1 3/4"')
    expect(retyped(whole, '44.9 ±0.2')).toBe('44.9 ±0.2')
  })

  it('keeps place and jaw flat of the one reading', () => {
    const input = { readings: [{ value: 30, z: 12, theta: 60 }], jawFlat: 0.4 }
    expect(retyped(input, '30.1')).toEqual({ readings: [{ value: '30.1', z: 12, theta: 60 }], jawFlat: 0.4 })
  })

  it('an assumed value stays assumed, even by way of what is no number', () => {
    const half = retyped(assumed('22'), '2')
    expect(half).toEqual({ value: 2, text: '2', source: 'assumed' })
    const none = retyped(half, '')
    expect(none).toMatchObject({ source: 'assumed' })
    expect(textOf(none)).toBe('')
    expect(retyped(none, '23 ±0.5')).toEqual({ value: 23, plus: 0.5, minus: 0.5, text: '23 ±0.5', source: 'assumed' })
    expect(assumed('45°', 'angle')).toMatchObject({ value: 45, text: '45°' })
  })

  it('readings come from what was typed, and one plain reading goes back to its text', () => {
    expect(readingsOf('30,02')).toEqual([{ value: '30,02' }])
    expect(readingsOf(undefined)).toEqual([])
    expect(readingsOf({ min: 1, max: 2 })).toEqual([{ value: '1..2' }])
    expect(fromReadings([{ value: '30,02' }])).toBe('30,02')
    expect(fromReadings([])).toBe('')
    expect(fromReadings([{ value: '30', theta: 0 }])).toEqual({ readings: [{ value: '30', theta: 0 }] })
    expect(fromReadings([{ value: 30 }], 'telescoping-gauge')).toEqual({
      readings: [{ value: 30 }],
      tool: 'telescoping-gauge',
    })
  })
})
