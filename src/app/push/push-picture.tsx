import { useMemo } from 'react'
import type { InsertionWay } from '../../papers/insertion-way.ts'
import type { LengthwiseView } from '../../papers/lengthwise.ts'
import { pushedSection, wayRoom } from '../../papers/pushed-section.ts'
import { shiftAt } from '../../papers/way-shift.ts'
import { Contents, CutSled } from '../drawing/contents.tsx'
import { frameOf } from '../drawing/frame.ts'
import { Metal } from '../drawing/metal.tsx'
import { PlaceMark } from '../drawing/place-mark.tsx'
import { useWidth } from '../drawing/use-width.ts'
import { stopsOf } from './pushing.ts'

export interface PushPictureProps {
  readonly view: LengthwiseView
  readonly way: InsertionWay
  /** Undefined where all is in its place. */
  readonly depth: number | undefined
}

const margin = { left: 2, right: 2, top: 8, bottom: 8 }

/** The section beside the slider, small: what is pushed at its depth, and where it first comes against something. */
export function PushPicture({ view, way, depth }: PushPictureProps) {
  const [ref, width] = useWidth<HTMLDivElement>()
  const room = useMemo(() => wayRoom(view, way), [view, way])
  const { reach, theta } = view
  const frame = useMemo(
    () => frameOf({ ...room, reach, width, margin, tallest: 160, leastScale: 0 }),
    [room, reach, width],
  )
  const now = useMemo(() => (depth === undefined ? view : pushedSection(view, way, depth)), [view, way, depth])
  const [first] = stopsOf(way)
  const brought = way.moves.startsWith('sections/') && depth !== undefined ? shiftAt(way, depth) : 0
  return (
    <div className="push-picture strip" ref={ref}>
      {width > 0 && (
        // What it shows is told in words below the slider.
        <svg width={frame.width} height={frame.height} aria-hidden="true" focusable="false">
          <Metal metal={now.metal} frame={frame} />
          {now.sleds.map((s) => (
            <CutSled key={s.id} sled={s} frame={frame} />
          ))}
          <Contents parts={now.contents} frame={frame} />
          <Contents parts={now.intrusions} frame={frame} />
          <path className="line-axis" d={`M${frame.x(room.z0)} ${frame.y(0)}H${frame.x(room.z1)}`} />
          {first && (
            <PlaceMark
              x={frame.x(first.at.z + brought)}
              y={frame.y(first.at.r * Math.cos(((first.at.theta - theta) * Math.PI) / 180))}
              tone="clash"
            />
          )}
        </svg>
      )}
    </div>
  )
}
