import type { ReactNode } from 'react'
import { valueAt } from '../../project/path.ts'
import { useProject, useSetValue } from '../work/work-context.ts'
import { TypedField } from './typed-field.tsx'
import { useSaid } from './use-said.ts'

interface WordsProps {
  readonly path: string
  readonly label: ReactNode
  readonly placeholder?: string
  readonly echo?: string | undefined
  /** Where the words do not simply go to their path. */
  readonly onText?: (text: string) => void
}

/** Words of the job: a name, a material, a thread as typed. Emptied, they are taken out. */
export function WordsField({ path, label, placeholder, echo, onText }: WordsProps) {
  const text = useProject((p) => valueAt(p, path))
  const set = useSetValue()
  const said = useSaid()
  return (
    <TypedField
      id={path}
      label={label}
      text={typeof text === 'string' ? text : ''}
      onText={onText ?? ((next) => set(path, next === '' ? undefined : next))}
      fault={said.fault(path)}
      question={said.question(path)}
      echo={echo}
      {...(placeholder === undefined ? {} : { placeholder })}
    />
  )
}
