import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { cautions } from '../../../src/job/cautions.ts'
import { readThreeMf } from '../../oracle/readers/three-mf.ts'
import { command } from './command.ts'
import { clash, clear } from './projects.ts'

const cli = command()
const folder = (name: string) => join(cli.folder(), name)
const namesIn = (name: string) => (existsSync(folder(name)) ? readdirSync(folder(name)).toSorted() : [])

/** Heights and triangles of a binary STL (80 bytes, a count, 50 bytes a triangle; little-endian). */
function readStl(path: string) {
  const bytes = readFileSync(path)
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const triangles = view.getUint32(80, true)
  const heights = Array.from({ length: triangles * 3 }, (_, i) =>
    view.getFloat32(84 + 50 * Math.floor(i / 3) + 12 + 12 * (i % 3) + 8, true),
  )
  return { size: bytes.length, title: bytes.toString('latin1', 0, 80), triangles, heights }
}

describe('on clear', () => {
  it('writes the body as STL and 3MF and the report, standing on z = 0, in millimetres', async () => {
    const ran = await cli.run(['sled', cli.file('skiff.sledwright.json', clear), '--out', 'deep/down'])
    expect([ran.code, ran.err]).toEqual([0, ''])
    expect(namesIn('deep/down')).toEqual(['skiff-main.3mf', 'skiff-main.stl', 'skiff.sled.json'])
    const stl = readStl(folder('deep/down/skiff-main.stl'))
    expect(stl.size).toBe(84 + 50 * stl.triangles)
    expect(stl.title).toContain('mm')
    expect(Math.min(...stl.heights)).toBe(0)
    expect(Math.max(...stl.heights)).toBeCloseTo(80, 4)

    const report = JSON.parse(readFileSync(folder('deep/down/skiff.sled.json'), 'utf8'))
    expect(report).toMatchObject({ units: 'mm', proven: true, problems: [], report: { verdict: 'clear' } })
    const threeMf = readThreeMf(readFileSync(folder('deep/down/skiff-main.3mf')))
    expect(threeMf.faults).toEqual([])
    expect(threeMf.objects).toMatchObject([{ name: 'sled', triangles: stl.triangles }])

    const [sled] = report.sleds
    expect(sled).toMatchObject({ id: 'main', threeMf: 'skiff-main.3mf', material: null, mass: null })
    const [body] = sled.bodies
    expect(body).toMatchObject({ stl: 'skiff-main.stl', triangles: stl.triangles, pieces: 1, faults: [] })
    expect(report.files.map((f: { name: string }) => f.name)).toEqual(['skiff-main.stl', 'skiff-main.3mf'])
    expect(body.bounds.max[2] - body.bounds.min[2]).toBeCloseTo(80, 4)
    expect(body.volume).toBeGreaterThan(1000)
    expect(body.volume).toBeLessThan(Math.PI * 14.5 ** 2 * 80)
    for (const d of report.dimensions) {
      expect(d).toMatchObject({ how: expect.stringMatching(/^(typed|default|derived)$/), value: expect.any(Number) })
      expect(d.path).not.toBe('')
      expect(d.source).not.toBe('')
    }
    const how = Object.fromEntries(report.dimensions.map((d: { path: string; how: string }) => [d.path, d.how]))
    expect(how['sleds/main/diameter']).toBe('typed')
  })

  it('ends with the caution for cells, once, and says the unit', async () => {
    const { out } = await cli.here(['sled', cli.file('once.json', clear), '--out', 'once'])
    expect(out.replace(/\s+/g, ' ').split(cautions.cell)).toHaveLength(2)
    expect(out).toContain('Millimetres')
    expect(out).not.toContain('UNPROVEN')
  })

  it('writes the same bytes again', async () => {
    const path = cli.file('again.json', clear)
    for (const out of ['one', 'two']) await cli.run(['sled', path, '--out', out])
    for (const name of ['again-main.stl', 'again-main.3mf', 'again.sled.json'])
      expect(readFileSync(folder(`one/${name}`)).equals(readFileSync(folder(`two/${name}`)))).toBe(true)
  })

  it.each([
    [['--stl'], ['one-main.stl', 'one.sled.json']],
    [['--3mf'], ['one-main.3mf', 'one.sled.json']],
    [
      ['--3mf', '--stl'],
      ['one-main.3mf', 'one-main.stl', 'one.sled.json'],
    ],
    [
      ['--layout', 'assembled'],
      ['one-main-assembled.3mf', 'one-main-assembled.stl', 'one-assembled.sled.json'].toSorted(),
    ],
  ])('%j writes %j', async (options, names) => {
    const out = options.join('').replaceAll('-', '') || 'both'
    const ran = await cli.here(['sled', cli.file('one.json', clear), '--out', out, ...options])
    expect([ran.code, ran.err, namesIn(out)]).toEqual([0, '', names])
  })

  it('as assembled, the body lies where it is in the hilt', async () => {
    const ran = await cli.here(['sled', cli.file('hilt.json', clear), '--out', 'hilt', '--layout', 'assembled'])
    expect(ran.out.replace(/\s+/g, ' ')).toContain('as assembled: every body where it is in the hilt')
    const { heights } = readStl(folder('hilt/hilt-main-assembled.stl'))
    expect([Math.min(...heights), Math.max(...heights)]).toEqual([20, 100])
  })

  it('says of every body its size, which way up and why, its thinnest wall, and its weight where the material is known', async () => {
    const project = { ...clear, printer: [{ id: 'bench', name: 'bench', material: 'material-petg' }] }
    const { out } = await cli.here(['sled', cli.file('told.json', project), '--out', 'told'])
    const said = out.replace(/\s+/g, ' ')
    expect(said).toMatch(/sled: 29 × 29 × 80 mm, [\d.]+ cm³, [\d.]+–[\d.]+ g solid in PETG, \d+ triangles, closed/)
    expect(said).toMatch(/Upright on its (rear|blade) end/)
    expect(said).toMatch(
      /Thinnest wall [\d.]+ mm \(the process prints 1\.2\) at z [\d.]+, θ \d+°, r [\d.]+, (between|within)/,
    )
  })

  it('names the files that an earlier run left and this one did not write', async () => {
    const path = cli.file('left.json', clear)
    await cli.here(['sled', path, '--out', 'left'])
    writeFileSync(folder('left/left-main-2.stl'), 'an earlier piece')
    writeFileSync(folder('left/left-other.stl'), 'of no sled of this project')
    writeFileSync(folder('left/left-main-assembled.stl'), 'another layout')
    const ran = await cli.here(['sled', path, '--out', 'left', '--stl'])
    const said = ran.err.replace(/\s+/g, ' ')
    expect(ran.code).toBe(0)
    for (const name of ['left-main.3mf', 'left-main-2.stl'])
      expect(said).toContain(`left/${name} is from an earlier run and was not written anew`)
    expect(said).not.toMatch(/left-main\.stl|other|assembled/)
  })

  it('names the files of a project from standard input after its job', async () => {
    const ran = await cli.run(['sled', '-', '--out', 'piped'], { input: JSON.stringify(clear) })
    expect([ran.code, namesIn('piped')]).toEqual([0, ['skiff-main.3mf', 'skiff-main.stl', 'skiff.sled.json']])
  })
})

