import { spawnSync } from 'node:child_process'

/** Exit code of a shell for "command not found"; used when a program cannot be started at all. */
const NOT_STARTED = 127

/** What a program left: `output` is all it printed, for a reader; `stdout` is what it meant to be used. */
/** @typedef {{ code: number, output: string, stdout: string }} Outcome */

/** One line to the person who typed the command. @param {string} text */
export function say(text) {
  process.stdout.write(`${text}\n`)
}

/**
 * Runs a program to its end with its output on the screen, and gives its exit code.
 * @param {string} command @param {string[]} args @param {NodeJS.ProcessEnv} [env] added to this process's own
 * @returns {number} 127 if the program could not be started
 */
export function show(command, args, env = {}) {
  const done = spawnSync(command, args, { stdio: 'inherit', env: { ...process.env, ...env } })
  return done.error ? NOT_STARTED : (done.status ?? 1)
}

/**
 * Runs a program to its end and keeps what it prints, so that only a failure need be shown.
 * @param {string} command @param {string[]} args @param {NodeJS.ProcessEnv} [env] added to this process's own
 * @returns {Outcome}
 */
export function capture(command, args, env = {}) {
  const done = spawnSync(command, args, {
    encoding: 'utf8',
    env: { ...process.env, ...env },
    maxBuffer: 256 * 1024 * 1024,
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  if (done.error) return { code: NOT_STARTED, output: done.error.message, stdout: '' }
  return { code: done.status ?? 1, output: `${done.stdout}${done.stderr}`, stdout: done.stdout }
}
