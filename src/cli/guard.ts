import { shown } from './columns.ts'
import { exit } from './exit.ts'
import type { Io } from './io.ts'

/** What the person is told of a fault of the program: one sentence; the rest only for who asks for it. */
export function bugText(error: unknown, debug: boolean): string {
  const what = error instanceof Error ? `${error.name}: ${error.message}` : String(error)
  const sentence = `This is a fault of Sledwright itself, not of your project (${shown(what).slice(0, 200)}); SLEDWRIGHT_DEBUG=1 shows where it happened.\n`
  return debug && error instanceof Error ? `${sentence}${error.stack}\n` : sentence
}

/** Runs to an exit code whatever happens. */
export async function guarded(action: () => Promise<number>, io: Pick<Io, 'err'>, debug: boolean): Promise<number> {
  try {
    return await action()
  } catch (error) {
    io.err(bugText(error, debug))
    return exit.bug
  }
}
