import { demos } from '../../job/demos/index.ts'
import { exit } from '../exit.ts'
import type { Io } from '../io.ts'
import { usageText } from '../usage.ts'

/** The names, one a line; with a name that project, as a file would hold it. */
export function demo(name: string | undefined, io: Io): number {
  if (name === undefined) {
    io.out(demos.map((d) => `${d.name}\n`).join(''))
    return exit.done
  }
  const found = demos.find((d) => d.name === name)
  if (!found) {
    io.err(usageText(`There is no demo "${name}".`, `Demos: ${demos.map((d) => d.name).join(', ')}.`, io.width))
    return exit.wrongUsage
  }
  io.out(`${JSON.stringify(found.project, null, 2)}\n`)
  return exit.done
}
