import { describe, expect, it } from 'vitest'
import { demos } from '../../../src/job/demos/index.ts'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { command, runHere, tooLong } from './command.ts'
import { clash, clear, unsure } from './projects.ts'

type Section = NonNullable<ProjectInput['sections']>[number]

const cli = command()

const everyProject: readonly { readonly name: string; readonly project: unknown }[] = [
  { name: 'clear', project: clear },
  { name: 'unsure', project: unsure },
  { name: 'clash', project: clash },
  ...demos,
]

describe('the exit code tells the verdict', () => {
  it.each([
    ['clear', clear, 0],
    ['unsure', unsure, 1],
    ['clash', clash, 2],
  ] as const)('%s', async (word, project, code) => {
    const path = cli.file(`${word}.json`, project)
    const [text, json] = [await cli.run(['check', path]), await cli.run(['check', path, '--json'])]
    expect([text.code, json.code]).toEqual([code, code])
    expect(text.out.startsWith(`${word.toUpperCase()}  `)).toBe(true)
    expect(JSON.parse(json.out).verdict).toBe(word)
    expect(text.err + json.err).toBe('')
  })

  it('reads standard input, and says the same of it', async () => {
    const path = cli.file('same.json', clear)
    const [file, piped] = [
      await cli.run(['check', path]),
      await cli.run(['check', '-'], { input: JSON.stringify(clear) }),
    ]
    expect(piped).toEqual(file)
  })

  it('reads a file that begins with a byte order mark', async () => {
    const { code } = await cli.run(['check', cli.file('bom.json', `\ufeff${JSON.stringify(clear)}`)])
    expect(code).toBe(0)
  })

  it('looks at one state, and knows no other', async () => {
    const path = cli.file('states.json', {
      ...clear,
      states: [{ id: 'closed' }, { id: 'open', without: ['parts/cell'] }],
    })
    const open = await cli.run(['check', path, '--state', 'open', '--json'])
    expect([open.code, JSON.parse(open.out).state]).toEqual([0, 'open'])
    const none = await cli.run(['check', path, '--state', 'afloat'])
    expect(none.code).toBe(64)
    expect(none.err).toContain('closed, open')
  })

  it('names the hilts it did not look at, and looks at the one that is asked for', async () => {
    const two = {
      ...clear,
      hilts: [
        { id: 'hilt', name: 'First' },
        { id: 'second', name: 'Second' },
      ],
      sections: [...(clear.sections ?? []), { ...(clear.sections?.[0] as Section), id: 'other', hilt: 'second' }],
    }
    const path = cli.file('hilts.json', two)
    const first = JSON.parse((await cli.run(['check', path, '--json'])).out)
    expect([first.hilt, first.notices]).toEqual(['First', ['Only the hilt "First" was looked at, not "Second".']])
    expect(JSON.parse((await cli.run(['check', path, '--json', '--hilt', 'second'])).out).hilt).toBe('Second')
    expect((await cli.run(['check', path, '--hilt', 'third'])).code).toBe(64)
  })

  it.each([
    ['a board that goes onto the sled later', { goesIn: 'after' }, 'parts/board/goesIn'],
    ['a board that is on the sled already', { goesIn: 'before' }, 'parts/board/goesIn'],
    ['a board pushed into the hilt last', { goesIn: 'after', on: 'sections/body' }, 'insertions'],
  ])('is not clear where nobody says how %s goes in', async (_what, how, path) => {
    const board = {
      id: 'board',
      kind: 'board',
      body: { shape: 'box', width: 10, height: 5, length: 10 },
      at: { z: 120 },
    }
    const project = { ...clear, parts: [...(clear.parts ?? []), { ...board, ...how }] }
    const { out } = await runHere(['check', '-', '--json'], JSON.stringify(project))
    const report = JSON.parse(out)
    expect(report.verdict).toBe('unsure')
    expect(report.notChecked).toEqual([expect.objectContaining({ id: 'fitted-after:parts/board:way', path })])
  })

  it('says which fields it keeps and does not know', async () => {
    const path = cli.file('later.json', { ...clear, lanterns: [], parts: [{ ...clear.parts?.[0], smell: 'none' }] })
    const { out } = await cli.run(['check', path])
    expect(out).toContain('The field lanterns is not known to this version')
    expect(out).toContain('parts/cell/smell')
  })
})

