import type { LengthwiseView } from './lengthwise.ts'

/** One link of a chain: from height to height, mm. */
export interface Link {
  readonly from: number
  readonly to: number
}

/** Links shorter than this are not dimensioned, mm: faces that meet. */
const least = 0.05

/**
 * The chains under a lengthwise section: the sleds and what lies in them face after face, and the sections of the
 * hilt. Parts beside each other share their stretch: every face is a station.
 */
export function dimensionChains(view: LengthwiseView): readonly [readonly Link[], readonly Link[]] {
  const carried = view.parts.filter((p) => view.sleds.some((s) => p.z0 >= s.z0 - least && p.z1 <= s.z1 + least))
  return [chain([...view.sleds, ...carried]), chain(view.sections)]
}

function chain(stretches: readonly { readonly z0: number; readonly z1: number }[]): Link[] {
  const stations = stretches.flatMap((s) => [s.z0, s.z1]).toSorted((a, b) => a - b)
  const apart = stations.filter((z, i) => i === 0 || z - (stations[i - 1] as number) > least)
  return apart.slice(1).flatMap((to, i): Link[] => {
    const from = apart[i] as number
    // Between two sleds there is nothing to dimension.
    return stretches.some((s) => s.z0 <= from + least && s.z1 >= to - least) ? [{ from, to }] : []
  })
}

/** The width of each step of the bore, by its thread where it has one. */
export function diameterLabels(
  view: LengthwiseView,
): { readonly id: string; readonly z0: number; readonly z1: number; readonly text: string }[] {
  return view.bores.map(({ id, z0, z1, d0, d1, thread }) => ({
    id,
    z0,
    z1,
    text: thread ?? (d0 === d1 ? `⌀${d0.toFixed(2)}` : `⌀${d0.toFixed(2)}–${d1.toFixed(2)}`),
  }))
}
