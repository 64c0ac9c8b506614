import type { Verdict } from '../../checks/verdict.ts'
import { statusWords, VerdictMark } from '../verdict/verdict-mark.tsx'

const meanings: readonly (readonly [Verdict, string])[] = [
  ['clear', 'It holds for every size your readings allow, and for every print and cell that may come.'],
  ['unsure', 'It depends on a size that is not known well enough. You are told which one to measure next.'],
  [
    'clash',
    'Whatever the unknown sizes are, some print or part within its spread does not fit. You are told what helps.',
  ],
]

/** What the three verdicts mean, before there is one. */
export function Legend() {
  return (
    <section aria-labelledby="legend-title">
      <div className="panel-head">
        <h2 id="legend-title">How it answers</h2>
      </div>
      <ul className="legend">
        {meanings.map(([verdict, meaning]) => (
          <li key={verdict}>
            <VerdictMark status={verdict} size={28} />
            <p>
              <b>{statusWords[verdict]}</b>
              <span className="small">{meaning}</span>
            </p>
          </li>
        ))}
      </ul>
    </section>
  )
}
