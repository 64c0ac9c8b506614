import type { Setting } from '../../../papers/settings.ts'
import { PathRow } from '../../dimensions/path-row.tsx'

/** The limits that this job is judged by, each with its default and where that comes from. */
export function Limits({ settings }: { readonly settings: readonly Setting[] }) {
  return (
    <details className="box">
      <summary>
        <b>Limits</b> <span className="soft">least gaps and what is taken for granted, for the whole job</span>
        <Typed count={settings.filter((s) => s.kind === 'typed').length} />
      </summary>
      <div className="dim-rows">
        {settings.map((s) => (
          <PathRow
            key={s.id}
            path={s.path}
            name={s.what}
            unit={s.unit}
            known={{ ...s, value: s.usual, kind: 'default' }}
          />
        ))}
      </div>
    </details>
  )
}

function Typed({ count }: { readonly count: number }) {
  return count === 0 ? undefined : <span className="box-typed">{count} typed</span>
}
