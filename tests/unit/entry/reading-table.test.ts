import { describe, expect, it } from 'vitest'
import { parseReadings, readingsText } from '../../../src/entry/reading-table.ts'

const rows = (text: string) => parseReadings(text).rows.map(({ z, theta, value }) => [z, theta, value])
const lines = (text: string) => parseReadings(text).problems.map((p) => p.path)
const none = undefined

describe('readings from a pasted text', () => {
  it('a column of plain numbers is a column of readings', () => {
    expect(rows('30.02\n29.98\n30.01')).toEqual([
      [none, none, '30.02'],
      [none, none, '29.98'],
      [none, none, '30.01'],
    ])
  })

  it('a comma alone in each line is the decimal sign', () => {
    expect(rows('30,02\r\n29,98\r\n30,1\r\n')).toEqual([
      [none, none, '30,02'],
      [none, none, '29,98'],
      [none, none, '30,1'],
    ])
  })

  it('two columns are angle and reading, three have the depth first', () => {
    expect(rows('0\t30.02\n60\t29.98')).toEqual([
      [none, 0, '30.02'],
      [none, 60, '29.98'],
    ])
    expect(rows('12.5,0,30.02\n12.5,60,29.98')).toEqual([
      [12.5, 0, '30.02'],
      [12.5, 60, '29.98'],
    ])
    expect(rows('0 30,02\n60° 29,98')).toEqual([
      [none, 0, '30,02'],
      [none, 60, '29,98'],
    ])
  })

  it('semicolons leave the comma to the numbers, and cells may be empty', () => {
    expect(rows('12,5;0;30,02\n;60;29,98\n;;30,01')).toEqual([
      [12.5, 0, '30,02'],
      [none, 60, '29,98'],
      [none, none, '30,01'],
    ])
  })

  it('a head names the columns in any order, with their unit', () => {
    expect(rows('Angle,Diameter (in),Depth\n60,1.182,40')).toEqual([[40, 60, '1.182 in']])
    expect(rows('no;depth [mm];angle;reading\n1;40;0;30.02')).toEqual([[40, 0, '30.02']])
    expect(rows('diameter\n30.02')).toEqual([[none, none, '30.02']])
  })

  it('fractions and units stay as typed, also in quotation marks', () => {
    expect(rows('1 1/2"\n1 1/4 in')).toEqual([
      [none, none, '1 1/2"'],
      [none, none, '1 1/4 in'],
    ])
    expect(rows('depth,angle,diameter\n10,0,"1 1/2"""\n10,60,1.5"')).toEqual([
      [10, 0, '1 1/2"'],
      [10, 60, '1.5"'],
    ])
  })

  it('like sizes in one line are repeats, unlike ones a place and a reading', () => {
    expect(rows('30.02 29.98 30.01')).toHaveLength(3)
    expect(rows('30,02; 29,98; 30,01; 30,00')).toHaveLength(4)
    expect(rows('30,02 29,98 30,01')).toHaveLength(3)
    expect(rows('0 60 30,02\n0 120 29,98')).toEqual([
      [0, 60, '30,02'],
      [0, 120, '29,98'],
    ])
    expect(rows('40;60;30.02')).toEqual([[40, 60, '30.02']])
  })

  it('tells of what it cannot read by its line, and takes the others', () => {
    const text = 'depth,angle,diameter\n10,0,30.02\nsee the note\n10,sixty,29.98\n\n10,120,30.01\n10,180,-3'
    expect(lines(text)).toEqual(['line/3', 'line/4', 'line/7'])
    expect(rows(text)).toEqual([
      [10, 0, '30.02'],
      [10, 120, '30.01'],
    ])
  })

  it('asks for semicolons where decimal commas make too many columns', () => {
    const { rows: taken, problems } = parseReadings('10,5,0,30,02\n10,5,60,29,98')
    expect(taken).toEqual([])
    expect(problems.map((p) => p.hint)).toEqual(Array(2).fill(expect.stringContaining('semicolons')))
  })

  it('an empty text has no readings, a flood of them an end', () => {
    expect(parseReadings(' \n# a remark\n')).toEqual({ rows: [], problems: [] })
    expect(parseReadings('30.02\n'.repeat(600)).rows).toHaveLength(500)
    expect(lines('30.02\n'.repeat(600))).toEqual(['line/501'])
    expect(lines('30.02\n'.repeat(60_000))).toEqual(['line/1'])
  })

  it('what it writes it reads again', () => {
    const table = [
      { z: 12.5, theta: 0, value: '30,02' },
      { z: undefined, theta: 60, value: '1 1/2"' },
      { z: undefined, theta: undefined, value: '29.98' },
    ]
    const text = readingsText(table)
    expect(text).toBe('depth,angle,diameter\r\n12.5,0,30.02\r\n,60,"1 1/2"""\r\n,,29.98\r\n')
    expect(parseReadings(text).problems).toEqual([])
    expect(rows(text)).toEqual([
      [12.5, 0, '30.02'],
      [none, 60, '1 1/2"'],
      [none, none, '29.98'],
    ])
  })
})
