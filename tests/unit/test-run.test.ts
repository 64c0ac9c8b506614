import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { sameInstallation } from '../../src/start/packages.mjs'
import { playwrightCounts, readCounts, summaryLine, vitestCounts } from '../run/counts.mjs'

describe('what a run of the tests counts', () => {
  let folder: string
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'counts-'))
  })
  afterAll(() => rmSync(folder, { recursive: true, force: true }))

  const report = (content: object) => {
    const path = join(folder, 'report.json')
    writeFileSync(path, JSON.stringify(content))
    return path
  }
  const vitest = { numPassedTests: 7, numFailedTests: 0, numPendingTests: 2, numTodoTests: 1, testResults: [] }

  it('takes the counts from the reports', () => {
    expect(readCounts(report(vitest), 0, vitestCounts)).toEqual({ passed: 7, failed: 0, skipped: 3 })
    const stats = { expected: 4, unexpected: 1, flaky: 1, skipped: 2 }
    expect(readCounts(report({ stats }), 1, playwrightCounts)).toEqual({ passed: 4, failed: 2, skipped: 2 })
  })

  it('counts a failure for each file that failed without a failed test', () => {
    const testResults = [
      { status: 'failed', assertionResults: [] },
      { status: 'failed', assertionResults: [{ status: 'pending' }] },
      { status: 'failed', assertionResults: [{ status: 'passed' }, { status: 'failed' }] },
      { status: 'passed', assertionResults: [{ status: 'passed' }] },
    ]
    expect(vitestCounts({ ...vitest, numFailedTests: 1, testResults }).failed).toBe(3)
  })

  it('counts a failure when the program failed without a failed test', () => {
    expect(readCounts(report(vitest), 1, vitestCounts).failed).toBe(1)
  })

  it('counts a failure when there is no report, even if the program says that all is well', () => {
    expect(readCounts(join(folder, 'none.json'), 0, vitestCounts)).toEqual({ passed: 0, failed: 1, skipped: 0 })
  })

  it('ends with one line, which names skipped tests only if there are any', () => {
    expect(summaryLine({ passed: 12, failed: 0, skipped: 0 })).toBe('12 passed, 0 failed')
    expect(summaryLine({ passed: 12, failed: 3, skipped: 4 })).toBe('12 passed, 3 failed, 4 skipped')
  })
})

describe('whether the packages must be installed', () => {
  const lock = (packages: Record<string, object>) => ({ packages })
  const one = { version: '1.0.0', integrity: 'sha512-a' }
  const wanted = lock({ '': {}, 'node_modules/one': one, 'node_modules/elsewhere': { ...one, optional: true } })

  it('is content when all but optional packages are there', () => {
    expect(sameInstallation(wanted, lock({ 'node_modules/one': one }))).toBe(true)
  })
  it.each([
    ['a package is missing', {}],
    ['a version differs', { 'node_modules/one': { ...one, version: '1.0.1' } }],
    ['a content differs', { 'node_modules/one': { ...one, integrity: 'sha512-b' } }],
    [
      'an optional package has another version',
      { 'node_modules/one': one, 'node_modules/elsewhere': { version: '2' } },
    ],
    ['one is there that nobody asked for', { 'node_modules/one': one, 'node_modules/stray': one }],
  ])('installs when %s', (_what, there) => {
    expect(sameInstallation(wanted, lock(there))).toBe(false)
  })
})
