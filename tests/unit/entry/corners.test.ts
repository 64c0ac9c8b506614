import { describe, expect, it } from 'vitest'
import { cornersText, parseCorners, rectangle } from '../../../src/entry/corners.ts'

describe('the outline of a board as typed', () => {
  it('is a plain board by its length and width', () => {
    for (const text of ['42 x 18', '42×18', ' 42 X 18 '])
      expect(parseCorners(text)).toEqual({ ok: true, value: rectangle(42, 18) })
    expect(parseCorners('1in x 0,5in')).toEqual({ ok: true, value: rectangle(25.4, 12.7) })
  })

  it('is its corners, z and x', () => {
    expect(parseCorners('0 -9; 40 -9; 42 0; 40 9; 0 9')).toMatchObject({
      ok: true,
      value: [
        [0, -9],
        [40, -9],
        [42, 0],
        [40, 9],
        [0, 9],
      ],
    })
  })

  it('comes back as it would be typed', () => {
    for (const text of ['42 x 18', '0 -9; 40 -9; 42 0; 40 9; 0 9']) {
      const read = parseCorners(text)
      expect(read.ok && cornersText(read.value)).toBe(text)
    }
  })

  it('says what is wrong with a text that is none', () => {
    for (const [text, hint] of [
      ['', 'An outline has at least three corners.'],
      ['0 0; 1 1', 'An outline has at least three corners.'],
      ['0 0; 1 1; 2', 'Give each corner as two numbers: z x.'],
      ['0 x 18', 'Give length and width, both above 0: 42 x 18.'],
    ] as const) {
      const read = parseCorners(text, 'parts/board/body/outline')
      expect(read).toMatchObject({ ok: false, problems: [{ path: 'parts/board/body/outline', hint }] })
    }
  })
})
