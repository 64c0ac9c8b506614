import { exit } from './exit.ts'
import { bugText, guarded } from './guard.ts'
import { processIo } from './io.ts'
import { run } from './program.ts'

/** The command line's start: this process's streams, its arguments, and its exit code. */
const io = processIo()
const debug = process.env['SLEDWRIGHT_DEBUG'] === '1'

process.on('uncaughtException', (error) => {
  io.err(bugText(error, debug))
  process.exit(exit.bug)
})
process.exitCode = await guarded(() => run(process.argv.slice(2), io), io, debug)
