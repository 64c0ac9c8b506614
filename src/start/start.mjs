/**
 * `npm start`: installs and builds what is missing, does the main job on the first demo with the command line, writes
 * its files under out/, and serves the page. Plain JavaScript without dependencies, because on a fresh clone it runs
 * before anything is installed. `npm start -- --no-serve` stops before the page.
 */
import { join } from 'node:path'
import { buildIfChanged } from './build.mjs'
import { demoJob } from './demo-job.mjs'
import { installPackages } from './packages.mjs'
import { servePage } from './serve.mjs'

const root = join(import.meta.dirname, '..', '..')
const code = installPackages(root) || buildIfChanged(root) || demoJob(root)

if (code !== 0) process.exitCode = code
else if (!process.argv.includes('--no-serve')) await servePage(root)
