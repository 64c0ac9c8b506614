import { existsSync, readFileSync } from 'node:fs'
import { capture, say } from '../../src/start/run.mjs'

/** Whether this is Debian and we may install its packages: elsewhere the same names can mean something else. */
export function canInstallDebianPackages() {
  if (process.platform !== 'linux' || process.getuid?.() !== 0 || !existsSync('/etc/os-release')) return false
  return /^ID=debian$/m.test(readFileSync('/etc/os-release', 'utf8'))
}

/**
 * Installs Debian packages with apt-get.
 * @param {string[]} packages
 * @returns {number} apt-get's exit code
 */
export function installDebianPackages(packages) {
  say(`Installing from Debian: ${packages.join(', ')} (apt-get; can take a few minutes) …`)
  const env = { DEBIAN_FRONTEND: 'noninteractive' }
  // A stale index is no reason to stop: the install itself says whether the packages can be had.
  capture('apt-get', ['update', '-qq'], env)
  const { code, output } = capture('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...packages], env)
  if (code !== 0) {
    say(output.trimEnd())
    say(`apt-get could not install ${packages.join(', ')}: it ended with code ${code}.`)
  }
  return code
}
