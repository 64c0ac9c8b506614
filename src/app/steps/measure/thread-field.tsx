import { problem } from '../../../problem/problem.ts'
import { valueAt } from '../../../project/path.ts'
import { parseThread } from '../../../rules/thread-designation.ts'
import { TypedField } from '../../fields/typed-field.tsx'
import { useSaid } from '../../fields/use-said.ts'
import { capital } from '../../sheet/numbers.ts'
import { useProject, useSetValue } from '../../work/work-context.ts'

/**
 * A thread as the trade writes it: M33x1.5, 1.25-20. Says which thread it understood, and how wide its crests are. Where
 * the same thread was said elsewhere it need not be said again, and another one is asked about.
 */
export function ThreadField({
  path,
  crests,
  label = 'Thread',
  required = false,
  said: elsewhere,
}: {
  readonly path: string
  readonly crests?: string
  readonly label?: string
  readonly required?: boolean
  /** The same thread as it stands at another place, and where that is. */
  readonly said?: { readonly thread: string; readonly where: string } | undefined
}) {
  const set = useSetValue()
  const said = useSaid()
  const value = (useProject((p) => valueAt(p, path)) as string | undefined) ?? ''
  const read = parseThread(value, path)
  const size = crests === undefined ? undefined : said.size(crests)
  const free = size && `, crests ${size.low.toFixed(2)}–${size.high.toFixed(2)}`
  const other = elsewhere && parseThread(elsewhere.thread, path)
  const same = read.ok && other?.ok && read.value.name === other.value.name
  const differs =
    elsewhere && read.ok && !same
      ? problem('suspicious', path, value, elsewhere.thread, `${capital(elsewhere.where)} says ${elsewhere.thread}.`)
      : undefined
  const follows = elsewhere && value === '' ? `${elsewhere.thread}, as ${elsewhere.where} says` : undefined
  return (
    <TypedField
      id={path}
      label={label}
      text={value}
      placeholder={elsewhere?.thread ?? 'M33x1.5'}
      onText={(text) => set(path, text === '' && !required ? undefined : text)}
      fault={read.ok ? said.fault(path) : read.problems[0]}
      question={said.question(path) ?? differs}
      echo={read.ok ? `${read.value.name}${free ?? ''}${same ? `, the same as ${elsewhere?.where}` : ''}` : follows}
    />
  )
}
