import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { capture, say } from './run.mjs'

/** @typedef {{ version?: string, integrity?: string, optional?: boolean, devOptional?: boolean }} LockedPackage */
/** @typedef {{ packages?: Record<string, LockedPackage> }} Lock */

/**
 * Whether what is installed is what the lockfile asks for. npm writes its own copy of the lock into node_modules as the
 * last act of an installation, so an interrupted one counts as not installed. Optional packages (other platforms'
 * binaries) may be absent, but none may be there in another version.
 * @param {Lock} wanted package-lock.json @param {Lock} installed node_modules/.package-lock.json
 */
export function sameInstallation(wanted, installed) {
  const there = installed.packages ?? {}
  const asked = wanted.packages ?? {}
  const stray = Object.keys(there).some((path) => asked[path] === undefined)
  if (stray) return false
  return Object.entries(asked).every(([path, locked]) => {
    const found = there[path]
    if (path === '') return true
    if (found === undefined) return locked.optional === true || locked.devOptional === true
    return found.version === locked.version && found.integrity === locked.integrity
  })
}

/**
 * Installs the packages of the lockfile, unless they are there already.
 * @param {string} root the project's folder
 * @returns {number} npm's exit code; 0 when there was nothing to do
 */
export function installPackages(root) {
  const wanted = join(root, 'package-lock.json')
  const installed = join(root, 'node_modules', '.package-lock.json')
  if (existsSync(installed) && sameInstallation(readLock(wanted), readLock(installed))) return 0
  say('Installing the packages of package-lock.json (npm ci; about half a minute) …')
  const { code, output } = npm(['ci', '--prefix', root, '--no-audit', '--no-fund', '--include=dev'])
  if (code === 0) return 0
  say(output.trimEnd())
  say(`The packages could not be installed: npm ci ended with code ${code}. It needs the network, or npm's own cache.`)
  return code
}

/** @param {string} path @returns {Lock} */
function readLock(path) {
  return JSON.parse(readFileSync(path, 'utf8'))
}

/** The npm that started us, if one did: on Windows a plain `npm` cannot be spawned. @param {string[]} args */
function npm(args) {
  const self = process.env.npm_execpath
  return self?.endsWith('.js') ? capture(process.execPath, [self, ...args]) : capture('npm', args)
}
