import type { ReactNode } from 'react'
import { valueAt } from '../../project/path.ts'
import { useProject, useSetValue } from '../work/work-context.ts'

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
