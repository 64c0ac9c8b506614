import type { SledDimension } from '../../../papers/sled-dimension.ts'
import { DerivedRow } from '../../dimensions/dimension-row.tsx'
import { PathRow } from '../../dimensions/path-row.tsx'

/** Heights and the diameter are kept as they are typed, with their units; the others are drawn numbers. */
const asTyped = /\/(from|to|z|diameter|by)$/

/** Dimensions on their lines: first those that can be typed, as fields; then those that follow, as text. */
export function Dimensions({ list }: { readonly list: readonly SledDimension[] }) {
  return (
    <div className="dim-rows">
      {list
        .toSorted((a, b) => Number(b.typeable) - Number(a.typeable))
        .map((d) =>
          d.typeable ? (
            <PathRow
              key={`${d.path} ${d.name}`}
              path={d.path}
              name={d.name}
              unit={d.unit}
              known={d}
              keeps={asTyped.test(d.path) && !d.path.includes('/rods/') ? 'text' : 'number'}
            />
          ) : (
            <DerivedRow key={`${d.path} ${d.name}`} name={d.name} value={d.value} unit={d.unit} source={d.source} />
          ),
        )}
    </div>
  )
}
