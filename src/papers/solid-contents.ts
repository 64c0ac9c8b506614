import type { Assembly, Part } from '../resolve/assembly.ts'

/** A simple body for the solid view: numbers only, in the frame of the hilt, mm and degrees. */
export type ContentSolid = { readonly id: string; readonly name: string; readonly kind: Part['kind'] } & (
  | {
      readonly shape: 'cylinder'
      readonly x: number
      readonly y: number
      readonly z0: number
      readonly z1: number
      readonly r0: number
      readonly r1: number
    }
  | {
      readonly shape: 'box'
      readonly x: number
      readonly y: number
      readonly z0: number
      readonly z1: number
      readonly width: number
      readonly height: number
      readonly facing: number
    }
)

/** What lies in a sled, as measured. Parts that are neither round nor square along the axis are left to the drawings. */
export function solidContents(assembly: Assembly, sledId: string): ContentSolid[] {
  return assembly.parts
    .filter((p) => p.sled === sledId && p.goesIn === 'with-sled')
    .flatMap((p) =>
      p.bodies.flatMap((b): ContentSolid[] => {
        const s = b.shape
        if (s.kind !== 'round' && s.kind !== 'box') return []
        const place = {
          id: p.id,
          name: b.name,
          kind: p.kind,
          x: s.x.nominal,
          y: s.y.nominal,
          z0: s.z0.nominal,
          z1: s.z1.nominal,
        }
        if (s.kind === 'round') return [{ ...place, shape: 'cylinder', r0: s.r0.nominal, r1: s.r1.nominal }]
        return [
          {
            ...place,
            shape: 'box',
            width: 2 * s.halfWidth.nominal,
            height: 2 * s.halfHeight.nominal,
            facing: s.facing,
          },
        ]
      }),
    )
}
