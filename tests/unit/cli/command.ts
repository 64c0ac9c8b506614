import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { build } from 'vite'
import { afterAll, beforeAll } from 'vitest'
import type { Io } from '../../../src/cli/io.ts'
import { run } from '../../../src/cli/program.ts'

const root = join(import.meta.dirname, '..', '..', '..')

export interface Ran {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

export interface Command {
  /** Runs the built command with these arguments, in a folder of its own. */
  readonly run: (args: readonly string[], options?: RunOptions) => Promise<Ran>
  /** The same program in the same folder without a process of its own: for what is not about the process. */
  readonly here: (args: readonly string[]) => Promise<Ran>
  /** Writes a file into that folder and gives its path. */
  readonly file: (name: string, content: string | Uint8Array | object) => string
  readonly folder: () => string
}

interface RunOptions {
  readonly input?: string | Uint8Array
  readonly env?: Record<string, string>
}

/** The command as it is built for people, made anew for the file of tests that asks, with a folder to work in. */
export function command(): Command {
  // Inside the project, so that the packages are found.
  const built = join(root, 'node_modules', '.cache', 'sledwright', `cli-${process.pid}-${Date.now()}`)
  const before = process.cwd()
  let folder = ''
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'sledwright-'))
    process.chdir(folder)
    await build({ root, logLevel: 'silent', build: { ssr: 'src/cli/main.ts', outDir: built } })
  })
  afterAll(() => {
    process.chdir(before)
    rmSync(built, { recursive: true, force: true })
    rmSync(folder, { recursive: true, force: true })
  })
  return {
    here: (args) => runHere(args),
    run: (args, options = {}) => start(join(built, 'sledwright.js'), args, folder, options),
    file: (name, content) => {
      const path = join(folder, name)
      const raw = typeof content === 'string' || content instanceof Uint8Array
      writeFileSync(path, raw ? content : JSON.stringify(content))
      return path
    },
    folder: () => folder,
  }
}

/** The same program without a process of its own: quicker, for what is only said. */
export async function runHere(args: readonly string[], input = ''): Promise<Ran> {
  let [out, err] = ['', '']
  const io: Io = {
    out: (text) => {
      out += text
    },
    err: (text) => {
      err += text
    },
    stdin: Readable.from([input]),
    colour: false,
    width: 100,
  }
  const code = await run(args, io)
  return { code, out, err }
}

function start(program: string, args: readonly string[], cwd: string, { input, env = {} }: RunOptions): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [program, ...args], { cwd, env: { ...process.env, ...env } })
    let [out, err] = ['', '']
    child.stdout.setEncoding('utf8').on('data', (text) => {
      out += text
    })
    child.stderr.setEncoding('utf8').on('data', (text) => {
      err += text
    })
    child.on('error', reject)
    child.on('close', (code) => resolve({ code, out, err }))
    // A command that refuses what it is given stops reading, which is not the test's business.
    child.stdin.on('error', () => undefined)
    child.stdin.end(input ?? '')
  })
}

/** Runs all of a list, a few at a time, in its order. */
export async function each<T, R>(list: readonly T[], action: (item: T) => Promise<R>, atOnce = 3): Promise<R[]> {
  const results: R[] = []
  let next = 0
  const worker = async () => {
    for (let i = next++; i < list.length; i = next++) results[i] = await action(list[i] as T)
  }
  await Promise.all(Array.from({ length: atOnce }, worker))
  return results
}

/** Lines that a terminal of 100 columns would break. */
export const tooLong = (text: string): string[] => text.split('\n').filter((line) => line.length > 100)
