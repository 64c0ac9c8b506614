import { createReadStream } from 'node:fs'
import { bad, good, type Outcome, type Problem, problem } from '../problem/problem.ts'
import { mostCharacters, type Read, readProject } from '../project/read.ts'
import type { Io } from './io.ts'

/** A project file by its path, `-` for standard input. Read no farther than the largest project is long. */
export async function readInput(path: string, io: Io): Promise<Outcome<Read>> {
  if (path === '-' && io.stdin.isTTY) io.err('Reading the project from the keyboard; Ctrl-D ends it.\n')
  const bytes = await readUpTo(path, io)
  if (!bytes.ok) return bytes
  const text = decode(bytes.value)
  return text.ok ? readProject(text.value) : text
}

/** One byte a character is the least a text takes, so that more bytes than this are more than a project has. */
const mostBytes = mostCharacters

async function readUpTo(path: string, io: Io): Promise<Outcome<Uint8Array>> {
  const chunks: Uint8Array[] = []
  let length = 0
  try {
    for await (const chunk of path === '-' ? io.stdin : createReadStream(path, { end: mostBytes })) {
      const piece = typeof chunk === 'string' ? new TextEncoder().encode(chunk) : (chunk as Uint8Array)
      chunks.push(piece)
      length += piece.length
      if (length > mostBytes) return bad(tooLarge())
    }
  } catch (error) {
    return bad(notReadable(path, error))
  }
  const all = new Uint8Array(length)
  let at = 0
  for (const chunk of chunks) {
    all.set(chunk, at)
    at += chunk.length
  }
  return good(all)
}

function tooLarge(): Problem {
  return problem(
    'too-large',
    '',
    `more than ${mostBytes / 1e6} MB`,
    `at most ${mostBytes / 1e6} MB`,
    'A project holds numbers and short texts; keep photographs elsewhere. It was not read.',
  )
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'There is no such file. Is the path right?',
  EISDIR: 'This is a folder. Name the project file in it.',
  EACCES: 'You may not read it. Ask its owner, or change its permissions.',
  EPERM: 'You may not read it. Ask its owner, or change its permissions.',
  ENOTDIR: 'A part of the path is a file, not a folder.',
  ENAMETOOLONG: 'The path is too long.',
}

function notReadable(path: string, error: unknown): Problem {
  const code = (error as NodeJS.ErrnoException).code ?? ''
  const hint = reasons[code] ?? `The system says ${code || String(error)}.`
  return problem('file-not-readable', '', path === '-' ? 'standard input' : path, 'a project file', hint)
}

function decode(bytes: Uint8Array): Outcome<string> {
  try {
    return good(new TextDecoder('utf-8', { fatal: true }).decode(bytes))
  } catch {
    return bad(problem('not-json', '', 'bytes that are no UTF-8 text', 'JSON text', 'Save the file as UTF-8.'))
  }
}
