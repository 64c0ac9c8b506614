import { checks as all } from '../../checks/checks.ts'
import { hanging, lines } from '../columns.ts'
import { exit } from '../exit.ts'
import type { Io } from '../io.ts'

/** Every check: its name as findings carry it, and what it looks at. */
export function checks(options: { readonly json?: boolean }, io: Io): number {
  const list = all.map(({ name, title, what }) => ({ name, title, what }))
  const column = Math.max(...list.map((c) => c.name.length)) + 2
  io.out(
    options.json
      ? `${JSON.stringify(list, null, 2)}\n`
      : lines(list.flatMap((c) => hanging(c.name.padEnd(column), `${c.title}. ${c.what}`, io.width))),
  )
  return exit.done
}
