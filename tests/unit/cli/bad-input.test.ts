import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { command, each, type Ran, runHere, tooLong } from './command.ts'
import { clear } from './projects.ts'

const cli = command()
const folder = join(import.meta.dirname, '..', '..', 'fixtures', 'bad')

/** Each fixture with the problem that must be among those listed. */
const expected: Readonly<Record<string, readonly [code: string, path: string]>> = {
  'bad-angle.json': ['not-a-number', 'features/pin/at/theta'],
  'bad-id.json': ['wrong-type', 'sections/the body/id'],
  'bore-above-outside.json': ['contradiction', 'sections/body/bore/main/diameter'],
  'bore-converted-twice.json': ['suspicious', 'sections/body/bore/main/diameter'],
  'bore-in-inches.json': ['suspicious', 'sections/body/bore/main/diameter'],
  'cell-in-inches.json': ['suspicious', 'parts/cell/body/diameter'],
  'circular.json': ['circular', 'sections/body/z/of'],
  'constructor.txt': ['forbidden-key', 'job/0/constructor'],
  'deep.txt': ['too-deep', 'note/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0'],
  'duplicate-id.json': ['duplicate-id', 'sections/body'],
  'empty-sled.json': ['missing', 'sleds/main/from'],
  'empty.txt': ['not-json', ''],
  'ends-swapped.json': ['contradiction', 'sections/body/length'],
  'exponent-text.json': ['not-a-number', 'sections/body/length'],
  'field-twice.txt': ['duplicate-id', 'sections/0/length'],
  'flat-outline.json': ['contradiction', 'parts/board/body/outline'],
  'fraction-without-unit.json': ['unknown-unit', 'sections/body/length'],
  'huge-bore.json': ['out-of-range', 'sections/body/bore/main/diameter'],
  'huge-outline.json': ['out-of-range', 'parts/board/body/outline/2/1'],
  'huge-spread.json': ['out-of-range', 'sections/body/length/plus'],
  'huge-text.json': ['out-of-range', 'sections/body/length'],
  'infinity-text.json': ['not-a-number', 'sections/body/length'],
  'lengths-in-inches.json': ['suspicious', 'sections/body/length'],
  'list.json': ['not-this-format', ''],
  'nan-text.json': ['not-a-number', 'sections/body/bore/main/diameter'],
  'negative-clearance.json': ['out-of-range', 'thresholds/clearance/value'],
  'negative-least-wall.json': ['out-of-range', 'printer/p/leastWall'],
  'negative-length.json': ['out-of-range', 'sections/body/length'],
  'negative-spread.json': ['out-of-range', 'sections/body/length/plus'],
  'newer-version.json': ['newer-version', 'version'],
  'no-bore.json': ['missing', 'sections/body/bore'],
  'no-length.json': ['missing', 'sections/body/length'],
  'no-readings.json': ['out-of-range', 'sections/body/bore/0/diameter/readings'],
  'no-sections.json': ['missing', 'sections'],
  'no-version.json': ['missing', 'version'],
  'not-a-number-literal.txt': ['not-json', ''],
  'not-json.txt': ['not-json', ''],
  'null-length.json': ['wrong-type', 'sections/body/length'],
  'older-version.json': ['unknown-value', 'version'],
  'other-format.json': ['not-this-format', 'format'],
  'outside-in-inches.json': ['suspicious', 'sections/body/outside/0/diameter'],
  'overlap.json': ['overlap', 'sections/neck'],
  'part-outside.json': ['outside-hilt', 'parts/cell/at/z'],
  'part-without-place.json': ['missing', 'parts/cell/at/z'],
  'part-without-size.json': ['missing', 'parts/cell/body'],
  'preset-of-another-kind.json': ['contradiction', 'parts/cell/preset'],
  'proto.txt': ['forbidden-key', '__proto__'],
  'reading-in-inches.json': ['suspicious', 'sections/body/bore/main/diameter/readings/1/value'],
  'ring-inside-out.json': ['contradiction', 'parts/cell/body/inner'],
  'sections-not-a-list.json': ['wrong-type', 'sections'],
  'sled-ends-swapped.json': ['contradiction', 'sleds/main'],
  'spread-below-nothing.json': ['out-of-range', 'sections/body/bore/main/diameter'],
  'steps-too-long.json': ['contradiction', 'sections/body/bore'],
  'thin-wall.json': ['suspicious', 'sections/body/bore/main/diameter'],
  'too-large-number.txt': ['wrong-type', 'sections/body/length'],
  'truncated.txt': ['not-json', ''],
  'two-open-steps.json': ['missing', 'sections/body/bore/b/length'],
  'unknown-feature-host.json': ['unknown-reference', 'features/pin/on'],
  'unknown-hilt.json': ['unknown-reference', 'sections/neck/hilt'],
  'unknown-joint-section.json': ['unknown-reference', 'joints/j/blade'],
  'unknown-kind.json': ['unknown-value', 'parts/cell/kind'],
  'unknown-material.json': ['unknown-preset', 'printer/p/material'],
  'unknown-nest-part.json': ['unknown-reference', 'sleds/main/nests/parts/cel'],
  'unknown-preset.json': ['unknown-preset', 'parts/cell/preset'],
  'unknown-process.json': ['unknown-preset', 'printer/p/process'],
  'unknown-reference.json': ['unknown-reference', 'insertions/in/moves'],
  'unknown-shape.json': ['wrong-type', 'parts/cell/body/shape'],
  'unknown-state.json': ['unknown-reference', 'features/pin/states'],
  'unknown-state-item.json': ['unknown-reference', 'states/closed/without'],
  'unknown-thread.json': ['unknown-value', 'sections/body/bore/mouth/thread'],
  'unknown-threshold.json': ['unknown-value', 'thresholds/luck'],
  'unknown-tool.json': ['unknown-preset', 'sections/body/length/tool'],
  'unknown-window-for.json': ['unknown-reference', 'sleds/main/windows/w/for'],
  'unknown-wire.json': ['unknown-preset', 'wires/w/preset'],
  'unknown-wire-sled.json': ['unknown-reference', 'wires/w/sled'],
  'zero-bore.json': ['out-of-range', 'sections/body/bore/main/diameter'],
  'zero-reading.json': ['out-of-range', 'sections/body/bore/main/diameter/readings/1/value'],
}
const names = Object.keys(expected)

