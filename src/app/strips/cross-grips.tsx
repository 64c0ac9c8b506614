import './part-grips.css'
import { type KeyboardEvent, useState } from 'react'
import { movedAcross } from '../../job/move-part.ts'
import type { CrossSectionView } from '../../papers/cross-section.ts'
import type { PartHandle } from '../../papers/part-handles.ts'
import { type Spot, snapAcross } from '../../papers/snap.ts'
import { round } from '../drawing/frame.ts'
import { type CrossFrame, outlinePaths } from '../drawing/outline-path.ts'
import { fixed } from '../sheet/numbers.ts'
import { useWork } from '../work/work-context.ts'
import { useDrag } from './use-drag.ts'

export interface CrossGripsProps {
  readonly view: CrossSectionView
  readonly handles: readonly PartHandle[]
  readonly frame: CrossFrame
}

/** Within so many px something catches a part. */
const catches = 6

/** By these parts are moved around and across in the cross-section. */
export function CrossGrips({ view, handles, frame }: CrossGripsProps) {
  return (
    <g className="part-grips">
      {view.contents.map((part) => {
        const handle = handles.find((h) => h.id === part.id)
        return (
          handle?.across && (
            <Grip key={part.id} outlines={outlinePaths(part.outlines, frame)} handle={handle} frame={frame} />
          )
        )
      })}
    </g>
  )
}

interface Ghost {
  readonly path: string
  readonly to: Spot
  readonly at: string | undefined
}

function Grip(props: { readonly outlines: string; readonly handle: PartHandle; readonly frame: CrossFrame }) {
  const { outlines, handle, frame } = props
  const { job, view } = useWork()
  const [ghost, setGhost] = useState<Ghost>()
  const [from, setFrom] = useState<PartHandle>()
  const start = from ?? handle
  const move = (to: Spot) => ({ from: { x: start.x, y: start.y }, to, around: start.around })
  const { escape, ...pointer } = useDrag({
    job,
    name: `${handle.id} across`,
    // θ = 0 is up on the sheet, θ = 90° to the right.
    onMove: (dx, dy, free) => {
      const wanted = { x: start.x - dy / frame.scale, y: start.y + dx / frame.scale }
      const { to, at } = snapAcross(start, wanted, free ? 0 : catches / frame.scale)
      setGhost((g) => ({ path: g?.path ?? outlines, to, at }))
      return (project) => movedAcross(project, handle.id, move(to))
    },
    onEnd: () => {
      setGhost(undefined)
      setFrom(undefined)
    },
  })
  const keyed = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && escape()) return event.preventDefault()
    const ways: Readonly<Record<string, Spot>> = {
      ArrowUp: { x: 1, y: 0 },
      ArrowDown: { x: -1, y: 0 },
      ArrowRight: { x: 0, y: 1 },
      ArrowLeft: { x: 0, y: -1 },
    }
    const way = ways[event.key]
    if (!way || event.ctrlKey || event.metaKey) return
    event.preventDefault()
    const far = event.shiftKey ? 1 : 0.1
    const to = { x: handle.x + far * way.x, y: handle.y + far * way.y }
    job.edit((p) => movedAcross(p, handle.id, move(to)), `keys ${handle.id} across`)
  }
  return (
    <g>
      <path
        className="part-grip"
        d={outlines}
        // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- a drawing has no input to offer.
        role="slider"
        tabIndex={0}
        aria-label={`${handle.name}: move in the cross-section`}
        aria-valuenow={Number(Math.hypot(handle.x, handle.y).toFixed(2))}
        aria-valuetext={`${fixed(handle.x)} mm towards θ 0°, ${fixed(handle.y)} mm towards θ 90°`}
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
        <g className="part-ghost">
          <path
            d={ghost.path}
            transform={`translate(${round((ghost.to.y - start.y) * frame.scale)} ${round((start.x - ghost.to.x) * frame.scale)})`}
          />
          <text x={4} y={13}>
            {`r ${fixed(Math.hypot(ghost.to.x, ghost.to.y))} θ ${fixed(clockOf(ghost.to), 0)}°${ghost.at === undefined ? '' : `: ${ghost.at}`}`}
          </text>
        </g>
      )}
    </g>
  )
}

const clockOf = ({ x, y }: Spot): number => ((Math.atan2(y, x) * 180) / Math.PI + 360) % 360