it('on unsure it writes too, and says why it is unsure', async () => {
  const doubtful = { value: 30, plus: 0.6, minus: 0.6 }
  const [body] = clear.sections ?? []
  const loose = { ...clear, sections: [{ ...body, bore: [{ id: 'main', diameter: doubtful }] }] }
  const ran = await cli.here(['sled', cli.file('loose.json', loose), '--out', 'loose'])
  expect(ran.out).toMatch(/^UNSURE /)
  expect([ran.code, namesIn('loose')]).toEqual([0, ['loose-main.3mf', 'loose-main.stl', 'loose.sled.json']])
})

describe('on a clash', () => {
  it('writes nothing, names the finding, and warns of what an earlier run left', async () => {
    mkdirSync(folder('refused'))
    writeFileSync(folder('refused/neck-main.stl'), 'old')
    writeFileSync(folder('refused/neck-main.3mf'), 'old')
    const ran = await cli.here(['sled', cli.file('neck.json', clash), '--out', 'refused'])
    expect(ran.code).toBe(2)
    expect(ran.out).toMatch(/^CLASH {2}sled on the way in: mouth/)
    expect(ran.err).toMatch(/neck-main\.stl is from an earlier run: do not print it/)
    expect(ran.err).toMatch(/neck-main\.3mf is from an earlier run: do not print it/)
    expect(namesIn('refused')).toEqual(['neck-main.3mf', 'neck-main.stl'])
    expect(readFileSync(folder('refused/neck-main.stl'), 'utf8')).toBe('old')
  })

  it('writes when forced, and says so in every name and in the files', async () => {
    const ran = await cli.here(['sled', cli.file('forced.json', clash), '--out', 'forced', '--force'])
    expect([ran.code, namesIn('forced')]).toEqual([
      0,
      ['forced-UNPROVEN.sled.json', 'forced-main-UNPROVEN.3mf', 'forced-main-UNPROVEN.stl'],
    ])
    const threeMf = readThreeMf(readFileSync(folder('forced/forced-main-UNPROVEN.3mf')))
    expect(threeMf.metadata['Title']).toContain('UNPROVEN')
    expect(threeMf.objects.map((o) => o.name)).toEqual(['UNPROVEN sled'])
    expect(readStl(folder('forced/forced-main-UNPROVEN.stl')).title).toContain('UNPROVEN')
    const report = JSON.parse(readFileSync(folder('forced/forced-UNPROVEN.sled.json'), 'utf8'))
    expect(report).toMatchObject({ proven: false, report: { verdict: 'clash' } })
  })
})