describe('the report as JSON', () => {
  it.each(everyProject)('of $name has every field that is promised', async ({ project }) => {
    const { out } = await cli.run(['check', '-', '--json'], { input: JSON.stringify(project) })
    const report = JSON.parse(out)
    expect(report).toMatchObject({
      verdict: expect.stringMatching(/^(clear|unsure|clash)$/),
      findings: expect.any(Array),
      notChecked: expect.any(Array),
    })
    expect(report.findings.length + report.notChecked.length).toBeGreaterThan(0)
    for (const f of report.findings) {
      expect(f).toEqual(findingShape)
      for (const c of f.contributors) expect(c).toMatchObject({ path: anyText, share: anyNumber, kind: kinds })
      for (const fix of f.fix) expect(fix).toEqual({ text: anyText, path: anyText, value: orNull(anyNumber) })
    }
    for (const n of report.notChecked)
      expect(n).toMatchObject({ id: anyText, status: 'not-checked', path: anyText, hint: anyText })
    const counted = report.findings.filter((f: { status: string }) => f.status !== 'advice')
    expect(report.tightest?.id).toBe(counted[0]?.id)
    const { worst, nominal, best } = report.tightest.margin
    expect(worst <= nominal && nominal <= best).toBe(true)
  })

  it('is the same, byte for byte, on every run', async () => {
    const input = JSON.stringify(clear)
    const [a, b] = [
      await cli.run(['check', '-', '--json'], { input }),
      await cli.run(['check', '-', '--json'], { input }),
    ]
    expect(a.out).toBe(b.out)
  })
})

describe('the report for a person', () => {
  it.each(everyProject)('of $name fits 100 columns, in brief and in full', async ({ project }) => {
    for (const more of [[], ['--full']]) {
      const { out } = await runHere(['check', '-', ...more], JSON.stringify(project))
      expect(out.length).toBeGreaterThan(100)
      expect(tooLong(out)).toEqual([])
    }
  })

  it('tells of a clash what, where, why, what would help, and where the limit comes from', async () => {
    const { out } = await cli.run(['check', '-'], { input: JSON.stringify(clash) })
    expect(out).toMatch(/^CLASH {2}sled on the way in: mouth: .* too little/)
    for (const label of ['why', 'fix', 'limit', 'state']) expect(out).toMatch(new RegExp(`^ {11}${label} `, 'm'))
    expect(out).toMatch(/−\d\.\d\d/)
    expect(out).not.toMatch(/(^|\s)-\d/m)
  })

  it('tells of an unmeasured bore what to read', async () => {
    const { out } = await cli.run(['check', '-'], { input: JSON.stringify(unsure) })
    expect(out).toMatch(/^UNSURE {2}Not measured: bore diameter: Read it with inside jaws/)
    expect(out).toContain('Not checked')
  })

  it('says of an unsure verdict that it rests on what was assumed', async () => {
    const [body] = clear.sections ?? []
    const assumed = { value: 32, plus: 0.1, minus: 0.1, source: 'assumed' }
    const project = { ...clear, sections: [{ ...body, bore: [{ id: 'main', diameter: assumed }] }] }
    const { code, out } = await runHere(['check', '-'], JSON.stringify(project))
    expect(code).toBe(1)
    expect(out).toMatch(/^UNSURE {2}sled in place: .* to spare at the worst/)
    expect(out.replace(/\s+/g, ' ')).toContain('; it rests on an assumed size')
    expect(out).not.toContain('chance')
  })

  it('lets no control character of a file through to the terminal', async () => {
    const evil = { ...clash, hilts: [{ id: 'hilt', name: 'a\u001b[2Jb\u0007\u202e' }] }
    const { out } = await cli.run(['check', '-'], { input: JSON.stringify(evil) })
    expect(out).toContain('a?[2Jb??')
    expect(out.replaceAll('\n', '')).not.toMatch(/\p{Cc}|\u202e/u)
  })
})

const kinds = expect.stringMatching(/^(unknown|varies)$/)
const [anyText, anyNumber] = [expect.any(String), expect.any(Number)]
const orNull = (shape: unknown) => ({ asymmetricMatch: (v: unknown) => v === null || matches(v, shape) })

function matches(value: unknown, shape: unknown): boolean {
  try {
    expect(value).toEqual(shape)
    return true
  } catch {
    return false
  }
}

const findingShape = {
  id: anyText,
  check: anyText,
  title: anyText,
  status: expect.stringMatching(/^(clear|unsure|clash|advice)$/),
  value: anyNumber,
  limit: anyNumber,
  unit: expect.stringMatching(/^(mm|°|%)$/),
  margin: { worst: anyNumber, nominal: anyNumber, best: anyNumber },
  settled: anyNumber,
  probability: orNull(anyNumber),
  contributors: expect.any(Array),
  at: orNull({ z: anyNumber, theta: anyNumber, r: anyNumber }),
  parts: expect.any(Array),
  state: anyText,
  why: anyText,
  source: anyText,
  fix: expect.any(Array),
}
