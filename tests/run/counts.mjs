import { readFileSync } from 'node:fs'

/** @typedef {{ passed: number, failed: number, skipped: number }} Counts */

/** @type {Readonly<Counts>} */
export const NOTHING = { passed: 0, failed: 0, skipped: 0 }

/** @param {Counts} a @param {Counts} b @returns {Counts} */
export function add(a, b) {
  return { passed: a.passed + b.passed, failed: a.failed + b.failed, skipped: a.skipped + b.skipped }
}

/** @typedef {{ status: string, assertionResults: { status: string }[] }} VitestFile */
/**
 * @typedef {object} VitestReport
 * @property {number} numPassedTests @property {number} numFailedTests
 * @property {number} numPendingTests @property {number} numTodoTests
 * @property {VitestFile[]} testResults
 */

/**
 * What vitest's JSON report counted. A test marked "todo" has not run, so it counts as skipped. A file that failed
 * without a failed test (it does not load, or its preparation failed) counts as one failure.
 * @param {VitestReport} report
 * @returns {Counts}
 */
export function vitestCounts(report) {
  const broken = report.testResults.filter(
    ({ status, assertionResults }) => status === 'failed' && assertionResults.every((test) => test.status !== 'failed'),
  )
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + broken.length,
    skipped: report.numPendingTests + report.numTodoTests,
  }
}

/**
 * What Playwright's JSON report counted. A test that passed only when tried again counts as failed.
 * @param {{ stats: { expected: number, unexpected: number, flaky: number, skipped: number } }} report
 * @returns {Counts}
 */
export function playwrightCounts(report) {
  const { expected, unexpected, flaky, skipped } = report.stats
  return { passed: expected, failed: unexpected + flaky, skipped }
}

/**
 * The counts of a test program, from its report and its exit code. A program that failed without a failed test (a file
 * that does not load, no report at all) counts as one failure: such a run must never look green.
 * @template T
 * @param {string} path the report @param {number} code the exit code @param {(report: T) => Counts} countsOf
 * @returns {Counts}
 */
export function readCounts(path, code, countsOf) {
  const counts = countsIn(path, countsOf)
  if (counts === undefined) return { ...NOTHING, failed: 1 }
  return code !== 0 && counts.failed === 0 ? { ...counts, failed: 1 } : counts
}

/** The one line that a run ends with. @param {Counts} counts */
export function summaryLine({ passed, failed, skipped }) {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`
}

/** @template T @param {string} path @param {(report: T) => Counts} countsOf @returns {Counts | undefined} */
function countsIn(path, countsOf) {
  try {
    return countsOf(JSON.parse(readFileSync(path, 'utf8')))
  } catch {
    return undefined
  }
}
