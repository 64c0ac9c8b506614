import './drawing.css'
import type { Where } from '../../checks/finding.ts'
import type { LengthwiseView } from '../../papers/lengthwise.ts'
import { fixed } from '../sheet/numbers.ts'
import { Contents, CutSled, PartNames } from './contents.tsx'
import { frameOf, sheetMargin } from './frame.ts'
import { Metal } from './metal.tsx'
import { Overlaps } from './overlaps.tsx'
import { PlaceMark } from './place-mark.tsx'
import { Ruler } from './ruler.tsx'
import { SectionDimensions } from './section-dimensions.tsx'
import { SectionPlane } from './section-plane.tsx'
import { useWidth } from './use-width.ts'

/** A place to ring, and in which ink. */
export interface Mark {
  readonly at: Where
  readonly tone: 'clear' | 'unsure' | 'clash' | 'blue' | 'not-checked' | 'advice'
  /** What is between the two there, where that is a length: the cross-section may have other gaps. */
  readonly text?: string
}

export interface LengthwiseSectionProps {
  readonly view: LengthwiseView
  /** Height of the cross-section plane, mm. */
  readonly z: number
  readonly onZ: (z: number) => void
  readonly marks: readonly Mark[]
  /** The field whose dimension is lit. */
  readonly lit?: string | undefined
}

/** The lengthwise section to scale, under its ruler, with the plane of the cross-section to move along it. */
export function LengthwiseSection(props: LengthwiseSectionProps) {
  const { view, z, onZ, marks, lit } = props
  const [ref, width] = useWidth<HTMLDivElement>()
  // Wide screens show more of a wide hilt, not a taller strip than one can take in.
  const tallest = Math.max(300, 0.26 * width)
  const frame = frameOf({ ...view, width, margin: sheetMargin, tallest, leastScale: 1 })
  return (
    <div className="strip" ref={ref}>
      {width > 0 && (
        <div className="strip-sheet" style={{ width: frame.width }}>
          <svg width={frame.width} height={frame.height} role="img" aria-label={told(view)}>
            <Ruler frame={frame} z0={view.z0} z1={view.z1} y={26} />
            <text className="axis-name" x={8} y={26}>
              z mm
            </text>
            <Metal metal={view.metal} frame={frame} />
            {view.sleds.map((s) => (
              <CutSled key={s.id} sled={s} frame={frame} />
            ))}
            <Contents parts={view.contents} frame={frame} />
            <Contents parts={view.intrusions} frame={frame} />
            <Overlaps view={view} frame={frame} />
            <path className="line-axis" d={`M${frame.x(view.z0) - 8} ${frame.y(0)}H${frame.x(view.z1) + 8}`} />
            <PartNames parts={[...view.contents, ...view.intrusions]} frame={frame} />
            <SectionDimensions view={view} frame={frame} lit={lit} />
            <SectionPlane frame={frame} z={z} view={view} onZ={onZ} scrolls={frame.width > width + 1} />
            {marks.map((m) => (
              <PlaceMark
                key={`${m.tone} ${m.at.z} ${m.at.theta} ${m.at.r}`}
                x={frame.x(m.at.z)}
                y={frame.y(m.at.r * Math.cos(((m.at.theta - view.theta) * Math.PI) / 180))}
                tone={m.tone}
              />
            ))}
          </svg>
          <input
            className="plane-slider"
            type="range"
            aria-label="Height of the cross-section"
            aria-valuetext={`z ${fixed(z, 1)} mm`}
            min={Math.floor(view.z0)}
            max={Math.ceil(view.z1)}
            step={0.5}
            value={z}
            onChange={(event) => onZ(Number(event.target.value))}
            style={{ marginLeft: frame.x(view.z0) - thumb / 2, width: frame.x(view.z1) - frame.x(view.z0) + thumb }}
          />
        </div>
      )}
    </div>
  )
}

/** Width of the slider's thumb, as in the style sheet, px. */
const thumb = 24

/** The picture in words. */
export function told(view: LengthwiseView): string {
  const span = (a: number, b: number) => `from ${fixed(a, 1)} to ${fixed(b, 1)}`
  const bores = view.bores.map((b) => `${b.name} ${fixed(b.d0)} wide ${span(b.z0, b.z1)}`)
  const sleds = view.sleds.map((s) => `${s.name} ${fixed(2 * s.radius, 1)} wide ${span(s.z0, s.z1)}`)
  const parts = view.contents.map((p) => {
    const zs = p.seen.flat().map(([z]) => z)
    return `${p.name} ${span(Math.min(...zs), Math.max(...zs))}`
  })
  return `Lengthwise section, cut at ${fixed(view.theta, 0)} degrees, in millimetres along the hilt: ${[...bores, ...sleds, ...parts].join('; ')}.`
}
