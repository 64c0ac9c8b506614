/** Stretches of a line: sorted, apart from each other, each from less to more. */
export type Span = readonly [number, number]

/** Stretches shorter than this are the dust of rounding, mm. */
const dust = 1e-7

/** All of them as one list of stretches that do not touch. */
export function union(spans: readonly Span[]): Span[] {
  const sorted = spans.filter(([a, b]) => b - a > dust).toSorted((p, q) => p[0] - q[0])
  const out: Span[] = []
  for (const [a, b] of sorted) {
    const last = out.at(-1)
    if (last && a <= last[1] + dust) out[out.length - 1] = [last[0], Math.max(last[1], b)]
    else out.push([a, b])
  }
  return out
}

/** What is left of the first list outside the second. */
export function without(spans: readonly Span[], cut: readonly Span[]): Span[] {
  let left = union(spans)
  for (const [c, d] of union(cut))
    left = left.flatMap(([a, b]): Span[] => [
      [a, Math.min(b, c)],
      [Math.max(a, d), b],
    ])
  return union(left)
}

/** Where exactly one of the two lists is: the step one sees between two neighbouring cross-sections. */
export function either(a: readonly Span[], b: readonly Span[]): Span[] {
  return union([...without(a, b), ...without(b, a)])
}

/** What lies in both of a list and one stretch. */
export function within(spans: readonly Span[], [from, to]: Span): Span[] {
  return union(spans.map(([a, b]): Span => [Math.max(a, from), Math.min(b, to)]))
}
