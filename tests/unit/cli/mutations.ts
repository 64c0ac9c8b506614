import fc from 'fast-check'

/** What a slip, a broken program or a hostile hand may leave in a field. */
const oddities: readonly unknown[] = [
  null,
  true,
  '',
  ' ',
  'x',
  'NaN',
  '1in',
  '30 ±40',
  '25.4..1',
  -1,
  0,
  1e-9,
  0.5,
  25.4,
  360,
  1e9,
  Number.MAX_VALUE,
  [],
  {},
  [[]],
  { min: -5, max: 5 },
  { min: 5, max: -5 },
  { value: 1, plus: 1e9, minus: 1e9 },
  { value: 20, plus: 0, minus: 40 },
  { value: 10, kind: 'varies', plus: 3, minus: 3 },
  { value: 10, source: 'assumed', plus: 3, minus: 3 },
  { readings: [{ value: 10 }, { value: 20, theta: 60 }] },
  { of: 'sections/body', end: 'blade', by: 2 },
  { of: 'parts/cell' },
  { pushed: 90, gap: 0 },
  { x: 5, y: 5 },
]

type Path = (string | number)[]

/** Every place in a value, the whole left out. */
function places(value: unknown, at: Path = []): Path[] {
  if (value === null || typeof value !== 'object') return []
  return Object.entries(value).flatMap(([key, inner]) => {
    const path = [...at, Array.isArray(value) ? Number(key) : key]
    return [path, ...places(inner, path)]
  })
}

export interface Mutation {
  readonly place: number
  readonly how: 'replace' | 'remove' | 'double'
  readonly oddity: unknown
}

export const mutations: fc.Arbitrary<Mutation[]> = fc.array(
  fc.record({
    place: fc.nat(100_000),
    how: fc.constantFrom(
      'replace' as const,
      'replace' as const,
      'replace' as const,
      'remove' as const,
      'double' as const,
    ),
    oddity: fc.constantFrom(...oddities),
  }),
  { minLength: 1, maxLength: 3 },
)

/** A copy with some fields spoiled. */
export function spoiled(value: unknown, list: readonly Mutation[]): unknown {
  const copy = structuredClone(value)
  for (const { place, how, oddity } of list) {
    const all = places(copy)
    const path = all[place % all.length]
    if (path === undefined) return copy
    const key = path.at(-1) as string | number
    const holder = path.slice(0, -1).reduce<any>((v, k) => v[k], copy)
    if (how === 'replace') holder[key] = structuredClone(oddity)
    else if (how === 'double' && Array.isArray(holder)) holder.push(structuredClone(holder[Number(key)]))
    else if (Array.isArray(holder)) holder.splice(Number(key), 1)
    else delete holder[key]
  }
  return copy
}
