import { onPath } from './path.mjs'

/**
 * Programs from outside the project that read the files it writes. The command and the Debian package bear one name.
 * @typedef {'admesh' | 'prusa-slicer'} Reader
 */

/** @type {readonly Reader[]} */
const READERS = ['admesh', 'prusa-slicer']

/**
 * Where a file reader stands, or undefined: a test that needs it then skips. In CI (CI=true) it must be there, because
 * a check that silently does not run is worse than none.
 * @param {Reader} reader
 * @returns {string | undefined}
 * @throws when it is missing in CI
 */
export function findReader(reader) {
  const path = onPath(reader)
  if (path === undefined && inCI()) throw new Error(`${reader} is not installed, and in CI it must be`)
  return path
}

/** The readers that are not here. */
export function missingReaders() {
  return READERS.filter((reader) => onPath(reader) === undefined)
}

/** Whether this is a run in continuous integration, where nothing may be skipped. */
export function inCI() {
  return process.env.CI !== undefined && process.env.CI !== '' && process.env.CI !== 'false'
}
