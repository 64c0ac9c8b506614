import { valueAt } from '../../../project/path.ts'
import { parseThread } from '../../../rules/thread-designation.ts'
import { TypedField } from '../../fields/typed-field.tsx'
import { useSaid } from '../../fields/use-said.ts'
import { useProject, useSetValue } from '../../work/work-context.ts'

/** A thread as the trade writes it: M33x1.5, 1.25-20. Says which thread it understood, and how wide its crests are. */
export function ThreadField({
  path,
  crests,
  label = 'Thread',
  required = false,
}: {
  readonly path: string
  readonly crests?: string
  readonly label?: string
  readonly required?: boolean
}) {
  const set = useSetValue()
  const said = useSaid()
  const value = (useProject((p) => valueAt(p, path)) as string | undefined) ?? ''
  const read = parseThread(value, path)
  const size = crests === undefined ? undefined : said.size(crests)
  const free = size && `, crests ${size.low.toFixed(2)}–${size.high.toFixed(2)}`
  return (
    <TypedField
      id={path}
      label={label}
      text={value}
      placeholder="M33x1.5, 1.25-20"
      onText={(text) => set(path, text === '' && !required ? undefined : text)}
      fault={read.ok ? said.fault(path) : read.problems[0]}
      question={said.question(path)}
      echo={read.ok ? `${read.value.name}${free ?? ''}` : undefined}
    />
  )
}
