import { useId } from 'react'
import { valueAt } from '../../../project/path.ts'
import { useProject, useSetValue } from '../../work/work-context.ts'

const usual = ['aluminium', 'brass', 'copper', 'steel', 'stainless steel', 'titanium', 'plastic', 'wood']

/** What a section is made of, in the builder's own words; the usual ones are offered. */
export function MaterialField({ path }: { readonly path: string }) {
  const list = useId()
  const text = useProject((p) => valueAt(p, path))
  const set = useSetValue()
  return (
    <div className="field">
      <label className="field-label" htmlFor={path}>
        Material
      </label>
      <input
        id={path}
        className="field-input"
        list={list}
        value={typeof text === 'string' ? text : ''}
        onChange={(event) => set(path, event.target.value || undefined)}
      />
      <datalist id={list}>
        {usual.map((m) => (
          <option key={m} value={m}>
            {m}
          </option>
        ))}
      </datalist>
    </div>
  )
}
