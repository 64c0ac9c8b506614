/**
 * `npm test`: installs what is missing, then every check and every test, in one command. Plain JavaScript without
 * dependencies, because on a fresh clone it runs before anything is installed.
 * `npm test -- --only types,unit` runs some of the steps.
 */
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { installPackages } from '../../src/start/packages.mjs'
import { say } from '../../src/start/run.mjs'
import { add, NOTHING, summaryLine } from './counts.mjs'
import { STEPS } from './steps.mjs'
import { installTools } from './tools.mjs'

/** Exit code for wrong usage, as in sysexits.h. */
const USAGE = 64
const root = join(import.meta.dirname, '..', '..')

process.exitCode = await main()

async function main() {
  const steps = chosenSteps()
  if (steps === undefined) {
    say(`--only takes some of: ${STEPS.map((step) => step.name).join(', ')} (separated by commas).`)
    return USAGE
  }
  const notReady = installPackages(root) || (await installTools(root, needsOf(steps)))
  if (notReady !== 0) {
    say(summaryLine({ ...NOTHING, failed: 1 }))
    return notReady
  }
  return runAll(steps)
}

/** Runs every step, also after a failure, and gives the exit code of the first one that failed. @param {typeof STEPS} steps */
function runAll(steps) {
  let total = NOTHING
  let firstFailure = 0
  for (const step of steps) {
    const started = Date.now()
    const { code, counts } = step.run(root)
    total = add(total, counts)
    firstFailure ||= code
    const verdict = code === 0 ? 'passed' : `FAILED (exit code ${code})`
    say(`${step.what}: ${verdict}, ${((Date.now() - started) / 1000).toFixed(1)} s`)
  }
  say(summaryLine(total))
  return firstFailure || (total.failed > 0 ? 1 : 0)
}

/** The steps asked for, all of them without --only, or undefined if one does not exist. */
function chosenSteps() {
  try {
    const { values } = parseArgs({ options: { only: { type: 'string' } } })
    const names = values.only?.split(',').map((name) => name.trim())
    if (names === undefined) return STEPS
    return names.every((name) => STEPS.some((step) => step.name === name))
      ? STEPS.filter((step) => names.includes(step.name))
      : undefined
  } catch {
    return undefined
  }
}

/** @param {typeof STEPS} steps */
function needsOf(steps) {
  return { browser: steps.some((step) => step.needs.browser), readers: steps.some((step) => step.needs.readers) }
}
