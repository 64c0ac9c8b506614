import { unzipSync } from 'fflate'
import { type Element, readXml } from './xml.ts'

/** A 3MF file by the rules of the core specification (read in version 1.2). */

const namespaces = {
  core: 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02',
  types: 'http://schemas.openxmlformats.org/package/2006/content-types',
  relationships: 'http://schemas.openxmlformats.org/package/2006/relationships',
}
const contentTypes = {
  model: 'application/vnd.ms-package.3dmanufacturing-3dmodel+xml',
  rels: 'application/vnd.openxmlformats-package.relationships+xml',
}
const startPart = 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel'
const wellKnown = new Set(
  'Title Designer Description Copyright LicenseTerms Rating CreationDate ModificationDate Application'.split(' '),
)
const number = /^[-+]?(\d+(\.\d+)?|\.\d+)([eE][-+]?\d+)?$/

export interface ThreeMfObject {
  readonly name: string | undefined
  readonly vertices: number
  readonly triangles: number
  readonly volume: number
  readonly min: readonly [number, number, number]
  readonly max: readonly [number, number, number]
}

export interface ThreeMfReport {
  readonly metadata: Readonly<Record<string, string>>
  /** In the order of the build. */
  readonly objects: readonly ThreeMfObject[]
  /** Breaches of the specification, and of our own stricter rules: millimetres, no transforms, no vertex twice. */
  readonly faults: readonly string[]
}

/**
 * Reads a 3MF package and lists whatever is against the rules.
 * @throws when it is no ZIP, or when one of its parts is no XML
 */
export function readThreeMf(bytes: Uint8Array): ThreeMfReport {
  const parts = unzipSync(bytes)
  const faults: string[] = []
  const part = (name: string): Element | undefined => {
    const found = parts[name]
    if (found === undefined) faults.push(`the part ${name} is missing`)
    return found && readXml(new TextDecoder('utf-8', { fatal: true }).decode(found))
  }
  checkTypes(part('[Content_Types].xml'), Object.keys(parts), faults)
  const target = startTarget(part('_rels/.rels'), faults)
  const model = target === undefined ? undefined : part(target.slice(1))
  if (model === undefined) return { metadata: {}, objects: [], faults }
  return { ...readModel(model, faults), faults }
}

/** OPC: every part has a content type, by its extension or by name. */
function checkTypes(types: Element | undefined, names: readonly string[], faults: string[]): void {
  if (types === undefined) return
  if (types.name !== 'Types' || types.attributes.get('xmlns') !== namespaces.types)
    faults.push('[Content_Types].xml is no list of types')
  const byExtension = new Map(
    types.children.map((c) => [c.attributes.get('Extension'), c.attributes.get('ContentType')]),
  )
  if (byExtension.size !== types.children.length) faults.push('an extension has two content types')
  for (const name of names.filter((n) => n !== '[Content_Types].xml')) {
    const extension = /\.([^.]+)$/.exec(name)?.[1] ?? ''
    const type = byExtension.get(extension)
    if (type === undefined) faults.push(`${name} has no content type`)
    if (extension in contentTypes && type !== contentTypes[extension as keyof typeof contentTypes])
      faults.push(`${name} has the content type ${type}`)
  }
}

function startTarget(rels: Element | undefined, faults: string[]): string | undefined {
  if (rels === undefined) return undefined
  if (rels.name !== 'Relationships' || rels.attributes.get('xmlns') !== namespaces.relationships)
    faults.push('_rels/.rels is no list of relationships')
  const ids = rels.children.map((r) => r.attributes.get('Id'))
  if (new Set(ids).size !== ids.length || ids.includes(undefined))
    faults.push('relationships without an id of their own')
  const starts = rels.children.filter((r) => r.attributes.get('Type') === startPart)
  const target = starts[0]?.attributes.get('Target')
  if (starts.length !== 1 || target === undefined) faults.push(`${starts.length} parts to start from`)
  else if (!/^\/3D\/[^/.][^/]*\.model$/.test(target)) faults.push(`the model is called ${target}`)
  return target
}

function readModel(model: Element, faults: string[]): Omit<ThreeMfReport, 'faults'> {
  if (model.name !== 'model' || model.attributes.get('xmlns') !== namespaces.core)
    faults.push('the root is no core model')
  if (model.attributes.get('unit') !== 'millimeter') faults.push(`the unit is ${model.attributes.get('unit')}`)
  for (const name of model.attributes.keys())
    if (!['unit', 'xml:lang', 'xmlns'].includes(name)) faults.push(`<model> has the attribute ${name}`)
  const order = model.children.map((c) => c.name).filter((n) => n !== 'metadata')
  if (order.join() !== 'resources,build') faults.push(`the model holds ${order.join()}`)
  const metadata = readMetadata(model, faults)
  const resources = model.children.find((c) => c.name === 'resources')?.children ?? []
  const items = model.children.find((c) => c.name === 'build')?.children ?? []
  const objects = new Map<string, ThreeMfObject>()
  for (const o of resources) {
    const id = o.attributes.get('id') ?? ''
    if (!/^[1-9]\d*$/.test(id) || objects.has(id)) faults.push(`an object has the id "${id}"`)
    objects.set(id, readObject(o, faults))
  }
  if (items.length === 0) faults.push('nothing is built')
  const built = items.flatMap((item) => {
    const id = item.attributes.get('objectid') ?? ''
    const found = objects.get(id)
    if (!found) faults.push(`an item of the build names the object "${id}"`)
    const transform = item.attributes.get('transform') ?? '1 0 0 0 1 0 0 0 1 0 0 0'
    if (transform !== '1 0 0 0 1 0 0 0 1 0 0 0') faults.push(`an item is moved by ${transform}`)
    return found ? [found] : []
  })
  if (new Set(built).size !== objects.size) faults.push('an object is not built')
  return { metadata, objects: built }
}

