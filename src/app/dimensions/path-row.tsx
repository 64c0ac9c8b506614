import type { SledDimension } from '../../papers/sled-dimension.ts'
import { valueAt } from '../../project/path.ts'
import { useProject, useSetValue, useWork } from '../work/work-context.ts'
import { DimensionRow } from './dimension-row.tsx'
import type { Keeps, Unit } from './typed-text.ts'

export interface PathRowProps {
  readonly path: string
  readonly name: string
  readonly unit: Unit
  /** What the worker says of it; undefined before it has answered. */
  readonly known: Pick<SledDimension, 'value' | 'kind' | 'source'> | undefined
  readonly keeps?: Keeps | undefined
  readonly needed?: boolean | undefined
  /** What holds where nothing is typed and there is no one number for it, in words. */
  readonly unknown?: string
}

/** A dimension of the job at its path: typed here, back to its default when emptied. */
export function PathRow({ path, name, unit, known, keeps = 'number', needed = false, unknown = '' }: PathRowProps) {
  const { view, judged } = useWork()
  const stored = useProject((p) => valueAt(p, path))
  const setValue = useSetValue()
  const fault = judged.problems.find((p) => p.path === path)?.hint ?? faultOf(judged.report?.findings, path)
  return (
    <DimensionRow
      id={path}
      name={name}
      unit={unit}
      stored={stored}
      usual={known && stored === undefined ? known.value : undefined}
      kind={stored === undefined ? (needed ? 'needed' : defaultKind(known?.kind)) : 'typed'}
      source={stored === undefined && known?.kind !== 'typed' ? (known?.source ?? unknown) : ''}
      keeps={keeps}
      fault={fault}
      // A record without what it needs would be no record: the last number stays until there is another.
      onValue={(value) => (value === undefined && needed ? undefined : setValue(path, value))}
      onLit={() => view.setState({ lit: path })}
    />
  )
}

const defaultKind = (kind: SledDimension['kind'] | undefined): 'default' | 'derived' =>
  kind === 'derived' ? 'derived' : 'default'

/** What cannot be built as typed says so at the field, too. */
function faultOf(
  findings: readonly {
    readonly check: string
    readonly fix: readonly { readonly path: string; readonly text: string }[]
  }[] = [],
  path: string,
): string | undefined {
  return findings.find((f) => f.check === 'buildable' && f.fix[0]?.path === path)?.fix[0]?.text
}
