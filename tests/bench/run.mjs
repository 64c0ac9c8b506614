import { spawnSync } from 'node:child_process'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** Bundles the bench as the product is bundled, so that what is measured is what ships, and runs it. */
const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))))
const vite = join(root, 'node_modules', 'vite', 'bin', 'vite.js')
const build = spawnSync(
  process.execPath,
  [vite, 'build', '--ssr', 'tests/bench/bench.ts', '--outDir', 'dist/bench', '--logLevel', 'warn'],
  { cwd: root, stdio: 'inherit' },
)
if (build.status !== 0) process.exit(build.status ?? 1)
const run = spawnSync(process.execPath, [join(root, 'dist', 'bench', 'sledwright.js')], { cwd: root, stdio: 'inherit' })
process.exit(run.status ?? 1)
