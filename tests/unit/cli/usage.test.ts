import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { bugText, guarded } from '../../../src/cli/guard.ts'
import { command, runHere, tooLong } from './command.ts'

const root = join(import.meta.dirname, '..', '..', '..')
const cli = command()
const names = ['check', 'sled', 'demo', 'calc', 'presets', 'checks', 'schema']

describe('help', () => {
  it('names every command and explains every exit code', async () => {
    const { code, out } = await cli.run(['--help'])
    expect(code).toBe(0)
    for (const name of names) expect(out).toMatch(new RegExp(`^ {2}${name}\\b`, 'm'))
    for (const exit of [0, 1, 2, 64, 65, 70]) expect(out).toMatch(new RegExp(`^ {2}${exit} +\\w`, 'm'))
  })

  it.each(names)('of %s', async (name) => {
    for (const args of [
      [name, '--help'],
      ['help', name],
    ]) {
      const { code, out } = await runHere(args)
      expect(code).toBe(0)
      expect(out).toContain(`Usage: sledwright ${name}`)
      expect(tooLong(out)).toEqual([])
    }
  })

  it('the version is that of the package', async () => {
    const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
    expect(await cli.run(['--version'])).toEqual({ code: 0, out: `${version}\n`, err: '' })
  })
})

describe('wrong usage ends with 64 and a sentence on the error output', () => {
  it.each([
    [[], 'Usage: sledwright'],
    [['chek'], 'Did you mean check?'],
    [['check'], "Missing required argument 'project'"],
    [['check', 'a', 'b'], 'Too many arguments'],
    [['check', '-', '--jsn'], "Unknown option '--jsn'"],
    [['check', '-', '--state'], "'--state <name>'"],
    [['sled', '-'], "'--out <folder>'"],
  ])('%o', async (args, says) => {
    const ran = await cli.run(args)
    expect([ran.code, ran.out]).toEqual([64, ''])
    expect(ran.err).toContain(says)
  })
})

describe('a fault of the program', () => {
  const fault = () => Promise.reject(new RangeError('a margin is\nnot a number'))
  const told = async (debug: boolean) => {
    let err = ''
    const code = await guarded(
      fault,
      {
        err: (text) => {
          err += text
        },
      },
      debug,
    )
    return { code, err }
  }

  it('ends with 70 and one plain sentence', async () => {
    const { code, err } = await told(false)
    expect(code).toBe(70)
    expect(err.split('\n')).toHaveLength(2)
    expect(err).toContain('RangeError: a margin is not a number')
    expect(err).not.toMatch(/\bat \S+:\d+/)
  })

  it('shows where it happened to who asks', async () => {
    expect((await told(true)).err).toMatch(/usage\.test\.ts:\d+/)
    expect(bugText('no error object', true)).toContain('no error object')
  })
})
