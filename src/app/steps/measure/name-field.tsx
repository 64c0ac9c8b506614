import type { ReactNode } from 'react'
import { valueAt } from '../../../project/path.ts'
import { ChoiceField, type ChoiceOption } from '../../fields/choice-field.tsx'
import { TypedField } from '../../fields/typed-field.tsx'
import { useSaid } from '../../fields/use-said.ts'
import { useProject, useSetValue } from '../../work/work-context.ts'

interface WordsProps {
  readonly path: string
  readonly label: ReactNode
  readonly placeholder?: string
  readonly echo?: string | undefined
}

/** Words of the job: a name, a material, a thread as typed. Emptied, they are taken out. */
export function WordsField({ path, label, placeholder, echo }: WordsProps) {
  const text = useProject((p) => valueAt(p, path))
  const set = useSetValue()
  const said = useSaid()
  return (
    <TypedField
      id={path}
      label={label}
      text={typeof text === 'string' ? text : ''}
      onText={(next) => set(path, next === '' ? undefined : next)}
      fault={said.fault(path)}
      question={said.question(path)}
      echo={echo}
      {...(placeholder === undefined ? {} : { placeholder })}
    />
  )
}

interface PickProps {
  readonly path: string
  readonly label: ReactNode
  readonly options: readonly ChoiceOption[]
  /** What no value means; it is then an option, too. */
  readonly none?: string
  readonly note?: ReactNode
  readonly onValue?: (value: string) => void
}

/** One of a few words of the job. */
export function PickField({ path, label, options, none, note, onValue }: PickProps) {
  const value = useProject((p) => valueAt(p, path))
  const set = useSetValue()
  const said = useSaid()
  const text = typeof value === 'string' ? value : ''
  const known = text === '' || options.some((o) => o.value === text)
  return (
    <ChoiceField
      id={path}
      label={label}
      value={text}
      onValue={(next) => (onValue ? onValue(next) : set(path, next === '' ? undefined : next))}
      options={[
        ...(none === undefined ? [] : [{ value: '', label: none }]),
        ...options,
        ...(known ? [] : [{ value: text, label: text }]),
      ]}
      note={note}
      fault={said.fault(path)?.hint}
      question={said.question(path)?.hint}
    />
  )
}

/** Yes or no. */
export function TickField({
  path,
  label,
  also = false,
}: {
  readonly path: string
  readonly label: ReactNode
  readonly also?: boolean
}) {
  const value = useProject((p) => valueAt(p, path)) ?? also
  const set = useSetValue()
  return (
    <label className="tick">
      <input id={path} type="checkbox" checked={value === true} onChange={(event) => set(path, event.target.checked)} />
      <span>{label}</span>
    </label>
  )
}
