import { turnBetween } from '../../geometry/region/point.ts'
import type { Part, Sled, SledPiece } from '../resolve/assembly.ts'
import type { Fix, Where } from './finding.ts'
import { smaller } from './fix-size.ts'
import { downTo, upTo } from './fix-value.ts'
import { mm } from './words.ts'

/** What of a sled's outside is met at a place: how far out it stands, and where another size for it is typed. */
interface Edge {
  readonly radius: number
  readonly path: string
  /** What to type there for a radius. */
  readonly typed: (radius: number) => number
  readonly text: (value: number) => string
}

/** Narrower by what lacks at a place; nothing where no one number makes it so. */
export function narrower(sled: Sled, at: Where, lack: number): Fix[] {
  const edge = edgeAt(sled, at)
  return edge ? told(edge, downTo(edge.typed(edge.radius - lack))) : []
}

/**
 * The body or ring there made as wide as this radius, so that it holds what is in it. One whose width is not typed is
 * as wide already as its way in allows.
 */
export function wider(sled: Sled, z: number, radius: number): Fix[] {
  const edge = pieceAt(sled, z)?.how === 'default' ? undefined : roundAt(sled, z)
  return edge ? told(edge, upTo(edge.typed(radius))) : []
}

/** A nest with more wall beside it: the sled there wider by what lacks on its radius, or the part in it smaller. */
export function roomFor(sled: Sled, part: Part, lack: number): Fix[] {
  const z = (part.ends.rear.nominal + part.ends.blade.nominal) / 2
  const edge = roundAt(sled, z)
  return [...(edge ? wider(sled, z, edge.radius + lack) : []), ...smaller(part, lack)]
}

/** The same where the numbers do not say whether it is this that lacks: only what can be tried. */
export const roomier = (sled: Sled, part: Part, lack: number): Fix[] =>
  roomFor(sled, part, lack).map((f) => (f.value === undefined ? { ...f, onlyTried: true } : f))

/** No sled is built narrower than this, mm. */
const least = 2

function told(edge: Edge, value: number): Fix[] {
  return value > (edge.path.endsWith('height') ? 0 : least) ? [{ text: edge.text(value), path: edge.path, value }] : []
}

function edgeAt(sled: Sled, at: Where): Edge | undefined {
  const round = roundAt(sled, at.z)
  return standing(sled, at, round?.radius ?? 0) ?? round
}

const diameter = (what: string, path: string, radius: number, more = 0): Edge => ({
  radius,
  path,
  typed: (r) => 2 * (r + more),
  text: (value) => `Make ${what} ${mm(value)} mm in diameter.`,
})

/** The widest round thing at a height. */
function roundAt(sled: Sled, z: number): Edge | undefined {
  const ring = sled.rings
    .filter((r) => z >= r.z0 - near && z <= r.z1 + near)
    .reduce<(typeof sled.rings)[number] | undefined>((a, b) => (a && a.radius >= b.radius ? a : b), undefined)
  const piece = pieceAt(sled, z)
  if (ring && (!piece || ring.radius > piece.radius)) {
    if (sled.input.rings?.some((r) => r.id === ring.id))
      return diameter(`the ring ${ring.id}`, `sleds/${sled.id}/rings/${ring.id}/diameter`, ring.radius)
    return sled.pieces.length === 1 ? diameter(sled.name, `sleds/${sled.id}/diameter`, ring.radius) : undefined
  }
  if (!piece) return undefined
  if (sled.input.bodies?.length) return diameter(`this piece of ${sled.name}`, piece.path, piece.radius)
  if (sled.pieces.length > 1) return undefined
  const slim = sled.input.outside === 'slim' ? (sled.rings.find((r) => r.id === 'rear-ring')?.radius ?? 0) : 0
  return diameter(sled.name, `sleds/${sled.id}/diameter`, piece.radius, Math.max(0, slim - piece.radius))
}

/** A place on a face may come to lie this far outside, mm. */
const near = 0.6

function pieceAt(sled: Sled, z: number): SledPiece | undefined {
  const beside = sled.pieces.filter((p) => z >= p.z0 - near && z <= p.z1 + near)
  return beside.reduce<SledPiece | undefined>((a, b) => (a && a.radius >= b.radius ? a : b), undefined)
}

/** A key or tower at the place, where what is met lies outside the round of the body. */
function standing(sled: Sled, at: Where, round: number): Edge | undefined {
  if (at.r < round) return undefined
  const span = (path: string, whole: boolean): boolean => {
    const from = sled.drawn.get(`${path}/from`) ?? (whole ? sled.ends.rear.nominal : Number.POSITIVE_INFINITY)
    const to = sled.drawn.get(`${path}/to`) ?? (whole ? sled.ends.blade.nominal : Number.NEGATIVE_INFINITY)
    return at.z >= from - near && at.z <= to + near
  }
  for (const t of sled.input.towers ?? []) {
    const path = `sleds/${sled.id}/towers/${t.id}`
    if (span(path, false) && Math.abs(turnBetween(t.theta, at.theta)) < (t.half ?? 20) + 5)
      return {
        radius: t.outer,
        path: `${path}/outer`,
        typed: (r) => r,
        text: (value) => `Let the tower ${t.id} end at radius ${mm(value)}.`,
      }
  }
  return undefined
}
