import { placeWords } from '../../../project/place-words.ts'
import { stepOf } from '../../fields/step-of.ts'
import { goToPath } from '../../work/go-to.ts'
import { stepWords } from '../../work/step-words.ts'
import { useProject, useWork } from '../../work/work-context.ts'

/** How many are told at once: the rest comes when these are mended. */
const most = 3

/** What keeps the parts from being judged and is typed in another step. */
export function HiltFirst() {
  const { view, judged } = useWork()
  const project = useProject((p) => p)
  const elsewhere = judged.problems.filter((p) => stepOf(p.path) !== 'fill').slice(0, most)
  if (elsewhere.length === 0) return undefined
  return (
    <div className="fill-elsewhere small">
      <p>You can go on filling. Nothing is judged before this is known:</p>
      <ul>
        {elsewhere.map((p) => (
          <li key={`${p.path} ${p.hint}`}>
            {placeWords(project, p.path)}: {p.hint}{' '}
            <button type="button" className="button button-plain" onClick={() => goToPath(view, p.path)}>
              Go to {stepWords[stepOf(p.path) ?? 'measure']}
              <span className="unseen"> for {placeWords(project, p.path)}</span>
            </button>
          </li>
        ))}
      </ul>
    </div>
  )
}
