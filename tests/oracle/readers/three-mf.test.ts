import { strToU8, zipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import { readThreeMf } from './three-mf.ts'
import { readXml } from './xml.ts'

/** Controls for our own reader: one that finds no fault in a broken package proves nothing about a sled. */

const types = `<?xml version="1.0" encoding="UTF-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
  <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
  <Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/>
</Types>`
const rels = `<?xml version="1.0" encoding="UTF-8"?>
<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
  <Relationship Target="/3D/3dmodel.model" Id="r1" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/>
</Relationships>`
const model = `<?xml version="1.0" encoding="UTF-8"?>
<model unit="millimeter" xml:lang="en" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">
  <metadata name="Title">A &amp; B</metadata>
  <resources>
    <object id="1" type="model" name="tetrahedron">
      <mesh>
        <vertices>
          <vertex x="0" y="0" z="0"/><vertex x="1e1" y="0" z="0"/><vertex x="0" y="10.0" z="0"/><vertex x="0" y="0" z="10"/>
        </vertices>
        <triangles>
          <triangle v1="0" v2="2" v3="1"/><triangle v1="0" v2="1" v3="3"/>
          <triangle v1="0" v2="3" v3="2"/><triangle v1="1" v2="2" v3="3"/>
        </triangles>
      </mesh>
    </object>
  </resources>
  <build><item objectid="1"/></build>
</model>`

type Parts = { types: string; rels: string; model: string }
const read = (change: Partial<Parts> = {}) => {
  const parts = { types, rels, model, ...change }
  return readThreeMf(
    zipSync({
      '[Content_Types].xml': strToU8(parts.types),
      '_rels/.rels': strToU8(parts.rels),
      '3D/3dmodel.model': strToU8(parts.model),
    }),
  )
}

describe('the reader of 3MF', () => {
  it('finds nothing wrong with a sound tetrahedron, and its volume (computed: 10³/6)', () => {
    const { faults, metadata, objects } = read()
    expect(faults).toEqual([])
    expect(metadata).toEqual({ Title: 'A & B' })
    expect(objects).toEqual([
      {
        name: 'tetrahedron',
        vertices: 4,
        triangles: 4,
        volume: expect.closeTo(1000 / 6, 9),
        min: [0, 0, 0],
        max: [10, 10, 10],
      },
    ])
  })

  it.each<[what: string, part: keyof Parts, from: string, to: string, fault: RegExp]>([
    ['another unit', 'model', 'millimeter', 'inch', /unit is inch/],
    ['no unit said', 'model', 'unit="millimeter" ', '', /unit is undefined/],
    ['another root', 'model', 'core/2015/02', 'core/2013/01', /no core model/],
    ['a foreign namespace', 'model', '<model ', '<model xmlns:x="http://x" ', /attribute xmlns:x/],
    ['metadata of its own', 'model', 'name="Title"', 'name="Mood"', /"Mood" is not of the core/],
    ['metadata twice', 'model', '  <resources>', '<metadata name="Title"></metadata><resources>', /stands twice/],
    ['build before resources', 'model', '<resources>', '<build/><resources>', /the model holds build/],
    ['an id that is none', 'model', 'object id="1"', 'object id="0"', /the id "0"/],
    ['a support', 'model', 'type="model"', 'type="support"', /of type support/],
    ['a hole', 'model', '<triangle v1="1" v2="2" v3="3"/>', '', /3 triangles/],
    ['a triangle turned round', 'model', 'v1="1" v2="2" v3="3"', 'v1="2" v2="1" v3="3"', /edges are not in two/],
    ['an index out of range', 'model', 'v1="1" v2="2" v3="3"', 'v1="1" v2="2" v3="4"', /a triangle 1,2,4/],
    ['a corner twice', 'model', 'v1="1" v2="2" v3="3"', 'v1="1" v2="1" v3="3"', /have no area/],
    ['a vertex twice', 'model', '<vertices>', '<vertices><vertex x="0" y="0" z="0"/>', /a vertex stands twice/],
    ['no number', 'model', 'x="1e1"', 'x="NaN"', /a vertex NaN/],
    ['a German comma', 'model', 'y="10.0"', 'y="10,0"', /a vertex 0,10,0,0/],
    ['inside out', 'model', 'x="1e1"', 'x="-1e1"', /its volume is -/],
    ['an item of nothing', 'model', 'objectid="1"', 'objectid="2"', /names the object "2"/],
    ['an item moved', 'model', 'objectid="1"', 'objectid="1" transform="1 0 0 0 1 0 0 0 1 0 0 5"', /is moved by/],
    ['no item', 'model', '<item objectid="1"/>', '', /nothing is built/],
    ['no type for models', 'types', 'Extension="model"', 'Extension="modul"', /has no content type/],
    ['another type for models', 'types', '3dmodel+xml', 'model+xml', /has the content type/],
    ['no start', 'rels', '2013/01/3dmodel', '2013/01/texture', /0 parts to start from/],
    ['a start that is not there', 'rels', '/3D/3dmodel.model', '/3D/other.model', /part 3D\/other\.model is missing/],
  ])('finds %s', (_what, part, from, to, fault) => {
    const spoilt = { types, rels, model }[part].replace(from, to)
    expect(spoilt).not.toBe({ types, rels, model }[part])
    expect(read({ [part]: spoilt }).faults.join('\n')).toMatch(fault)
  })

  it('finds a part that is missing', () => {
    expect(readThreeMf(zipSync({ '3D/3dmodel.model': strToU8(model) })).faults).toHaveLength(2)
  })
})

describe('the reader of XML', () => {
  const xml = (body: string) => readXml(`<?xml version="1.0" encoding="UTF-8"?>\n${body}`)

  it('reads elements, attributes, text and entities', () => {
    const a = xml('<a x="1 &lt; 2">one <b/>&quot;two&quot;</a>')
    expect([a.attributes.get('x'), a.text, a.children.map((c) => c.name)]).toEqual(['1 < 2', 'one "two"', ['b']])
  })

  it.each([
    ['two roots', '<a/><b/>', 'not one element'],
    ['text outside', 'x<a/>', 'not one element'],
    ['a crossing', '<a><b></a></b>', '</a> closes nothing'],
    ['no end', '<a><b/>', 'not one element'],
    ['an attribute twice', '<a x="1" x="2"/>', 'x stands twice'],
    ['an attribute bare', '<a x=1/>', '<a> does not end'],
    ['an ampersand bare', '<a>1 & 2</a>', 'is not known'],
    ['an entity of its own', '<a>&mine;</a>', 'is not known'],
    ['a quote in an attribute', '<a x="1"2"/>', '<a> does not end'],
    ['less-than in an attribute', '<a x="<"/>', '<a> does not end'],
    ['a control character', '<a>\u0001</a>', 'a character XML cannot hold'],
    ['a document type', '<!DOCTYPE a><a/>', 'no element begins'],
  ])('refuses %s', (_what, body, why) => {
    expect(() => xml(body)).toThrow(why)
  })

  it('refuses another encoding', () => {
    expect(() => readXml('<?xml version="1.0" encoding="ISO-8859-1"?><a/>')).toThrow('UTF-8')
  })
})
