import { valueAt } from '../../../project/path.ts'
import { useProject, useSetValue, useWork } from '../../work/work-context.ts'

export interface StatesFieldProps {
  readonly path: string
  readonly label: string
  /** What no list means: these states, or every one. */
  readonly usual?: readonly string[]
}

/** In which states of the hilt something is so. */
export function StatesField({ path, label, usual }: StatesFieldProps) {
  const { judged } = useWork()
  const named = useProject((p) => p.states)
  const set = useSetValue()
  const states = judged.report?.states ?? named.map((s) => ({ id: s.id, name: s.name ?? s.id }))
  const all = states.map((s) => s.id)
  const chosen = (useProject((p) => valueAt(p, path)) as readonly string[] | undefined) ?? usual ?? all
  const put = (id: string, on: boolean) => {
    const next = all.filter((s) => (s === id ? on : chosen.includes(s)))
    set(path, usual === undefined && next.length === all.length ? undefined : next)
  }
  if (states.length === 0) return undefined
  return (
    <fieldset className="ticks" id={path}>
      <legend className="field-label">{label}</legend>
      {states.map((s) => (
        <label key={s.id} className="tick">
          <input
            type="checkbox"
            checked={chosen.includes(s.id)}
            onChange={(event) => put(s.id, event.target.checked)}
          />
          <span>{s.name}</span>
        </label>
      ))}
    </fieldset>
  )
}
