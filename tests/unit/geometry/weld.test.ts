import { describe, expect, it } from 'vitest'
import { gate } from '../../../geometry/mesh/gate.ts'
import { type Mesh, volume } from '../../../geometry/mesh/mesh.ts'
import { weld } from '../../../geometry/mesh/weld.ts'

const meshOf = (corners: readonly (readonly number[])[], faces: readonly (readonly number[])[]): Mesh => ({
  vertices: Float32Array.from(corners.flat()),
  triangles: Uint32Array.from(faces.flat()),
  made: Uint16Array.from(faces, (_, i) => i),
})

/** A corner of a block, cut off: a tetrahedron with edges of 10 along the axes. */
const corners = [
  [0, 0, 0],
  [10, 0, 0],
  [0, 10, 0],
  [0, 0, 10],
]
const faces = [
  [0, 2, 1],
  [0, 1, 3],
  [0, 3, 2],
  [1, 2, 3],
]

describe('what a reader of the file will see', () => {
  it('has no needle: a triangle laid flat by rounding is joined to the neighbour along its longest edge', () => {
    // Corner 4 lies on the edge from 0 to 1; the needle closes what one side knows of it and the other does not.
    const needle = meshOf(
      [...corners, [4, 0, 0]],
      [
        [0, 2, 1],
        [0, 4, 3],
        [4, 1, 3],
        [0, 1, 4],
        [0, 3, 2],
        [1, 2, 3],
      ],
    )
    expect(gate(needle, { shells: 1 }).faults).toEqual(['1 triangles have no area'])
    const healed = weld(needle)
    expect(gate(healed, { shells: 1 }).faults).toEqual([])
    expect(volume(healed)).toBeCloseTo(1000 / 6, 9)
    expect(healed.triangles).toHaveLength(3 * 6)
  })

  it('has no two triangles back to back, with nothing between them', () => {
    const flap = meshOf(corners, [...faces, [0, 1, 2], [0, 2, 1]])
    expect(gate(flap, { shells: 1 }).faults[0]).toContain('edges are not shared')
    const healed = weld(flap)
    expect(gate(healed, { shells: 1 }).faults).toEqual([])
    expect(healed.triangles).toHaveLength(3 * 4)
  })

  it('has one corner where a kernel gives several, a billionth apart about 0', () => {
    const twice = meshOf(
      [...corners, [2e-10, -3e-10, 10]],
      [
        [0, 2, 1],
        [0, 1, 3],
        [0, 4, 2],
        [1, 2, 4],
        [1, 4, 3],
      ],
    )
    const healed = weld(twice)
    expect(healed.vertices).toHaveLength(3 * 4)
    expect(gate(healed, { shells: 1 }).faults).toEqual([])
  })

  it('leaves an open surface open', () => {
    const open = weld(meshOf(corners, faces.slice(1)))
    expect(gate(open, { shells: 1 }).openEdges).toBeGreaterThan(0)
  })
})
