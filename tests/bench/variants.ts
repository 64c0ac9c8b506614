import type { Project } from '../../src/project/schema/project.ts'

/**
 * The project with one number changed a little, a different one each time: what a person at the bench does. Only
 * numbers that stand for a dimension are touched; the same call gives the same variants.
 */
export function variants(project: Project, count: number): Project[] {
  const paths = dimensionsOf(project, [])
  return Array.from({ length: count }, (_, i) => {
    const copy = structuredClone(project)
    const path = paths[(i * 7) % paths.length] as (string | number)[]
    const parent = path
      .slice(0, -1)
      .reduce<unknown>((at, key) => (at as Record<string | number, unknown>)[key], copy) as Record<
      string | number,
      number
    >
    const key = path.at(-1) as string | number
    parent[key] = Number(((parent[key] as number) * (1 + 0.0002 * ((i % 5) + 1))).toFixed(5))
    return copy
  })
}

const lists = new Set(['sections', 'features', 'parts', 'sleds', 'screws', 'joints'])
const skipped = new Set(['version', 'count', 'theta', 'pushed', 'plus', 'minus', 'jawFlat', 'facing'])

function dimensionsOf(value: unknown, path: (string | number)[]): (string | number)[][] {
  if (path.length === 1 && !lists.has(String(path[0]))) return []
  if (typeof value === 'number') return skipped.has(String(path.at(-1))) || value === 0 ? [] : [path]
  if (value === null || typeof value !== 'object') return []
  return Object.entries(value).flatMap(([key, item]) =>
    dimensionsOf(item, [...path, Array.isArray(value) ? Number(key) : key]),
  )
}
