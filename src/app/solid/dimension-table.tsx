import type { SledDimension } from '../../papers/sled-dimension.ts'
import { capital, fixed } from '../sheet/numbers.ts'

const kinds = { typed: 'typed', default: 'default', derived: 'derived' } as const

/** Numbers that something is made from: value, how it is known, its source, and the way to its field. */
export function DimensionTable(props: {
  readonly dimensions: readonly SledDimension[]
  readonly onField: (path: string) => void
}) {
  return (
    <ul className="made-by small">
      {props.dimensions.map((d) => (
        <li key={`${d.path} ${d.name}`}>
          <span>
            {capital(d.name)} <b className="number">{worded(d)}</b>, {kinds[d.kind]}
            {d.source !== '' && <span className="soft">: {d.source}</span>}
          </span>
          <button
            type="button"
            className="button button-plain"
            aria-label={`To the field of ${d.name}`}
            onClick={() => props.onField(d.path)}
          >
            {d.kind === 'derived' ? 'Change what it follows from' : 'Change'}
          </button>
        </li>
      ))}
    </ul>
  )
}

const worded = ({ value, unit }: SledDimension): string =>
  unit === '' ? String(value) : unit === '°' ? `${fixed(value, 1)}°` : `${fixed(value)} mm`