describe('each bad project, as a file', () => {
  let ran: Map<string, Ran>
  beforeAll(async () => {
    const results = await each(names, (name) => cli.here(['check', join(folder, name), '--json']))
    ran = new Map(names.map((name, i) => [name, results[i] as Ran]))
  })

  it.each(Object.entries(expected))('%s: %s', async (name, [code, path]) => {
    const json = ran.get(name) as Ran
    expect([json.code, json.err]).toEqual([65, ''])
    const { problems } = JSON.parse(json.out)
    expect(problems).toContainEqual(expect.objectContaining({ code, path }))
    for (const p of problems) {
      expect(Object.keys(p).toSorted()).toEqual(['code', 'got', 'hint', 'limit', 'path'])
      expect([p.got, p.limit, p.hint]).not.toContain('')
    }
    const text = await runHere(['check', join(folder, name)])
    expect([text.code, text.out]).toEqual([65, ''])
    expect(text.err).toContain(path === '' ? 'the whole file' : path)
    expect(text.err).not.toMatch(/^\s+at .*:\d+/m)
    expect(tooLong(text.err)).toEqual([])
  })

  it('every fixture is in the table', () => {
    expect(readdirSync(folder).toSorted()).toEqual(names.toSorted())
  })
})

describe('files made to do harm', () => {
  const json = (text: string | Uint8Array) => cli.run(['check', '-', '--json'], { input: text })
  const first = ({ out }: Ran) => JSON.parse(out).problems[0]

  it.each([
    ['50 MB', () => 'x'.repeat(50e6), 'too-large'],
    [
      'a million lists in each other',
      () => `{"format":"sledwright","version":1,"x":${'['.repeat(1e6)}${']'.repeat(1e6)}}`,
      'too-deep',
    ],
    ['a million lists never closed', () => '['.repeat(1e6), 'not-json'],
    ['50 000 bore steps', () => JSON.stringify({ ...clear, sections: manySections(500, 100) }), 'too-large'],
    ['501 parts', () => JSON.stringify({ ...clear, parts: manyParts(501) }), 'out-of-range'],
    ['201 parts', () => JSON.stringify({ ...clear, parts: manyParts(201) }), 'too-large'],
    ['a name of 3 MB', () => JSON.stringify({ ...clear, hilts: [{ id: 'h', name: 'x'.repeat(3e6) }] }), 'out-of-range'],
    ['bytes that are no text', () => Uint8Array.from([0xff, 0xfe, 0x7b, 0x00]), 'not-json'],
  ] as const)('%s, on standard input', async (_what, make, code) => {
    const ran = await json(make())
    expect(ran.code).toBe(65)
    expect(first(ran)).toMatchObject({ code })
    expect(ran.out.length).toBeLessThan(100_000)
  })

  it('50 MB as a file, refused by its size before it is read as JSON', async () => {
    const ran = await cli.run(['check', cli.file('large.json', `"${'x'.repeat(50e6)}"`), '--json'])
    expect([ran.code, first(ran).code]).toEqual([65, 'too-large'])
  })

  it('does not touch what every object inherits', async () => {
    const ran = await json('{"format":"sledwright","version":1,"job":[{"id":"a","__proto__":{"verdict":"clear"}}]}')
    expect(first(ran)).toMatchObject({ code: 'forbidden-key', path: 'job/0/__proto__' })
  })
})

describe('files that cannot be read', () => {
  it.each([
    ['one that is not there', () => join(cli.folder(), 'none.json')],
    ['a folder', () => cli.folder()],
    ['a path through a file', () => join(cli.file('plain.json', clear), 'inner.json')],
  ])('%s', async (_what, path) => {
    const ran = await cli.run(['check', path()])
    expect(ran.code).toBe(65)
    expect(ran.err).toMatch(/got .*\n +allowed +a project file\n +hint +\w/)
  })
})

const manySections = (n: number, steps: number) =>
  Array.from({ length: n }, (_, i) => ({
    id: `s${i}`,
    length: 100,
    bore: Array.from({ length: steps }, (_unused, k) => ({
      id: `b${k}`,
      diameter: 30,
      ...(k > 0 ? { length: 0.5 } : {}),
    })),
  }))

const manyParts = (n: number) =>
  Array.from({ length: n }, (_, i) => ({ id: `p${i}`, kind: 'cell', preset: 'cell-18650-flat', at: { z: 25 } }))
