import { mkdirSync, writeFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { capture, say, show } from './run.mjs'

/** `check` exits with its verdict: 0 clear, 1 unsure, 2 clash. Anything above is a failure of the command. */
const LAST_VERDICT = 2

/**
 * The main job on the first demo, through the built command line, as anybody would do it by hand: the verdict on the
 * screen; the project, its report, and the sled as STL and 3MF under out/.
 * @param {string} root the project's folder
 * @returns {number} 0, or the exit code of the command that failed
 */
export function demoJob(root) {
  const cli = join(root, 'dist', 'cli', 'sledwright.js')
  const out = join(root, 'out')
  mkdirSync(out, { recursive: true })

  const names = capture(process.execPath, [cli, 'demo'])
  const name = names.stdout.split('\n')[0]?.trim()
  if (names.code !== 0 || !name) return failed('demo', names)

  const project = capture(process.execPath, [cli, 'demo', name])
  if (project.code !== 0) return failed(`demo ${name}`, project)
  const file = join(out, `${name}.sledwright.json`)
  writeFileSync(file, project.stdout)

  const report = capture(process.execPath, [cli, 'check', file, '--json'])
  if (report.code > LAST_VERDICT) return failed(`check ${relative(root, file)} --json`, report)
  writeFileSync(join(out, `${name}.report.json`), report.stdout)

  say(`The demo "${name}":`)
  const verdict = show(process.execPath, [cli, 'check', file])
  if (verdict > LAST_VERDICT) return verdict
  const sled = show(process.execPath, [cli, 'sled', file, '--out', out])
  if (sled !== 0) say(`The sled of the demo was not written: sledwright sled ended with code ${sled}.`)
  else say(`The project, its report, and the sled as STL and 3MF are in ${relative(process.cwd(), out) || '.'}.`)
  return sled
}

/** @param {string} command @param {import('./run.mjs').Outcome} outcome */
function failed(command, { code, output }) {
  say(output.trimEnd())
  say(`sledwright ${command} failed with code ${code}.`)
  return code || 1
}