function readMetadata(model: Element, faults: string[]): Record<string, string> {
  const metadata: Record<string, string> = {}
  for (const m of model.children.filter((c) => c.name === 'metadata')) {
    const name = m.attributes.get('name') ?? ''
    if (!wellKnown.has(name)) faults.push(`the metadata "${name}" is not of the core specification`)
    if (name in metadata) faults.push(`the metadata "${name}" stands twice`)
    metadata[name] = m.text
  }
  return metadata
}

type V3 = [number, number, number]

function readObject(object: Element, faults: string[]): ThreeMfObject {
  const name = object.attributes.get('name')
  const say = (fault: string) => faults.push(`${name ?? 'an object'}: ${fault}`)
  const type = object.attributes.get('type') ?? 'model'
  if (object.name !== 'object' || type !== 'model') say(`a <${object.name}> of type ${type}`)
  const [mesh] = object.children
  if (mesh?.name !== 'mesh' || object.children.length !== 1) say('it is not one mesh')
  const list = (of: string) => mesh?.children.find((c) => c.name === of)?.children ?? []
  if (mesh?.children.map((c) => c.name).join() !== 'vertices,triangles') say('a mesh of other parts')
  const vertices = list('vertices').map((v): V3 => {
    const texts = ['x', 'y', 'z'].map((k) => v.attributes.get(k) ?? '')
    if (v.name !== 'vertex' || v.attributes.size !== 3 || !texts.every((t) => number.test(t)))
      say(`a vertex ${texts.join()}`)
    return texts.map(Number) as V3
  })
  const triangles = list('triangles').map((t): V3 => {
    const texts = ['v1', 'v2', 'v3'].map((k) => t.attributes.get(k) ?? '')
    if (t.name !== 'triangle' || !texts.every((i) => /^\d+$/.test(i) && Number(i) < vertices.length))
      say(`a triangle ${texts.join()}`)
    return texts.map(Number) as V3
  })
  if (triangles.length < 4) say(`${triangles.length} triangles`)
  if (new Set(vertices.map(String)).size !== vertices.length) say('a vertex stands twice')
  if (new Set(triangles.flat()).size !== vertices.length) say('a vertex is of no use')
  checkEdges(triangles, say)
  const volume = checkVolume(vertices, triangles, say)
  const along = (k: number) => vertices.map((v) => v[k] as number)
  const min = [0, 1, 2].map((k) => along(k).reduce((a, b) => Math.min(a, b), Infinity)) as V3
  const max = [0, 1, 2].map((k) => along(k).reduce((a, b) => Math.max(a, b), -Infinity)) as V3
  return { name, vertices: vertices.length, triangles: triangles.length, volume, min, max }
}

/** Every edge in exactly two triangles, in opposite order. */
function checkEdges(triangles: readonly V3[], say: (fault: string) => void): void {
  const edges = new Map<string, number>()
  const pairs = triangles.flatMap(([a, b, c]) => [`${a} ${b}`, `${b} ${c}`, `${c} ${a}`])
  for (const e of pairs) edges.set(e, (edges.get(e) ?? 0) + 1)
  const open = pairs.filter((e) => edges.get(e) !== 1 || edges.get(e.split(' ').toReversed().join(' ')) !== 1)
  if (open.length > 0) say(`${open.length} edges are not in two triangles of opposite order`)
}

/** No triangle without area; the whole of positive volume, mm³. */
function checkVolume(vertices: readonly V3[], triangles: readonly V3[], say: (fault: string) => void): number {
  let [six, flat] = [0, 0]
  for (const t of triangles) {
    const [p, q, r] = t.map((i) => vertices[i] ?? [0, 0, 0]) as [V3, V3, V3]
    const n = cross(less(q, p), less(r, p))
    if (!(Math.hypot(...n) > 0)) flat++
    const c = cross(q, r)
    six += p[0] * c[0] + p[1] * c[1] + p[2] * c[2]
  }
  if (flat > 0) say(`${flat} triangles have no area`)
  if (!(six > 0)) say(`its volume is ${six / 6}`)
  return six / 6
}

const less = (a: V3, b: V3): V3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
const cross = (a: V3, b: V3): V3 => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
