import type { ReactNode } from 'react'
import { valueAt } from '../../project/path.ts'
import { useProject, useSetValue } from '../work/work-context.ts'
import { ChoiceField, type ChoiceOption } from './choice-field.tsx'
import { useSaid } from './use-said.ts'

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
