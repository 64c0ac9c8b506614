import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { capture, say } from './run.mjs'

/** Everything that the page and the command line are built from. */
const SOURCES = [
  'geometry',
  'index.html',
  'package-lock.json',
  'package.json',
  'presets',
  'public',
  'src',
  'tsconfig.json',
  'vite.config.ts',
]

/** The two builds: the page, then the command line. @type {readonly { what: string, args: string[] }[]} */
const BUILDS = [
  { what: 'the page', args: ['build'] },
  { what: 'the command line', args: ['build', '--ssr', 'src/cli/main.ts'] },
]

/**
 * Builds dist/ if a source changed since the last complete build. By content, not by time: a fresh checkout and a
 * switched branch touch every file.
 * @param {string} root the project's folder
 * @returns {number} the exit code of the build that failed; 0 when there was nothing to do
 */
export function buildIfChanged(root) {
  const mark = join(root, 'dist', 'built-from')
  const digest = digestOf(root)
  if (existsSync(mark) && readFileSync(mark, 'utf8') === digest) return 0
  const vite = join(root, 'node_modules', 'vite', 'bin', 'vite.js')
  for (const { what, args } of BUILDS) {
    say(`Building ${what} …`)
    const { code, output } = capture(process.execPath, [vite, ...args])
    if (code === 0) continue
    say(output.trimEnd())
    say(`Building ${what} failed with code ${code}.`)
    return code
  }
  mkdirSync(join(root, 'dist'), { recursive: true })
  writeFileSync(mark, digest)
  return 0
}

/** @param {string} root */
function digestOf(root) {
  const hash = createHash('sha256')
  for (const source of SOURCES.filter((name) => existsSync(join(root, name)))) {
    for (const file of filesIn(root, source))
      hash
        .update(`${file}\0`)
        .update(readFileSync(join(root, file)))
        .update('\0')
  }
  return hash.digest('hex')
}

/** @param {string} root @param {string} path @returns {string[]} */
function filesIn(root, path) {
  const entries = readdirSyncOrNone(join(root, path))
  if (entries === undefined) return [path]
  return entries.sort().flatMap((name) => filesIn(root, join(path, name)))
}

/** The names in a folder, or undefined for a file. @param {string} path */
function readdirSyncOrNone(path) {
  try {
    return readdirSync(path)
  } catch {
    return undefined
  }
}
