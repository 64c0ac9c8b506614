import type { InsertionWay } from './insertion-way.ts'
import type { LengthwiseView, SectionedPart } from './lengthwise.ts'
import type { Point2 } from './thread-profile.ts'
import { shiftAt } from './way-shift.ts'

type Way = Pick<InsertionWay, 'carries' | 'absent' | 'moves' | 'from' | 'to'>

/**
 * The lengthwise section with what moves at a depth of its way: it and all it carries stand so far from their place,
 * and what is not there yet is left out.
 */
export function pushedSection(view: LengthwiseView, way: Way, depth: number): LengthwiseView {
  const by = shiftAt(way, depth)
  const here = ({ id }: { readonly id: string }): boolean => !way.absent.includes(id)
  const moved = (id: string): number => (way.carries.includes(id) ? by : 0)
  const stretch = <T extends { readonly id: string; readonly z0: number; readonly z1: number }>(
    s: T,
    of = s.id,
  ): T => ({
    ...s,
    z0: s.z0 + moved(of),
    z1: s.z1 + moved(of),
  })
  const part = (p: SectionedPart): SectionedPart => ({
    ...p,
    cut: along(p.cut, moved(p.id)),
    seen: along(p.seen, moved(p.id)),
  })
  const bored = (b: { readonly id: string }): string => b.id.split('/').slice(0, 2).join('/')
  return {
    ...view,
    metal: view.metal
      .map((m) => ({ ...m, id: `sections/${m.section}` }))
      .filter(here)
      .map(({ id, ...m }) => ({
        ...m,
        ring: along([m.ring], moved(id))[0] ?? [],
        edges: along(m.edges, moved(id)),
        broken: along(m.broken, moved(id)),
      })),
    sleds: view.sleds.filter(here).map((s) => ({
      ...stretch(s),
      fills: along(s.fills, moved(s.id)),
      edges: along(s.edges, moved(s.id)),
    })),
    contents: view.contents.filter(here).map(part),
    intrusions: view.intrusions.filter(here).map(part),
    sections: view.sections.filter(here).map((s) => stretch(s)),
    parts: view.parts.filter(here).map((p) => stretch(p)),
    bores: view.bores.filter((b) => here({ id: bored(b) })).map((b) => stretch(b, bored(b))),
  }
}

/** From, to along the hilt, mm: the hilt, and what moves where its way begins. */
export function wayRoom(view: LengthwiseView, way: Way): { readonly z0: number; readonly z1: number } {
  const out = pushedSection(view, way, way.from)
  const all = [...out.sleds, ...out.parts, ...out.sections]
  return { z0: Math.min(view.z0, ...all.map((s) => s.z0)), z1: Math.max(view.z1, ...all.map((s) => s.z1)) }
}

/** Lines moved along the hilt; each keeps its number of points. */
const along = <T extends readonly Point2[]>(lines: readonly T[], by: number): readonly T[] =>
  by === 0 ? lines : lines.map((line) => line.map(([z, v]): Point2 => [z + by, v]) as unknown as T)
