import type { LengthwiseView } from '../../papers/lengthwise.ts'
import { fixed } from '../sheet/numbers.ts'
import { Dimension } from './dimension.tsx'
import { type Frame, sheetMargin } from './frame.ts'

/** The sizes that were typed, and what came of them. */
export function SectionDimensions(props: {
  readonly view: LengthwiseView
  readonly frame: Frame
  readonly lit: string | undefined
}) {
  const { view, frame, lit } = props
  const [mouth] = view.bores
  const last = view.bores.at(-1)
  const sled = view.sleds[0]
  if (!mouth || !last) return undefined
  const below = frame.height - sheetMargin.bottom
  const free = Math.max(...(sled ? [sled.z1] : [last.z0]), last.z0)
  const inside = frame.x(last.z1) - frame.x(free) > 44
  return (
    <g>
      <Dimension
        upright
        from={[frame.x(mouth.z0), frame.y(mouth.d0 / 2)]}
        to={[frame.x(mouth.z0), frame.y(-mouth.d0 / 2)]}
        at={34}
        text={`⌀${fixed(mouth.d0)}`}
        lit={mouth.thread ? lit === 'thread' : lit === 'bore'}
      />
      {mouth !== last && inside && (
        <Dimension
          upright
          from={[frame.x(last.z1) - 14, frame.y(last.d1 / 2)]}
          to={[frame.x(last.z1) - 14, frame.y(-last.d1 / 2)]}
          at={frame.x(last.z1) - 14}
          text={`⌀${fixed(last.d1)}`}
          lit={lit === 'bore'}
        />
      )}
      {sled && (
        <Dimension
          from={[frame.x(sled.z0), frame.y(-sled.radius)]}
          to={[frame.x(sled.z1), frame.y(-sled.radius)]}
          at={below + 18}
          text={`sled ⌀${fixed(2 * sled.radius, 1)} × ${fixed(sled.z1 - sled.z0, 1)}`}
        />
      )}
      <Dimension
        from={[frame.x(mouth.z0), frame.y(-view.reach)]}
        to={[frame.x(last.z1), frame.y(-view.reach)]}
        at={below + 40}
        text={fixed(last.z1 - mouth.z0, 1)}
        lit={lit === 'depth'}
      />
    </g>
  )
}
