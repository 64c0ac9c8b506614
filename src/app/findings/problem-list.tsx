import type { Problem } from '../../problem/problem.ts'
import { capital } from '../sheet/numbers.ts'
import type { FindingActions } from './fix-line.tsx'

export interface ProblemListProps {
  readonly title: string
  readonly tone: 'fault' | 'question' | 'wanted'
  readonly problems: readonly Problem[]
  readonly actions: FindingActions
}

/** What is wrong with the entries, or looks like a slip: where, what was got, what is allowed, what would help. */
export function ProblemList({ title, tone, problems, actions }: ProblemListProps) {
  if (problems.length === 0) return undefined
  const once = problems.filter((p, i) => problems.findIndex((q) => q.path === p.path && q.hint === p.hint) === i)
  // What is told of several empty fields tells nothing of any: their names say it.
  const bare = (p: Problem) => p.code === 'missing' && once.filter((q) => q.hint === p.hint).length > 1
  return (
    <section className={`problems problems-${tone}`} aria-label={title}>
      <h3>{title}</h3>
      <ul>
        {once.map((p) => {
          const field = actions.goTo(p.path)
          return (
            <li key={`${p.code} ${p.path} ${p.got}`}>
              <b>{capital(actions.placeName(p.path))}</b>
              {!bare(p) && `: ${tone === 'wanted' ? '' : gotWords(p)} ${p.hint}`}{' '}
              {field && (
                <button type="button" className="button button-plain" onClick={field.go}>
                  Go to field
                  <span className="unseen"> {field.label}</span>
                </button>
              )}
            </li>
          )
        })}
      </ul>
    </section>
  )
}

/** What was found and what is allowed, where both say something. */
function gotWords({ got, limit, code }: Problem): string {
  if (code === 'missing' || got === '') return limit === '' ? '' : `${limit} is missing.`
  return limit === '' ? `${got}.` : `${got}; allowed is ${limit}.`
}
