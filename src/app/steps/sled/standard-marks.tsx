import type { SledInput } from '../../../project/schema/sled.ts'
import { useSetValue } from '../../work/work-context.ts'

/** The marks that any sled is better for: which way the cells go, which way is up, which revision it is. */
export function StandardMarks({ sled }: { readonly sled: SledInput }) {
  const setValue = useSetValue()
  const path = (field: string) => `sleds/${sled.id}/${field}`
  return (
    <div className="box-choices">
      <label className="box-check">
        <input
          id={path('standardMarks')}
          type="checkbox"
          checked={sled.standardMarks === true}
          onChange={(event) => setValue(path('standardMarks'), event.target.checked || undefined)}
        />{' '}
        engrave + and − at the cells, an arrow towards the blade, and the revision
      </label>
      {sled.standardMarks && (
        <label className="small-choice">
          <span>Revision</span>
          <input
            id={path('revision')}
            className="field-input"
            maxLength={12}
            value={sled.revision ?? ''}
            placeholder="R1"
            onChange={(event) => setValue(path('revision'), event.target.value || undefined)}
          />
        </label>
      )}
    </div>
  )
}
