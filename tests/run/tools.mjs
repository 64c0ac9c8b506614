import { say } from '../../src/start/run.mjs'
import { hasBrowser, installPlaywrightBrowser } from './browser.mjs'
import { canInstallDebianPackages, installDebianPackages } from './debian.mjs'
import { inCI, missingReaders } from './readers.mjs'

/**
 * Sees to it that the programs which the tests drive are here: a browser, and readers of the files we write.
 * @param {string} root the project's folder
 * @param {{ browser: boolean, readers: boolean }} needs
 * @returns {Promise<number>} 0, or the exit code of what could not be installed
 */
export async function installTools(root, needs) {
  const browserMissing = needs.browser && !(await hasBrowser())
  const wanted = [...(browserMissing ? ['chromium'] : []), ...(needs.readers ? missingReaders() : [])]
  if (wanted.length === 0) return 0
  // On Debian one call brings everything, and what is still missing after it is reported just below.
  const failed = canInstallDebianPackages() ? installDebianPackages(wanted) : 0
  const readersMissing = needs.readers ? missingReaders() : []
  for (const reader of readersMissing) {
    say(`${reader} is not here: ${inCI() ? 'in CI it must be.' : 'the tests that read our files with it are skipped.'}`)
  }
  if (readersMissing.length > 0 && inCI()) return failed || 1
  return browserMissing && !(await hasBrowser()) ? installPlaywrightBrowser(root) : 0
}
