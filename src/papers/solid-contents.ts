import type { Assembly, Part } from '../resolve/assembly.ts'
import { type SimpleSolid, simpleSolid } from './simple-solid.ts'

/** A piece of what lies in a hilt, for the solid view. */
export type ContentSolid = SimpleSolid & { readonly id: string; readonly name: string; readonly kind: Part['kind'] }

/** What lies in a sled. */
export function solidContents(assembly: Assembly, sledId: string): ContentSolid[] {
  return assembly.parts.filter((p) => p.sled === sledId && p.goesIn === 'with-sled').flatMap(solidsOf)
}

/** The pieces of one part, as measured. */
export function solidsOf(p: Part): ContentSolid[] {
  return p.bodies.flatMap((b): ContentSolid[] => {
    const solid = simpleSolid(b)
    return solid ? [{ id: p.id, name: b.name, kind: p.kind, ...solid }] : []
  })
}
