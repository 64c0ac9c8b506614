import { unzipSync } from 'fflate'
import { beforeAll, describe, expect, it } from 'vitest'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import type { Kernel } from '../../../geometry/kernel/manifold.ts'
import { boundsOf, volume } from '../../../geometry/mesh/mesh.ts'
import { moved, shifted, standStill } from '../../../geometry/mesh/motion.ts'
import { type ThreeMfModel, threeMf } from '../../../src/job/three-mf.ts'
import { readThreeMf } from '../../oracle/readers/three-mf.ts'
import { meshOf, rod } from '../geometry/solids.ts'

let kernel: Kernel
beforeAll(async () => {
  kernel = await loadKernel()
})

/** Two cups, one beside the other, at coordinates that no short decimal holds. */
function model(names: readonly string[] = ['lower cup', 'upper cup']): ThreeMfModel {
  const cup = meshOf(kernel, [rod(0, 20, 9)], [rod(2, 21, 7)])
  const objects = names.map((name, i) => ({
    name,
    mesh: moved(cup, shifted(standStill, [10 + Math.PI, 10 + 30.1 * i, 0])),
  }))
  return { title: 'Cups', description: 'Two of them', objects }
}

describe('a 3MF file', () => {
  it('keeps to the core specification, with each body as a named object', () => {
    const { faults, objects, metadata } = readThreeMf(threeMf(model()))
    expect(faults).toEqual([])
    expect(objects.map((o) => o.name)).toEqual(['lower cup', 'upper cup'])
    expect(metadata).toEqual({ Title: 'Cups', Description: 'Two of them', Application: 'Sledwright' })
  })

  it('gives back every vertex to the last bit of its float32', () => {
    const given = model()
    const text = new TextDecoder().decode(unzipSync(threeMf(given))['3D/3dmodel.model'])
    const read = [...text.matchAll(/<vertex x="([^"]+)" y="([^"]+)" z="([^"]+)"/g)].flatMap((v) =>
      v.slice(1).map(Number),
    )
    expect(Float32Array.from(read)).toEqual(Float32Array.from(given.objects.flatMap((o) => [...o.mesh.vertices])))
    for (const [i, o] of readThreeMf(threeMf(given)).objects.entries()) {
      const mesh = given.objects[i]?.mesh
      if (!mesh) throw new Error('an object too many')
      expect(o.triangles).toBe(mesh.triangles.length / 3)
      expect(o.volume).toBeCloseTo(volume(mesh), 3)
      expect(Float32Array.from([...o.min, ...o.max])).toEqual(
        Float32Array.from([...boundsOf(mesh).min, ...boundsOf(mesh).max]),
      )
    }
  })

  it('has the same bytes in every time zone and at every time', () => {
    const given = model()
    const zone = process.env.TZ
    const files = ['UTC', 'Asia/Tokyo', 'America/Los_Angeles', 'Pacific/Apia'].map((tz) => {
      process.env.TZ = tz
      return Buffer.from(threeMf(given)).toString('base64')
    })
    if (zone === undefined) delete process.env.TZ
    else process.env.TZ = zone
    expect(new Set(files).size).toBe(1)
  })

  it('names no other program and no date', () => {
    const text = new TextDecoder().decode(unzipSync(threeMf(model()))['3D/3dmodel.model'])
    expect(text).not.toMatch(/slic|jscad|Date/i)
  })

  it('holds names as they are written, whatever is in them', () => {
    const names = ['a "cup" & <lid>', 'Lötstelle θ 90° ✓ 🛠', 'two\nlines', 'control \u0007 and half \ud83d a sign']
    const { faults, objects } = readThreeMf(threeMf(model(names)))
    expect(faults).toEqual([])
    expect(objects.map((o) => o.name)).toEqual([
      'a "cup" & <lid>',
      'Lötstelle θ 90° ✓ 🛠',
      'two lines',
      'control ? and half ? a sign',
    ])
  })

  it('is a package whose list of types comes first, as a reader of streams wants it', () => {
    expect(Object.keys(unzipSync(threeMf(model())))).toEqual(['[Content_Types].xml', '_rels/.rels', '3D/3dmodel.model'])
  })
})