it('a forced file stands beside the proven one of an earlier run, which is named', async () => {
  const path = cli.file('turned.json', clear)
  await cli.here(['sled', path, '--out', 'turned', '--stl'])
  cli.file('turned.json', clash)
  const ran = await cli.here(['sled', path, '--out', 'turned', '--stl', '--force'])
  expect(ran.code).toBe(0)
  expect(ran.err.replace(/\s+/g, ' ')).toContain('turned-main.stl is from an earlier run')
})

it('an unknown layout is refused with those there are', async () => {
  const ran = await cli.here(['sled', cli.file('layout.json', clear), '--out', 'layout', '--layout', 'flat'])
  expect([ran.code, ran.out, namesIn('layout')]).toEqual([64, '', []])
  expect(ran.err).toMatch(/no layout "flat"[^]*printed, assembled/)
})

describe('a sled that cannot be made', () => {
  it.each([
    ['no sled at all', { ...clear, sleds: [], insertions: [], parts: [] }, 'sleds'],
    [
      'a sled whose way in is not measured',
      {
        ...clear,
        sections: [{ id: 'body', length: 150, bore: [{ id: 'main' }] }],
        sleds: [{ id: 'main', from: 20, to: 100 }],
      },
      'sleds/main/diameter',
    ],
  ])('%s: says what is missing', async (_what, project, path) => {
    const ran = await cli.here(['sled', cli.file('none.json', project), '--out', 'none'])
    expect(ran.code).toBe(65)
    expect(ran.err).toContain(path)
    expect(namesIn('none')).toEqual([])
  })

  it('one that falls to pieces is refused by the gate, and when forced says what is wrong', async () => {
    // Nothing but the sled, cut through by a window as deep as the axis all around.
    const cut = {
      ...clear,
      parts: [],
      sleds: [
        {
          ...clear.sleds?.[0],
          windows: [{ id: 'gash', theta: 0, width: 80, floor: -16, from: 50, to: 60 }],
        },
      ],
    }
    const path = cli.file('cut.json', cut)
    const ran = await cli.here(['sled', path, '--out', 'cut'])
    expect([ran.code, namesIn('cut')]).toEqual([2, []])
    expect(ran.err).toContain('2 pieces')
    const forced = await cli.here(['sled', path, '--out', 'cut', '--force'])
    expect([forced.code, namesIn('cut')]).toEqual([
      0,
      ['cut-UNPROVEN.sled.json', 'cut-main-UNPROVEN.3mf', 'cut-main-UNPROVEN.stl'],
    ])
    expect(forced.out).toContain('2 pieces')
  })
})

describe('a folder that cannot be written to', () => {
  it.each([
    ['a file has its name', () => cli.file('taken', 'x'), 'A file has that name'],
    ['a file stands in its way', () => join(cli.file('blocked', 'x'), 'inner'), 'stands in its path'],
    ['it is no place for files', () => '/proc/none', 'Nothing was written'],
  ])('%s', async (_what, out, hint) => {
    const ran = await cli.here(['sled', cli.file('way.json', clear), '--out', out()])
    expect(ran.code).toBe(65)
    expect(ran.err.replace(/\s+/g, ' ')).toContain(hint)
    expect(ran.err.replace(/\s+/g, ' ')).toContain('Nothing was written')
  })

  it.each(['way-main.stl', 'way-main.3mf', 'way.sled.json'])(
    'a folder in the place of %s: nothing is left behind, and none of the others is written',
    async (name) => {
      const out = `half-${name}`
      mkdirSync(folder(`${out}/${name}`), { recursive: true })
      const ran = await cli.here(['sled', cli.file('way.json', clear), '--out', out])
      expect(ran.code).toBe(65)
      expect(ran.err.replace(/\s+/g, ' ')).toContain('A folder has the name that a file should get')
      expect(namesIn(out)).toEqual([name])
    },
  )

  it('no folder is named', async () => {
    const path = cli.file('way.json', clear)
    expect((await cli.here(['sled', path])).code).toBe(64)
    expect((await cli.here(['sled', path, '--out', ''])).code).toBe(64)
  })
})
