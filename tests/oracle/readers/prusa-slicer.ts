import { execFileSync } from 'node:child_process'

/** What prusa-slicer says about one object of a file; lengths in mm, volume in mm³. */
export interface SlicerReport {
  manifold: boolean
  facets: number
  parts: number
  openEdges: number
  volume: number
  size: [x: number, y: number, z: number]
}

/**
 * Reads a mesh file (STL, 3MF) with `prusa-slicer --info`: one report for each object in it. Its exit code is 0 for an
 * open mesh too, so only what it prints counts.
 * @throws when it cannot read the file or prints something else than expected
 */
export function readWithSlicer(slicer: string, file: string): SlicerReport[] {
  const text = execFileSync(slicer, ['--info', file], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] })
  // A heading line "[name]" opens each object. Log lines may stand before the first.
  const objects = text.split(/^\[[^\]\n]*\]$/m).slice(1)
  if (objects.length === 0) throw new Error(`prusa-slicer described no object:\n${text}`)
  return objects.map(report)
}

function report(text: string): SlicerReport {
  const said = new Map([...text.matchAll(/^(\w+) = +(\S+)$/gm)].map(([, key = '', value = '']) => [key, value]))
  const number = (key: string): number => {
    const value = Number(said.get(key))
    if (!Number.isFinite(value)) throw new Error(`prusa-slicer did not say "${key}":\n${text}`)
    return value
  }
  return {
    manifold: said.get('manifold') === 'yes',
    facets: number('number_of_facets'),
    parts: number('number_of_parts'),
    openEdges: said.has('open_edges') ? number('open_edges') : 0,
    volume: number('volume'),
    size: [number('size_x'), number('size_y'), number('size_z')],
  }
}
