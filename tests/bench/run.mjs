import { join } from 'node:path'
import { buildIfChanged } from '../../src/start/build.mjs'
import { show } from '../../src/start/run.mjs'

/**
 * Speed, with the machine's name. What is measured is what ships: the kernel's side bundled as the product is, the
 * built command line, and the built page in a headless browser. `npm run bench -- --only kernel` or `--only page`
 * runs one of the two.
 */
const root = join(import.meta.dirname, '..', '..')
const [, only] = /--only[ =](\w+)/.exec(process.argv.slice(2).join(' ')) ?? []
const program = (/** @type {string[]} */ ...path) => join(root, 'node_modules', ...path)
const bundle = ['build', '--ssr', 'tests/bench/bench.ts', '--outDir', 'dist/bench', '--logLevel', 'warn']

/** @type {readonly { name: string, run: () => number }[]} */
const steps = [
  { name: 'build', run: () => buildIfChanged(root) },
  { name: 'kernel', run: () => show(process.execPath, [program('vite', 'bin', 'vite.js'), ...bundle]) },
  { name: 'kernel', run: () => show(process.execPath, [join(root, 'dist', 'bench', 'sledwright.js')]) },
  { name: 'page', run: () => show(process.execPath, [program('tsx', 'dist', 'cli.mjs'), 'tests/bench/page.ts']) },
]

for (const { name, run } of steps) {
  if (only !== undefined && name !== 'build' && name !== only) continue
  process.exitCode = run()
  if (process.exitCode !== 0) break
}
