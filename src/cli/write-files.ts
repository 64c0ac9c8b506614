import { closeSync, existsSync, fsyncSync, mkdirSync, openSync, renameSync, rmSync, statSync, writeSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { bad, good, type Outcome, problem } from '../problem/problem.ts'

export interface OutFile {
  readonly name: string
  readonly bytes: Uint8Array
}

/**
 * Writes the files into a folder, which is made where it is missing. All are written under a passing name first and
 * take their own only when every one is complete: nobody ever finds half a file. Gives their paths.
 */
export function writeFiles(folder: string, files: readonly OutFile[]): Outcome<readonly string[]> {
  const passing: { temp: string; path: string }[] = []
  try {
    makeFolder(folder)
    for (const { name } of files) freeFor(join(folder, name))
    for (const { name, bytes } of files) {
      const temp = join(folder, `.${name}.${process.pid}.part`)
      passing.push({ temp, path: join(folder, name) })
      writeWhole(temp, bytes)
    }
    for (const { temp, path } of passing) renameSync(temp, path)
    return good(passing.map((p) => p.path))
  } catch (error) {
    for (const { temp } of passing) rmSync(temp, { force: true })
    return bad(notWritable(folder, error))
  }
}

/** Step by step: node's own recursive way never returns where the system refuses a folder without a reason. */
function makeFolder(folder: string): void {
  if (existsSync(folder)) {
    if (statSync(folder).isDirectory()) return
    throw Object.assign(new Error('a file has its name'), { code: 'EEXIST' })
  }
  const above = dirname(folder)
  if (above !== folder) makeFolder(above)
  mkdirSync(folder)
}

/** A folder cannot be replaced by a file: found out before any of the files has taken its name. */
function freeFor(path: string): void {
  if (statSync(path, { throwIfNoEntry: false })?.isDirectory())
    throw Object.assign(new Error('a folder has its name'), { code: 'EISDIR' })
}

function writeWhole(path: string, bytes: Uint8Array): void {
  const file = openSync(path, 'wx')
  try {
    for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at)
    fsyncSync(file)
  } finally {
    closeSync(file)
  }
}

const reasons: Readonly<Record<string, string>> = {
  EACCES: 'You may not write there. Choose another folder, or change its permissions.',
  EPERM: 'You may not write there. Choose another folder, or change its permissions.',
  EROFS: 'That place is read-only. Choose another folder.',
  ENOSPC: 'The disk is full. Make room, or choose another one.',
  ENOTDIR: 'A part of the path is a file. Choose another folder.',
  EEXIST: 'A file has that name, or stands in its path. Choose another folder.',
  EISDIR: 'A folder has the name that a file should get. Choose another folder.',
  ENOENT: 'It cannot be made there. Choose another folder.',
  ENAMETOOLONG: 'The path is too long. Choose a shorter one.',
}

function notWritable(folder: string, error: unknown) {
  const code = (error as NodeJS.ErrnoException).code ?? ''
  const hint = `${reasons[code] ?? `The system says ${code || String(error)}.`} Nothing was written.`
  return problem('file-not-writable', '', folder, 'a folder that can be written to', hint)
}
