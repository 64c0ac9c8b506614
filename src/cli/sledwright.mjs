#!/usr/bin/env node
/** The command `sledwright`: hands over to the built command line, which a fresh clone does not have yet. */
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'

/** Exit code for "a file the program needs is missing", as in sysexits.h. */
const UNAVAILABLE = 69
const built = join(import.meta.dirname, '..', '..', 'dist', 'cli', 'sledwright.js')

if (existsSync(built)) {
  await import(pathToFileURL(built).href)
} else {
  process.stderr.write(
    'sledwright is not built yet: run `npm start` or, with the packages installed, `npm run build`.\n',
  )
  process.exitCode = UNAVAILABLE
}
