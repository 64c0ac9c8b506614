import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { calculate, findRule, rules } from '../../../src/rules/index.ts'
import { allowedText } from '../../../src/rules/inputs.ts'

function run(name: string, ...inputs: readonly string[]) {
  const outcome = calculate(name, inputs)
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems))
  return outcome.value
}

function problems(name: string, ...inputs: readonly string[]) {
  const outcome = calculate(name, inputs)
  if (outcome.ok) throw new Error(JSON.stringify(outcome.value))
  return outcome.problems
}

describe.each(rules.map((rule) => [rule.name, rule] as const))('rule %s', (name, rule) => {
  it('is described in full', () => {
    expect(name).toMatch(/^[a-z]+(-[a-z]+)*$/)
    for (const text of [rule.title, rule.what, rule.formula]) expect(text.length).toBeGreaterThan(5)
    expect(rule.sources.length).toBeGreaterThan(0)
    for (const { what } of [...rule.inputs, ...rule.outputs]) expect(what).toMatch(/\.$/)
    const names = rule.inputs.map((i) => i.name)
    expect(new Set(names).size).toBe(names.length)
    for (const input of rule.inputs) expect(allowedText(input)).not.toBe('')
  })

  it('runs its example and fills every output it names, and no other', () => {
    const outputs = run(name, ...Object.entries(rule.example).map(([key, value]) => `${key}=${value}`))
    expect(Object.keys(outputs).toSorted()).toEqual(rule.outputs.map((o) => o.name).toSorted())
    for (const value of Object.values(outputs)) {
      if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true)
    }
  })

  it('survives JSON, as the list of rules and as a result', () => {
    const outputs = run(name, ...Object.entries(rule.example).map(([key, value]) => `${key}=${value}`))
    expect(JSON.parse(JSON.stringify(outputs))).toEqual(outputs)
    const { run: _run, ...card } = rule
    expect(JSON.parse(JSON.stringify(rule))).toEqual(card)
  })

  it('says what is missing, and what an unknown input could have been', () => {
    for (const input of rule.inputs) {
      if (input.default !== undefined || input.optional) continue
      const rest = Object.entries(rule.example).filter(([key]) => key !== input.name)
      const [missing] = problems(name, ...rest.map(([key, value]) => `${key}=${value}`))
      expect(missing).toMatchObject({ code: 'missing', path: `${name}/${input.name}` })
      expect(missing?.hint).toContain(`${input.name}=`)
    }
    const unknown = problems(name, 'nonsense=1').find((p) => p.path === `${name}/nonsense`)
    expect(unknown?.code).toBe('unknown-value')
    for (const input of rule.inputs) expect(unknown?.hint).toContain(input.name)
  })

  it('refuses numbers outside the range of each input, and what is no number', () => {
    for (const input of rule.inputs) {
      if (input.text) continue
      const { min, max, exclusiveMin } = input.range ?? {}
      const outside = [min === undefined ? undefined : min - 1, max === undefined ? undefined : max + 1, exclusiveMin]
      for (const value of [...outside, 'NaN', 'Infinity', '1e999', '--5', 'x'.repeat(10_000), '']) {
        if (value === undefined) continue
        const found = problems(name, `${input.name}=${value}`).filter((p) => p.path.startsWith(`${name}/${input.name}`))
        expect(found.length).toBeGreaterThan(0)
      }
    }
  })

  it('never throws on anything typed (seed 81)', () => {
    const inputs = fc.array(
      fc.tuple(fc.constantFrom(...rule.inputs.map((i) => i.name), 'x', '', '__proto__'), fc.string({ maxLength: 20 })),
      { maxLength: 5 },
    )
    fc.assert(
      fc.property(inputs, (pairs) => {
        const outcome = calculate(
          name,
          pairs.map(([key, value]) => `${key}=${value}`),
        )
        expect(outcome.ok || outcome.problems.length > 0).toBe(true)
      }),
      { seed: 81, numRuns: 300 },
    )
  })
})

