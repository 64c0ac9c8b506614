import './part-grips.css'
import { type KeyboardEvent, memo, useState } from 'react'
import { movedAlong } from '../../job/move-part.ts'
import type { LengthwiseView, SectionedPart } from '../../papers/lengthwise.ts'
import type { PartHandle } from '../../papers/part-handles.ts'
import { snapAlong } from '../../papers/snap.ts'
import { pathOf, round } from '../drawing/frame.ts'
import { fixed } from '../sheet/numbers.ts'
import { useWork } from '../work/work-context.ts'
import type { Range, StripLayout } from './strip-frame.ts'
import { useDrag } from './use-drag.ts'

export interface PartGripsProps {
  readonly view: LengthwiseView
  readonly handles: readonly PartHandle[]
  readonly layout: StripLayout
  readonly whole: Range
}

/** Within so many px something catches a part. */
const catches = 7

/** By these parts are moved along the axis: drawn with the pointer, or with the arrow keys. */
export const PartGrips = memo(function PartGrips({ view, handles, layout, whole }: PartGripsProps) {
  return (
    <g className="part-grips">
      {handles
        .filter((h) => h.along)
        .map((handle) => {
          const part = view.contents.find((c) => c.id === handle.id)
          return part && <Grip key={handle.id} part={part} handle={handle} layout={layout} whole={whole} />
        })}
    </g>
  )
})

interface Ghost {
  readonly path: string
  readonly by: number
  readonly z: number
  readonly at: string | undefined
}

function Grip(props: {
  readonly part: SectionedPart
  readonly handle: PartHandle
  readonly layout: StripLayout
  readonly whole: Range
}) {
  const { part, handle, layout, whole } = props
  const { job, view } = useWork()
  const { frame, section } = layout
  const [ghost, setGhost] = useState<Ghost>()
  const [from, setFrom] = useState<PartHandle>()
  const outline = (part.cut.length > 0 ? part.cut : part.seen).map((c) => pathOf(c, frame, true)).join('')
  const start = from ?? handle
  const drag = useDrag({
    job,
    name: handle.id,
    onMove: (dx, _dy, free) => {
      const { to, at } = snapAlong(start, start.z0 + dx / frame.scale, free ? 0 : catches / frame.scale)
      const by = to - start.z0
      setGhost((g) => ({ path: g?.path ?? outline, by, z: to, at }))
      return (project) => movedAlong(project, handle.id, by)
    },
    onEnd: () => {
      setGhost(undefined)
      setFrom(undefined)
    },
  })
  const { escape, ...pointer } = drag
  const keyed = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && escape()) return event.preventDefault()
    const way = event.key === 'ArrowLeft' ? -1 : event.key === 'ArrowRight' ? 1 : 0
    if (way === 0 || event.ctrlKey || event.metaKey) return
    event.preventDefault()
    job.edit((p) => movedAlong(p, handle.id, way * (event.shiftKey ? 1 : 0.1)), `keys ${handle.id}`)
  }
  return (
    <g>
      <path
        className="part-grip"
        d={outline}
        // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- a drawing has no input to offer.
        role="slider"
        tabIndex={0}
        aria-label={`${handle.name}: move along the hilt`}
        aria-valuemin={Math.floor(whole.z0)}
        aria-valuemax={Math.ceil(whole.z1)}
        aria-valuenow={Number(handle.z0.toFixed(2))}
        aria-valuetext={`rear end at z ${fixed(handle.z0)} mm`}
        onKeyDown={keyed}
        onFocus={() => view.setState({ lit: handle.id })}
        onBlur={() => view.setState((v) => (v.lit === handle.id ? { lit: undefined } : v))}
        {...pointer}
        onPointerDown={(event) => {
          setFrom(handle)
          pointer.onPointerDown(event)
        }}
      />
      {ghost && (
        <g className="part-ghost" transform={`translate(${round(ghost.by * frame.scale)} 0)`}>
          <path d={ghost.path} />
          <text x={round(frame.x(start.z0))} y={section.y + 14}>
            {`z ${fixed(ghost.z)}${ghost.at === undefined ? '' : `: ${ghost.at}`}`}
          </text>
        </g>
      )}
    </g>
  )
}
