import { deflateSync, Inflate, strFromU8, strToU8 } from 'fflate'
import { bad, good, type Outcome, problem } from '../problem/problem.ts'

/** What a link of this kind begins with; another kind of packing would get another. */
const kind = '1'
/** Longest link read, in characters: far above what any browser or message carries whole. */
export const mostLinkCharacters = 500_000
/** Largest text that may come out of one, in bytes: a link can swell a thousandfold. */
const mostBytes = 4_000_000
/** So much is unpacked at a time before the size is looked at again, bytes of the link. */
const portion = 1024

const hint = 'Copy the whole link once more where it was made, or ask for the job as a file.'

/**
 * The text of a job as the end of a link: its check sum (Adler-32, RFC 1950) and the text packed (RFC 1951), in the
 * letters that a link may hold (base64url, RFC 4648). One wrong letter would else be another number.
 */
export function packed(text: string): string {
  const plain = strToU8(text)
  const bytes = joined([sumBytes(plain), deflateSync(plain, { level: 9 })])
  let letters = ''
  for (let i = 0; i < bytes.length; i += 0x8000) letters += String.fromCharCode(...bytes.subarray(i, i + 0x8000))
  return kind + btoa(letters).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')
}

/** The text again. Whatever stands there, it ends quickly: a link comes from anybody. */
export function unpacked(data: string): Outcome<string> {
  if (data.length > mostLinkCharacters)
    return bad(problem('too-large', '', `a link of ${data.length} characters`, `at most ${mostLinkCharacters}`, hint))
  if (/^[A-Za-z0-9]/.test(data) && !data.startsWith(kind))
    return bad(
      problem(
        'newer-version',
        '',
        `a link of kind ${data.charAt(0)}`,
        `kind ${kind}`,
        'It was made by a newer release, or it is not whole. Open it there, or update.',
      ),
    )
  const bytes = bytesOf(data.slice(1))
  if (!bytes || bytes.length <= sumLength)
    return bad(problem('not-this-format', '', data, 'a link made by "Copy a link to this job"', hint))
  const plain = inflated(bytes.subarray(sumLength))
  if (plain === 'swollen')
    return bad(problem('too-large', '', `more than ${mostBytes} bytes`, `at most ${mostBytes}`, 'No job is so large.'))
  if (plain === 'broken' || sumBytes(plain).some((b, i) => b !== bytes[i]))
    return bad(problem('not-this-format', '', 'a link that is not whole', 'the whole link', hint))
  return good(strFromU8(plain))
}

function inflated(bytes: Uint8Array): Uint8Array | 'swollen' | 'broken' {
  const pieces: Uint8Array[] = []
  let size = 0
  let ended = false
  const inflate = new Inflate((piece, final) => {
    pieces.push(piece)
    size += piece.length
    ended = final
  })
  try {
    for (let i = 0; i < bytes.length && size <= mostBytes; i += portion)
      inflate.push(bytes.subarray(i, i + portion), i + portion >= bytes.length)
  } catch {
    return 'broken'
  }
  return size > mostBytes ? 'swollen' : ended ? joined(pieces) : 'broken'
}

const sumLength = 4

/** Adler-32: two sums modulo the largest prime below 2¹⁶, the higher first. */
function sumBytes(bytes: Uint8Array): Uint8Array {
  let a = 1
  let b = 0
  for (const byte of bytes) {
    a = (a + byte) % 65521
    b = (b + a) % 65521
  }
  return Uint8Array.of(b >> 8, b & 255, a >> 8, a & 255)
}

function bytesOf(letters: string): Uint8Array | undefined {
  if (!/^[A-Za-z0-9_-]*$/.test(letters)) return undefined
  try {
    return Uint8Array.from(atob(letters.replaceAll('-', '+').replaceAll('_', '/')), (c) => c.charCodeAt(0))
  } catch {
    return undefined
  }
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(pieces.reduce((n, p) => n + p.length, 0))
  let at = 0
  for (const piece of pieces) {
    all.set(piece, at)
    at += piece.length
  }
  return all
}
