import { useState } from 'react'
import type { SledDimension } from '../../papers/sled-dimension.ts'
import type { Project } from '../../project/schema/project.ts'
import type { Far } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { capital } from '../sheet/numbers.ts'
import { useAsked } from '../work/use-asked.ts'
import { DimensionTable } from './dimension-table.tsx'
import type { Picked } from './picked.ts'

const ask = (calls: Far<WorkCalls>, project: Project) => calls.dimensions(project)

/** The same that clicking tells, as a list: every nest of every sled with its dimensions. Needs no picture. */
export function NestList(props: {
  readonly nameOf: (reference: string) => string
  readonly onField: (path: string) => void
  readonly onPick: ((picked: Picked) => void) | undefined
}) {
  const { nameOf, onField, onPick } = props
  const [open, setOpen] = useState(false)
  const { value } = useAsked('solid-dimensions', open, ask)
  return (
    <details className="solid-words" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Nests and their dimensions</summary>
      {nestsOf(value ?? []).map((n) => (
        <details key={n.key} className="nest">
          <summary>
            {capital(n.nest)} {n.part === undefined ? `of ${nameOf(n.sled)}` : `for ${nameOf(n.part)}`}
          </summary>
          {onPick && (
            <button
              type="button"
              className="button button-plain"
              onClick={() => onPick({ kind: 'face', sled: n.sled, nest: n.nest, by: n.part ?? n.sled })}
            >
              Show it in the solid
            </button>
          )}
          <DimensionTable dimensions={n.dimensions} onField={onField} />
        </details>
      ))}
    </details>
  )
}

interface Nest {
  readonly key: string
  readonly sled: string
  readonly nest: string
  readonly part: string | undefined
  readonly dimensions: SledDimension[]
}

function nestsOf(list: readonly SledDimension[]): Nest[] {
  const found = new Map<string, Nest>()
  for (const d of list) {
    const key = `${d.sled} ${d.nest} ${d.part ?? ''}`
    const nest = found.get(key) ?? { key, sled: `sleds/${d.sled}`, nest: d.nest, part: d.part, dimensions: [] }
    nest.dimensions.push(d)
    found.set(key, nest)
  }
  return [...found.values()]
}
