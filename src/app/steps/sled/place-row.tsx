import { valueWords } from '../../../papers/value-words.ts'
import { valueAt } from '../../../project/path.ts'
import { PathRow, type PathRowProps } from '../../dimensions/path-row.tsx'
import { capital } from '../../sheet/numbers.ts'
import { useProject, useSetValue } from '../../work/work-context.ts'

/** A height along the hilt: typed from the datum, or as it stands where it is measured from something else. */
export function PlaceRow(props: PathRowProps) {
  const project = useProject((p) => p)
  const setValue = useSetValue()
  const stored = valueAt(project, props.path)
  if (stored === null || typeof stored !== 'object' || !('of' in stored)) return <PathRow {...props} keeps="text" />
  const now = props.known?.value
  return (
    <div className="dim-row" data-kind="typed" id={props.path} tabIndex={-1}>
      <span>{capital(props.name)}</span>
      <span className="dim-entry number">
        <span className="dim-value">{now === undefined ? '' : Number(now.toFixed(2))}</span>
        <span className="dim-unit">{props.unit}</span>
      </span>
      <span className="dim-note">
        {valueWords(project, stored)}{' '}
        {now !== undefined && (
          <button
            type="button"
            className="button button-plain"
            onClick={() => setValue(props.path, Number(now.toFixed(3)))}
          >
            Type a height instead
          </button>
        )}
      </span>
    </div>
  )
}
