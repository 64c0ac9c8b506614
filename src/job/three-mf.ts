import { FileForRelThumbnail, fileForContentTypes, to3dmodel } from '@jscadui/3mf-export'
import { strToU8, type ZipOptions, zipSync } from 'fflate'
import type { Mesh } from '../../geometry/mesh/mesh.ts'

/**
 * This file brings its packages with it: it is imported on demand, when a 3MF is wanted, so that neither the page nor
 * the worker waits for them.
 */

export interface ThreeMfObject {
  readonly name: string
  /** Welded, mm, where it is to lie: no transform is written. */
  readonly mesh: Mesh
}

export interface ThreeMfModel {
  readonly title: string
  readonly description: string
  readonly objects: readonly ThreeMfObject[]
}

const modelPath = '3D/3dmodel.model'
/** Digits that give back every float32 to the last bit. */
const digits = 9

/**
 * A 3MF package by the core specification (read in version 1.2): one object a body, named, in millimetres, each an item
 * of the build with the identity for its transform. Same model, same bytes.
 */
export function threeMf(model: ThreeMfModel): Uint8Array<ArrayBuffer> {
  const relationships = new FileForRelThumbnail()
  relationships.add3dModel(`/${modelPath}`)
  // The same moment in every file. A ZIP holds local time and begins in 1980; midday, because the night can be cut short
  // by a change of clocks.
  const mtime = new Date(1980, 0, 1, 12)
  const file = (text: string): [Uint8Array, ZipOptions] => [strToU8(text), { level: 6, mtime }]
  return zipSync({
    [fileForContentTypes.name]: file(fileForContentTypes.content),
    [relationships.name]: file(relationships.content),
    [modelPath]: file(modelText(model)),
  })
}

/**
 * The package writes resources and build as the specification wants them. Its head is left out: it gives today's date,
 * empty metadata, and a foreign program's mark that makes slicers read the file as one of that program's own. Names go
 * in as they are, so they are escaped here.
 */
function modelText({ title, description, objects }: ThreeMfModel): string {
  const written = to3dmodel({
    meshes: objects.map(({ name, mesh }, i) => ({
      id: String(i + 1),
      name: escaped(name),
      vertices: mesh.vertices,
      indices: mesh.triangles,
    })),
    items: objects.map((_, i) => ({ objectID: String(i + 1) })),
    precision: digits,
  })
  return head(title, description) + written.slice(written.indexOf('<resources>'))
}

const head = (title: string, description: string): string => `<?xml version="1.0" encoding="UTF-8"?>
<model unit="millimeter" xml:lang="en" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">
<metadata name="Title">${escaped(title)}</metadata>
<metadata name="Description">${escaped(description)}</metadata>
<metadata name="Application">Sledwright</metadata>
`

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }

/** Text for XML 1.0: what it cannot hold at all (control characters, lone surrogates) becomes a "?". */
function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '?')
    .replace(/[\t\n\r]+/g, ' ')
    .replace(/[&<>"]/g, (c) => entities[c] as string)
}
