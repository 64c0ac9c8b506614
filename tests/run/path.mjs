import { accessSync, constants } from 'node:fs'
import { delimiter, join } from 'node:path'

/**
 * Where a program stands on the search path, or undefined.
 * @param {string} program @returns {string | undefined}
 */
export function onPath(program) {
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '')
  return folders.map((folder) => join(folder, program)).find(isExecutable)
}

/** @param {string} path */
function isExecutable(path) {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}
