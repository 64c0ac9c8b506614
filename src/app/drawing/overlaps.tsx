import { useId } from 'react'
import type { LengthwiseView } from '../../papers/lengthwise.ts'
import { type Frame, pathOf } from './frame.ts'

/** Where a part would lie in the metal: hatched as a clash is. What sits in the wall has its own hole there. */
export function Overlaps({ view, frame }: { readonly view: LengthwiseView; readonly frame: Frame }) {
  const clip = useId()
  const inside = view.contents.filter((p) => !p.inWall)
  return (
    <>
      <clipPath id={clip}>
        <path d={view.metal.map((m) => pathOf(m.ring, frame, true)).join('')} />
      </clipPath>
      <path
        clipPath={`url(#${clip})`}
        fill="url(#hatch-lack)"
        d={inside.flatMap((p) => p.cut.map((c) => pathOf(c, frame, true))).join('')}
      />
    </>
  )
}
