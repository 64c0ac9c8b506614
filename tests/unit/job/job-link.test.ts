import zlib from 'node:zlib'
import fc from 'fast-check'
import { deflateSync, strToU8 } from 'fflate'
import { describe, expect, it } from 'vitest'
import { demos } from '../../../src/job/demos/index.ts'
import { mostLinkCharacters, packed, unpacked } from '../../../src/job/job-link.ts'

const text = JSON.stringify(demos[0]?.project)
const codeOf = (data: string): string | undefined => {
  const found = unpacked(data)
  return found.ok ? undefined : found.problems[0]?.code
}
const base64url = (bytes: Uint8Array) => Buffer.from(bytes).toString('base64url')

describe('a job as a link', () => {
  it('comes back letter for letter, with only letters a link may hold', () => {
    const link = packed(text)
    expect(unpacked(link)).toEqual({ ok: true, value: text })
    expect(link).toMatch(/^1[A-Za-z0-9_-]+$/)
    expect(link.length).toBeLessThan(text.length)
  })

  it('comes back whatever the text (seed 20261125)', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 400 }), (s) => {
        expect(unpacked(packed(s))).toEqual({ ok: true, value: s })
      }),
      { seed: 20261125, numRuns: 200 },
    )
  })

  it('carries the check sum that ends a stream of RFC 1950, here from another library', () => {
    const bytes = Buffer.from(packed(text).slice(1), 'base64url')
    expect(bytes.subarray(0, 4)).toEqual(zlib.deflateSync(text).subarray(-4))
  })

  it('is the same each time', () => {
    expect(packed(text)).toBe(packed(text))
  })
})

describe('a link that came to harm', () => {
  const link = packed(text)

  it('is refused wherever it was cut off', () => {
    const lengths = Array.from({ length: Math.floor(link.length / 7) }, (_, i) => 7 * i)
    const read = [...lengths, link.length - 1].filter((n) => codeOf(link.slice(0, n)) !== 'not-this-format')
    expect(read).toEqual([])
  })

  it('is refused with any one letter wrong', () => {
    // The last letter holds spare bits that say nothing.
    const places = Array.from({ length: Math.floor((link.length - 2) / 5) }, (_, i) => 1 + 5 * i)
    const read = places.filter((i) => {
      const wrong = link.charAt(i) === 'A' ? 'B' : 'A'
      return unpacked(link.slice(0, i) + wrong + link.slice(i + 1)).ok
    })
    expect(read).toEqual([])
  })

  it.each([
    ['nothing', ''],
    ['only its kind', '1'],
    ['letters no link holds', '1<script>alert(1)</script>'],
    ['a space in it', `${link.slice(0, 40)} ${link.slice(40)}`],
    ['a check sum and nothing else', '1AAAAAA'],
    ['a sum that is not the text’s', `1${base64url(Uint8Array.of(1, 2, 3, 4, ...deflateSync(strToU8('{}'))))}`],
    ['one of base64 that ends in the middle', `${link.slice(0, 1)}A`],
  ])('%s', (_what, data) => {
    expect(codeOf(data)).toBe('not-this-format')
  })

  it('of another kind is said to be of a newer release', () => {
    expect(codeOf(`2${link.slice(1)}`)).toBe('newer-version')
  })

  it('that is longer than any link is not looked at', () => {
    expect(codeOf(`1${'A'.repeat(mostLinkCharacters)}`)).toBe('too-large')
  })

  it('that swells to 40 MB is stopped at 4', () => {
    const swollen = deflateSync(new Uint8Array(40_000_000), { level: 9 })
    const data = `1${base64url(Uint8Array.of(0, 0, 0, 0, ...swollen))}`
    expect(data.length).toBeLessThan(mostLinkCharacters)
    expect(codeOf(data)).toBe('too-large')
  })

  it('says what to do, and never more than a short piece of what it got (seed 7)', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 300 }), (s) => {
        const found = unpacked(s)
        if (found.ok) return
        expect(found.problems[0]?.hint).not.toBe('')
        expect(found.problems[0]?.got.length).toBeLessThanOrEqual(60)
      }),
      { seed: 7, numRuns: 300 },
    )
  })
})
