import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { checks } from '../../../src/checks/checks.ts'
import { demos } from '../../../src/job/demos/index.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import { rules } from '../../../src/rules/index.ts'
import { command, runHere, tooLong } from './command.ts'

const root = join(import.meta.dirname, '..', '..', '..')
const cli = command()

describe('demo', () => {
  it('alone lists the names, one a line', async () => {
    const ran = await cli.run(['demo'])
    expect(ran).toEqual({ code: 0, out: demos.map((d) => `${d.name}\n`).join(''), err: '' })
    for (const { name } of demos) expect(name).toMatch(/^[a-z]+(-[a-z]+)*$/)
  })

  it.each(demos)('$name prints a project that says it is invented, and that can be judged', async ({ name }) => {
    const { code, out } = await runHere(['demo', name])
    expect(code).toBe(0)
    expect(JSON.parse(out).job[0].invented).toBe(true)
    expect((await runHere(['check', '-'], out)).code).toBeLessThanOrEqual(2)
  })

  it('knows no other, and says which it knows', async () => {
    const ran = await cli.run(['demo', 'none'])
    expect([ran.code, ran.out]).toEqual([64, ''])
    expect(ran.err).toContain(demos[0]?.name)
  })
})

describe('calc', () => {
  it('--list --json gives every rule with what it takes and gives', async () => {
    const { code, out } = await cli.run(['calc', '--list', '--json'])
    expect(code).toBe(0)
    const list = JSON.parse(out)
    expect(list.map((r: { name: string }) => r.name)).toEqual(rules.map((r) => r.name))
    for (const r of list) {
      for (const field of ['title', 'what', 'formula']) expect(r[field].length).toBeGreaterThan(5)
      expect(r.sources.length).toBeGreaterThan(0)
      for (const n of [...r.inputs, ...r.outputs])
        expect(n).toMatchObject({ name: expect.any(String), unit: expect.any(String) })
    }
  })

  it('--list says the same in words, within 100 columns', async () => {
    const { code, out } = await runHere(['calc', '--list'])
    expect(code).toBe(0)
    for (const r of rules) expect(out).toContain(`\n${r.name}  ${r.title}`.slice(r === rules[0] ? 1 : 0))
    expect(tooLong(out)).toEqual([])
    const one = await runHere(['calc', '--list', 'jaw-flat'])
    expect(one.out.startsWith('jaw-flat  ')).toBe(true)
  })

  it.each(rules)('$name runs its example as it stands in the list', async (rule) => {
    const pairs = Object.entries(rule.example).map(([k, v]) => `${k}=${v}`)
    const json = await runHere(['calc', rule.name, ...pairs, '--json'])
    expect(json.code).toBe(0)
    const { rule: name, outputs, units } = JSON.parse(json.out)
    expect(name).toBe(rule.name)
    expect(Object.keys(outputs).toSorted()).toEqual(Object.keys(units).toSorted())
    const text = await runHere(['calc', rule.name, ...pairs])
    expect(text.code).toBe(0)
    expect(tooLong(text.out)).toEqual([])
  })

  it('a number worked by hand, through the command itself: √(25² + 1²)', async () => {
    const { out } = await cli.run(['calc', 'jaw-flat', 'reading=25', 'jawFlat=1', '--json'])
    expect(JSON.parse(out).outputs.bore).toBeCloseTo(25.01999, 5)
  })

  it.each([
    [[], 'Name a rule'],
    [['none'], 'axial-chain'],
    [['jaw-flat'], 'jaw-flat/reading'],
    [['jaw-flat', 'reading=-1', 'jawFlat=1'], 'above 0'],
    [['jaw-flat', 'reading=NaN', 'jawFlat=1'], 'jaw-flat/reading'],
    [['jaw-flat', 'reading'], 'name=value'],
  ])('%o is wrong usage, and says what is right', async (args, says) => {
    const ran = await runHere(['calc', ...args])
    expect([ran.code, ran.out]).toEqual([64, ''])
    expect(ran.err).toContain(says)
  })

  it('lists problems as JSON where JSON is asked for', async () => {
    const ran = await runHere(['calc', 'jaw-flat', 'reading=0', '--json'])
    expect(ran.code).toBe(64)
    expect(JSON.parse(ran.out).problems[0]).toMatchObject({ code: 'out-of-range', path: 'jaw-flat/reading' })
  })
})

describe('presets and checks', () => {
  const { kinds } = loadPresets()

  it('presets lists every entry under its kind', async () => {
    const { code, out } = await cli.run(['presets'])
    expect(code).toBe(0)
    for (const kind of kinds) expect(out).toContain(`# ${kind}\n`)
    expect(out.split('\n').filter((line) => /^[a-z0-9-]+: /.test(line))).toHaveLength(
      kinds.reduce((n, k) => n + loadPresets().ofKind(k).length, 0),
    )
  })

  it.each(kinds)('presets %s lists only these, also as JSON', async (kind) => {
    const ids = loadPresets()
      .ofKind(kind)
      .map((p) => p.id)
    const { out } = await runHere(['presets', kind])
    expect(
      out
        .trimEnd()
        .split('\n')
        .map((line) => line.split(':')[0]),
    ).toEqual(ids)
    const json = JSON.parse((await runHere(['presets', kind, '--json'])).out)
    expect(json.map((p: { id: string }) => p.id)).toEqual(ids)
  })

  it('an unknown kind is wrong usage', async () => {
    const ran = await cli.run(['presets', 'spoons'])
    expect(ran.code).toBe(64)
    expect(ran.err).toContain('speaker')
  })

  it('checks names each check and what it looks at', async () => {
    const { out } = await cli.run(['checks'])
    for (const { name, title } of checks) expect(out).toMatch(new RegExp(`^${name} +${title}\\.`, 'm'))
    const json = JSON.parse((await runHere(['checks', '--json'])).out)
    expect(json).toEqual(checks.map(({ name, title, what }) => ({ name, title, what })))
  })
})

describe('schema', () => {
  it('prints what stands in public/schema (else: sledwright schema > public/schema/sledwright-1.schema.json)', async () => {
    const { code, out } = await cli.run(['schema'])
    expect(code).toBe(0)
    expect(out).toBe(readFileSync(join(root, 'public', 'schema', 'sledwright-1.schema.json'), 'utf8'))
  })

  it('is JSON Schema 2020-12, needs format and version, and knows every list', async () => {
    const schema = JSON.parse((await runHere(['schema'])).out)
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema')
    expect(schema.required).toEqual(['format', 'version'])
    expect(schema.properties).toMatchObject({ format: { const: 'sledwright' }, version: { const: 1 } })
    for (const list of [
      'hilts',
      'sections',
      'parts',
      'sleds',
      'insertions',
      'states',
      'vents',
      'permissions',
      'record',
    ])
      expect(schema.properties).toHaveProperty(`${list}.type`, 'array')
    const refs = [...JSON.stringify(schema).matchAll(/"#\/\$defs\/([^"]+)"/g)].map((m) => m[1] as string)
    expect(refs.length).toBeGreaterThan(20)
    for (const ref of refs) expect(schema.$defs).toHaveProperty(ref)
  })
})
