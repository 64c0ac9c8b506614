import { execFileSync } from 'node:child_process'

/** What admesh says about an STL file. Counts of what it found before it repaired anything; volume in mm³. */
export interface AdmeshReport {
  facets: number
  disconnected: number
  parts: number
  degenerate: number
  /** Edges fixed, facets removed, added or reversed, backwards edges: 0 when nothing had to be mended. */
  repairs: number
  volume: number
}

/**
 * Reads an STL file with admesh. Its exit code is 0 for a broken mesh too, so only what it prints counts. Corrected
 * normals are no repair: a writer may leave them zero.
 * @throws when it cannot read the file or prints something else than expected
 */
export function readWithAdmesh(admesh: string, file: string): AdmeshReport {
  const text = execFileSync(admesh, [file], { encoding: 'utf8' })
  const count = (label: string): number => {
    const found = new RegExp(`${label}\\s*:\\s*(-?[\\d.]+)`).exec(text)?.[1]
    if (found === undefined) throw new Error(`admesh did not say "${label}":\n${text}`)
    return Number(found)
  }
  const repairs = ['Edges fixed', 'Facets removed', 'Facets added', 'Facets reversed', 'Backwards edges']
  return {
    facets: count('Number of facets'),
    disconnected: count('Total disconnected facets'),
    parts: count('Number of parts'),
    degenerate: count('Degenerate facets'),
    repairs: repairs.map(count).reduce((sum, n) => sum + n, 0),
    volume: count('Volume'),
  }
}
