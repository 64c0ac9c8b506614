import type { Comparison, Standing } from '../../papers/compare.ts'
import { capital, signed } from '../sheet/numbers.ts'
import { statusWords, VerdictMark } from '../verdict/verdict-mark.tsx'

/** Verdicts, checks and numbers that differ, the other job to the left, this one to the right. */
export function ComparisonTables({ comparison, before }: { readonly comparison: Comparison; readonly before: string }) {
  const { verdicts, differences, findings, same } = comparison
  return (
    <>
      <dl className="compare-verdicts">
        <div>
          <dt>{capital(before)}</dt>
          <dd>
            <VerdictMark status={verdicts.before} /> <b>{statusWords[verdicts.before]}</b>
          </dd>
        </div>
        <div>
          <dt>Now</dt>
          <dd>
            <VerdictMark status={verdicts.after} /> <b>{statusWords[verdicts.after]}</b>
          </dd>
        </div>
      </dl>
      <h3>What is different</h3>
      {differences.length === 0 ? (
        <p className="small soft">Nothing: both jobs are the same.</p>
      ) : (
        <table className="compare-table">
          <thead>
            <tr>
              <th scope="col">What</th>
              <th scope="col">Then</th>
              <th scope="col">Now</th>
            </tr>
          </thead>
          <tbody>
            {differences.map((d) => (
              <tr key={d.path}>
                <th scope="row">{capital(d.what)}</th>
                <td>{d.before}</td>
                <td>{d.after}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <h3>What came of it</h3>
      <p className="small soft">
        {findings.length === 0
          ? `All ${same} checks came out the same.`
          : `${findings.length} came out differently, ${same} the same. The numbers are what is left over at the worst.`}
      </p>
      {findings.length > 0 && (
        <table className="compare-table">
          <thead>
            <tr>
              <th scope="col">Check</th>
              <th scope="col">Then</th>
              <th scope="col">Now</th>
            </tr>
          </thead>
          <tbody>
            {findings.map((f) => (
              <tr key={f.id}>
                <th scope="row">{capital(f.title)}</th>
                <td>
                  <Stood standing={f.before} unit={f.unit} />
                </td>
                <td>
                  <Stood standing={f.after} unit={f.unit} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </>
  )
}

function Stood({ standing, unit }: { readonly standing: Standing | undefined; readonly unit: string }) {
  if (!standing) return <span className="soft">not there</span>
  return (
    <span className="compare-standing">
      <VerdictMark status={standing.status} size={16} /> {statusWords[standing.status]}{' '}
      <span className="number">
        {signed(standing.worst, unit)} {unit}
      </span>
    </span>
  )
}
