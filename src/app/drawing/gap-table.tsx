import type { CrossGap } from '../../papers/cross-gaps.ts'
import { fixed } from '../sheet/numbers.ts'

/** The gaps of the cross-section by name: what the picture has no room to write. */
export function GapTable(props: { readonly gaps: readonly CrossGap[]; readonly passing: boolean }) {
  return (
    <div className="gap-notes small">
      {props.gaps.length > 0 ? <Rows gaps={props.gaps} /> : <p className="soft">Nothing nearer than 3 mm here.</p>}
      {props.passing && <p className="soft">Dash-dotted: what passes here on its way in.</p>}
    </div>
  )
}

function Rows({ gaps }: { readonly gaps: readonly CrossGap[] }) {
  return (
    <table className="gap-table">
      <thead>
        <tr>
          <th scope="col">Gap as measured</th>
          <th scope="col">mm</th>
          <th scope="col">needs</th>
        </tr>
      </thead>
      <tbody>
        {gaps.map((g) => (
          <tr
            key={`${g.ids.join(' ')} ${g.passing}`}
            className={g.gap < g.limit ? 'gap-row-short' : undefined}
            data-tightest={g.tightest || undefined}
          >
            <th scope="row">
              {g.a} to {g.b}
              {g.passing && <span className="soft">, on its way in</span>}
            </th>
            <td className="number">{fixed(g.gap)}</td>
            <td className="number soft">{fixed(g.limit)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
