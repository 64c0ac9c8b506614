import { mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { buildIfChanged } from '../../src/start/build.mjs'
import { capture, say, show } from '../../src/start/run.mjs'
import { NOTHING, playwrightCounts, readCounts, vitestCounts } from './counts.mjs'

/** @typedef {{ code: number, counts: import('./counts.mjs').Counts }} StepResult */
/**
 * @typedef {object} Step
 * @property {string} name what --only calls it
 * @property {string} what in words
 * @property {{ browser: boolean, readers: boolean }} needs programs from outside the project
 * @property {(root: string) => StepResult} run
 */

const NO_TOOLS = { browser: false, readers: false }

/** All steps, in the order in which they run: the quick ones first. @type {readonly Step[]} */
export const STEPS = [
  checker('types', 'types', 'typescript/bin/tsc', ['--noEmit']),
  checker('lint', 'lint and folder rules', 'oxlint/bin/oxlint', ['--type-aware', '--deny-warnings']),
  checker('format', 'format', '@biomejs/biome/bin/biome', ['ci', '--colors=off']),
  checker('unused', 'unused code', 'knip/bin/knip.js', ['--no-progress'], ['--no-progress', '--production']),
  { name: 'unit', what: 'unit, property and oracle tests', needs: { browser: false, readers: true }, run: runVitest },
  { name: 'build', what: 'build', needs: NO_TOOLS, run: (root) => counted(buildIfChanged(root)) },
  { name: 'browser', what: 'browser tests', needs: { browser: true, readers: false }, run: runPlaywright },
]

/**
 * A static check: what it prints is shown only when it fails.
 * @param {string} name @param {string} what @param {string} program its file under node_modules
 * @param {string[][]} runs the arguments of each run; the first that fails is the last
 * @returns {Step}
 */
function checker(name, what, program, ...runs) {
  return {
    name,
    what,
    needs: NO_TOOLS,
    run: (root) => {
      for (const args of runs) {
        const { code, output } = capture(process.execPath, [join(root, 'node_modules', program), ...args])
        if (code === 0) continue
        say(output.trimEnd())
        return counted(code)
      }
      return counted(0)
    },
  }
}

/** @param {number} code @returns {StepResult} */
function counted(code) {
  return { code, counts: code === 0 ? { ...NOTHING, passed: 1 } : { ...NOTHING, failed: 1 } }
}

/** @param {string} root @returns {StepResult} */
function runVitest(root) {
  const report = freshReport(root, 'vitest.json')
  const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs')
  const args = ['run', '--reporter=dot', '--reporter=json', `--outputFile.json=${report}`]
  const code = show(process.execPath, [vitest, ...args])
  return { code, counts: readCounts(report, code, vitestCounts) }
}

/** @param {string} root @returns {StepResult} */
function runPlaywright(root) {
  const report = freshReport(root, 'playwright.json')
  const cli = join(root, 'node_modules', '@playwright', 'test', 'cli.js')
  const env = { PLAYWRIGHT_JSON_OUTPUT_FILE: report }
  const code = show(process.execPath, [cli, 'test', '--reporter=dot,json'], env)
  return { code, counts: readCounts(report, code, playwrightCounts) }
}

/** Where a report goes, with no older one left there to be mistaken for it. @param {string} root @param {string} name */
function freshReport(root, name) {
  const folder = join(root, 'node_modules', '.cache', 'sledwright')
  mkdirSync(folder, { recursive: true })
  rmSync(join(folder, name), { force: true })
  return join(folder, name)
}