describe('inputs as typed', () => {
  it('take units, fractions, lists and commas', () => {
    expect(run('jaw-flat', 'reading=1in', 'jawFlat=1/32in').bore).toBeCloseTo(Math.hypot(25.4, 25.4 / 32), 9)
    expect(run('jaw-flat', 'reading=25,4', 'jawFlat=1').bore).toBeCloseTo(Math.hypot(25.4, 1), 9)
    expect(run('size-from-readings', 'readings=25.02,25.03').nominal).toBeCloseTo(25.025, 9)
    expect(run('size-from-readings', 'readings=25,02; 25,03').nominal).toBeCloseTo(25.025, 9)
    expect(run('size-from-readings', 'readings=1in, 25.4').nominal).toBeCloseTo(25.4, 9)
    expect(run('thread-free-bore', 'thread=M33x1.5', 'class=6G').least).toBeCloseTo(31.4077, 4)
  })

  it('take values already read, as numbers', () => {
    const outcome = calculate(
      'size-from-readings',
      new Map<string, number | number[]>([
        ['readings', [25.02, 25.03]],
        ['mpe', 0.02],
      ]),
    )
    expect(outcome.ok && outcome.value.nominal).toBeCloseTo(25.025, 9)
    const wrong = calculate(
      'size-from-readings',
      new Map<string, number | number[]>([
        ['readings', 25],
        ['mpe', [1, 2]],
      ]),
    )
    expect(!wrong.ok && wrong.problems[0]).toMatchObject({ code: 'wrong-type', path: 'size-from-readings/mpe' })
    const none = calculate(
      'jaw-flat',
      new Map([
        ['reading', Number.NaN],
        ['jawFlat', 1],
      ]),
    )
    expect(!none.ok && none.problems[0]).toMatchObject({ code: 'not-a-number', path: 'jaw-flat/reading' })
  })

  it.each([
    [['reading'], 'wrong-type', 'jaw-flat'],
    [['=5'], 'wrong-type', 'jaw-flat'],
    [['reading=25', 'reading=26'], 'duplicate-id', 'jaw-flat/reading'],
    [['reading=25 ±0.1', 'jawFlat=1'], 'wrong-type', 'jaw-flat/reading'],
    [['reading=25', 'jawFlat=20'], 'out-of-range', 'jaw-flat/jawFlat'],
    [['reading=25', 'jawFlat=1 1/2'], 'unknown-unit', 'jaw-flat/jawFlat'],
  ])('%o: %s', (inputs, code, path) => {
    expect(problems('jaw-flat', ...inputs)).toContainEqual(expect.objectContaining({ code, path }))
  })

  it('report everything that is wrong at once, each in its place', () => {
    const paths = problems('bore-from-readings', 'readings=28.1, 0, -2', 'mpe=-1', 'foo=2').map((p) => p.path)
    expect(paths).toEqual([
      'bore-from-readings/foo',
      'bore-from-readings/readings/1',
      'bore-from-readings/readings/2',
      'bore-from-readings/mpe',
    ])
  })

  it('an unknown rule lists those there are', () => {
    const outcome = findRule('bore')
    expect(!outcome.ok && outcome.problems[0]?.hint).toContain('bore-from-readings')
    expect(calculate('__proto__', []).ok).toBe(false)
  })
})

describe('bore from readings, from the command line’s side', () => {
  it('three directions give the least diameter between its limits, and need no more', () => {
    const out = run('bore-from-readings', 'readings=28.02, 27.96, 28.05', 'angles=0,60,120', 'mpe=0.03')
    const mean = (28.02 + 27.96 + 28.05) / 3
    const amplitude = Math.sqrt((2 / 3) * [28.02, 27.96, 28.05].reduce((s, d) => s + (d - mean) ** 2, 0))
    expect(out.nominal).toBeCloseTo(mean - amplitude, 9)
    expect(out.least).toBeLessThan(out.nominal as number)
    expect(out.greatest).toBeGreaterThan(mean + amplitude)
    expect(out).toMatchObject({ directions: 3, dof: 'infinite', ask: '' })
  })

  it('one reading asks for directions; stations are told apart', () => {
    expect(run('bore-from-readings', 'readings=28').ask).toContain('0°, 60° and 120°')
    const out = run('bore-from-readings', 'readings=28; 27.9', 'depths=10; 1in')
    expect(out.stationDepths).toEqual([10, 25.4])
    expect(out.nominal).toBe(27.9)
  })

  it('as many angles as readings', () => {
    const [p] = problems('bore-from-readings', 'readings=28; 27.9', 'angles=0')
    expect(p).toMatchObject({ code: 'contradiction', path: 'bore-from-readings/angles' })
  })
})

describe('presets/tools.json', () => {
  const tools: { entries: { id: string; mpe: number; resolution: number; jaws: boolean; how: string }[] } = JSON.parse(
    readFileSync(new URL('../../../presets/tools.json', import.meta.url), 'utf8'),
  )

  it('has the measuring errors of the trade, ± mm (common practice, no source)', () => {
    expect(Object.fromEntries(tools.entries.map((t) => [t.id, t.mpe]))).toEqual({
      'calliper-outside': 0.03,
      'calliper-inside': 0.1,
      'calliper-depth': 0.1,
      'telescoping-gauge': 0.03,
      'printed-plug': 0.05,
    })
  })

  it('says of each how it is known, and only inside jaws have flats', () => {
    for (const t of tools.entries) {
      expect(t.how).toBe('common practice, no source')
      expect(t.resolution).toBeGreaterThan(0)
      expect(t.jaws).toBe(t.id === 'calliper-inside')
    }
  })
})
