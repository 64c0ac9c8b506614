import type { ReadingsAnswer } from './use-readings.ts'

const mm = (n: number): string => n.toFixed(2)

/** What the readings come to, and how. */
export function ReadingsResult({ result }: { readonly result: ReadingsAnswer }) {
  const { view, problems } = result
  if (!view)
    return (
      <ul className="small" aria-live="polite">
        {problems.map((p) => (
          <li key={`${p.path} ${p.hint}`} className={p.code === 'missing' ? 'soft' : 'field-fault'}>
            {p.hint}
          </li>
        ))}
      </ul>
    )
  const { size, mean, oval, stations, readings } = view
  const several = stations.length > 1
  const unit = view.as === 'angle' ? '°' : ' mm'
  return (
    <section className="readings-result" aria-label="What they come to" aria-live="polite">
      <p className="readings-interval number">
        <b>
          {mm(size.low)}–{mm(size.high)}
          {unit}
        </b>
      </p>
      <dl className="readings-figures number">
        <Figure name="readings" value={String(readings)} />
        {mean !== undefined && <Figure name="mean" value={`${mean.toFixed(3)} mm`} />}
        {oval !== undefined && <Figure name="oval by" value={`${oval.toFixed(3)} mm`} />}
        {several && <Figure name="places" value={String(stations.length)} />}
      </dl>
      <ul className="small">
        {mean !== undefined && mm(mean) !== mm(size.nominal) && (
          <li>
            The field shows {mm(size.nominal)}, the {view.as === 'outside' ? 'widest' : 'narrowest'} way across, and not
            the mean: there it meets first.
          </li>
        )}
        {view.why.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {view.ask.length > 0 && (
        <ul className="small readings-ask">
          {view.ask.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
    </section>
  )
}

function Figure({ name, value }: { readonly name: string; readonly value: string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{value}</dd>
    </div>
  )
}
