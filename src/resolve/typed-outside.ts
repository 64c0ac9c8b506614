import type { SledPiece, SledRing } from './assembly.ts'
import { wrong } from './context.ts'
import type { Outside, OutsideAsk } from './sled-outside.ts'
import { drawnDiameter } from './typed-limit.ts'

/** A slim body's rings, and how much narrower it is on each side, mm. */
const usualRing = 5
const usualSlim = 1.5

/** Narrower between two rings that keep the full width. */
export function slim({ input, ends }: OutsideAsk, whole: readonly SledPiece[], rings: readonly SledRing[]): Outside {
  const by = input.slimBy ?? usualSlim
  const length = Math.min(input.ringLength ?? usualRing, (ends.blade.nominal - ends.rear.nominal) / 3)
  const [first, last] = [whole[0] as SledPiece, whole.at(-1) as SledPiece]
  const pieces = whole.map((p) => ({ ...p, radius: p.radius - by }))
  const own: SledRing[] = [
    { id: 'rear-ring', z0: ends.rear.nominal, z1: ends.rear.nominal + length, radius: first.radius },
    { id: 'blade-ring', z0: ends.blade.nominal - length, z1: ends.blade.nominal, radius: last.radius },
  ]
  return { pieces, rings: [...own, ...rings] }
}

/** Rings of their own length and diameter. */
export function typedRings({ ctx, heights, input }: OutsideAsk): SledRing[] {
  return (input.rings ?? []).flatMap((r): SledRing[] => {
    const path = `sleds/${input.id}/rings/${r.id}`
    const at = heights.place(r.z, `${path}/z`, true)
    const d = drawnDiameter(ctx, r.diameter, `${path}/diameter`)
    if (!at || !d) return []
    const z0 = at.nominal - (r.face === 'blade' ? r.length : r.face === 'middle' ? r.length / 2 : 0)
    return [{ id: r.id, z0, z1: z0 + r.length, radius: d.nominal / 2 }]
  })
}

/** Pieces from height to height, each with its diameter; together they are one body. */
export function typedPieces({ ctx, heights, input }: OutsideAsk): SledPiece[] | undefined {
  const list = (input.bodies ?? []).map((b, i): SledPiece | undefined => {
    const path = `sleds/${input.id}/bodies/${i}`
    const [from, to] = [heights.place(b.from, `${path}/from`, true), heights.place(b.to, `${path}/to`, true)]
    const d = drawnDiameter(ctx, b.diameter, `${path}/diameter`)
    if (!from || !to || !d) return undefined
    if (to.nominal - from.nominal < 0.1)
      return wrong(
        ctx,
        'contradiction',
        `${path}/to`,
        to.nominal,
        `more than from, ${from.nominal}`,
        'Swap them, or correct one.',
      )
    const radius = d.nominal / 2
    return { z0: from.nominal, z1: to.nominal, radius, how: 'typed', path: `${path}/diameter`, source: 'typed' }
  })
  if (!list.every((p) => p !== undefined)) return undefined
  const apart = list.findIndex((p, i) => i > 0 && p.z0 > (list[i - 1] as SledPiece).z1 + 0.01)
  if (apart > 0)
    return wrong(
      ctx,
      'contradiction',
      `sleds/${input.id}/bodies/${apart}/from`,
      list[apart]?.z0,
      `at most ${list[apart - 1]?.z1}, where the piece before it ends`,
      'Pieces of one body meet: nothing holds what lies between.',
    )
  return list
}
