import { memo, useId } from 'react'
import type { LengthwiseView, SectionedPart } from '../../papers/lengthwise.ts'
import { Contents, CutSled, PartNames } from '../drawing/contents.tsx'
import { pathOf } from '../drawing/frame.ts'
import { Metal } from '../drawing/metal.tsx'
import { Overlaps } from '../drawing/overlaps.tsx'
import { ChainDimensions } from './chain-dimensions.tsx'
import type { StripLayout } from './strip-frame.ts'

export interface SectionStripProps {
  readonly view: LengthwiseView
  readonly layout: StripLayout
  readonly dimensions: boolean
  /** References of parts whose outline is lit. */
  readonly lit: readonly string[]
}

/** The lengthwise section to scale. */
export const SectionStrip = memo(function SectionStrip({ view, layout, dimensions, lit }: SectionStripProps) {
  const clip = useId()
  const { frame, section, left, width } = layout
  // A name stands in what is in view of its part: at the part's middle it might be cut off.
  const seen = { ...frame, x: (z: number) => Math.max(left, Math.min(width - 16, frame.x(z))) }
  const [inside, inWall] = [view.contents.filter((p) => !p.inWall), view.contents.filter((p) => p.inWall)]
  return (
    <g className="strip-section">
      <clipPath id={clip}>
        <rect x={left - 4} y={section.y} width={width - left} height={section.height} />
      </clipPath>
      <g clipPath={`url(#${clip})`}>
        <Metal metal={view.metal} frame={frame} />
        {view.sleds.map((s) => (
          <CutSled key={s.id} sled={s} frame={frame} />
        ))}
        <Contents parts={inside} frame={frame} />
        <Overlaps view={view} frame={frame} />
        <Contents parts={view.intrusions} frame={frame} />
        <Contents parts={inWall} frame={frame} />
        <path className="line-axis" d={`M${frame.x(view.z0) - 6} ${frame.y(0)}H${frame.x(view.z1) + 6}`} />
        <path
          className="lit-outline"
          d={[...view.contents, ...view.intrusions]
            .filter((p) => lit.includes(p.id))
            .flatMap(outlines(layout))
            .join('')}
        />
        <PartNames parts={[...view.contents, ...view.intrusions]} frame={seen} />
        {dimensions && <ChainDimensions view={view} layout={layout} />}
      </g>
    </g>
  )
})

const outlines =
  ({ frame }: StripLayout) =>
  (p: SectionedPart): string[] =>
    (p.cut.length > 0 ? p.cut : p.seen).map((c) => pathOf(c, frame, true))
