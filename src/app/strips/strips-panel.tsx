import '../drawing/drawing.css'
import './strips.css'
import { type PointerEvent, useEffect, useId, useMemo, useRef, useState } from 'react'
import type { LengthwiseView } from '../../papers/lengthwise.ts'
import { round } from '../drawing/frame.ts'
import { type Mark, told } from '../drawing/lengthwise-section.tsx'
import { PlaceMark } from '../drawing/place-mark.tsx'
import { useWidth } from '../drawing/use-width.ts'
import type { Cursor } from '../work/view-store.ts'
import { useView, useWork } from '../work/work-context.ts'
import { CursorLayer, clock } from './cursor-layer.tsx'
import { GapStrip, gapTold } from './gap-strip.tsx'
import { createHoverStore } from './hover-store.ts'
import { PartGrips } from './part-grips.tsx'
import { PushBar } from './push-bar.tsx'
import { PushLayer } from './push-layer.tsx'
import { ReadoutLine } from './readout-line.tsx'
import { RulerStrip } from './ruler-strip.tsx'
import { SectionStrip } from './section-strip.tsx'
import { layoutOf, narrow, type Range, type StripLayout, zoomed } from './strip-frame.ts'
import { StripNames } from './strip-names.tsx'
import { StripTools } from './strip-tools.tsx'
import { StripsToCome } from './strips-to-come.tsx'
import { UnrolledStrip, unrolledTold } from './unrolled-strip.tsx'
import { useCursor } from './use-cursor.ts'
import { useLit } from './use-lit.ts'
import { usePushed } from './use-pushed.ts'
import { useStrips } from './use-strips.ts'
import { useToldHeight } from './use-told-height.ts'
import { useViewHeight } from './use-view-height.ts'

/** All strips on one ruler: section, least gap, unrolled map, and one cursor through them. */
export function StripsPanel({ lengthwise }: { readonly lengthwise: LengthwiseView }) {
  const { view } = useWork()
  const strips = useStrips()
  const [theta, dimensions, zoom] = [useView((v) => v.theta), useView((v) => v.dimensions), useView((v) => v.range)]
  const [ref, width] = useWidth<HTMLDivElement>()
  const viewHeight = useViewHeight()
  const [middle, setMiddle] = useState(0)
  const [hover] = useState(createHoverStore)
  // Undefined while nothing is pushed in. What stands behind the mouth makes the strips less tall, and the slider below
  // them is not to move under the hand.
  const [pushRoom, setPushRoom] = useState<number>()
  const pushBar = useId()
  const pushed = usePushed(lengthwise)
  const { reach } = lengthwise
  const inPlace = useMemo(() => wholeOf(lengthwise), [lengthwise])
  const z0 = Math.min(inPlace.z0, pushed?.room.z0 ?? inPlace.z0)
  const z1 = Math.max(inPlace.z1, pushed?.room.z1 ?? inPlace.z1)
  const whole: Range = useMemo(() => ({ z0, z1 }), [z0, z1])
  const layout = useMemo(
    () => layoutOf({ whole, reach, range: zoom, width, viewHeight, dimensions, middle }),
    [whole, reach, zoom, width, viewHeight, dimensions, middle],
  )
  useToldHeight(ref, layout)
  const cursor = useCursor()
  const { marks, ids, stretch } = useLit()
  const setCursor = (to: Cursor) => view.setState({ cursor: to })
  const setRange = (range: Range | undefined) => view.setState({ range })
  const shown = { z0: Math.max(z0, layout.range.z0), z1: Math.min(z1, layout.range.z1) }
  const wheel = useWheelZoom(layout, shown, whole, setRange)
  const pointer = usePlace(layout, whole, theta, cursor, setCursor, (at) => hover.setState({ at }))
  return (
    <section className="strips" aria-label="Strips along the hilt">
      <div className="strips-head">
        <ReadoutLine strips={strips} cursor={cursor} hover={hover} pushed={pushed?.words} />
        <StripTools
          theta={theta}
          onTheta={(to) => view.setState({ theta: to })}
          dimensions={dimensions}
          onDimensions={(on) => view.setState({ dimensions: on })}
          pushing={pushRoom !== undefined}
          onPushing={(on) => setPushRoom(on ? layout.height : undefined)}
          pushBar={pushBar}
          range={shown}
          whole={whole}
          zoomedIn={zoom !== undefined}
          onRange={setRange}
          middle={layout.cropped ? { value: middle, reach, onValue: setMiddle } : undefined}
        />
      </div>
      <p className="unseen">
        {told(pushed?.view ?? lengthwise)} {strips && gapTold(strips.gap)} {strips && unrolledTold(strips.unrolled)}
      </p>
      <div className="strips-sheet strip" ref={ref} style={{ minHeight: pushRoom }}>
        {width > 0 && (
          <>
            <svg width={layout.width} height={layout.height} aria-hidden="true" focusable="false">
              <StripNames layout={layout} theta={theta} small={width < narrow} />
              {!pushed && <LitStretch layout={layout} stretch={stretch} />}
              <SectionStrip view={pushed?.view ?? lengthwise} layout={layout} dimensions={dimensions} lit={ids} />
              {strips ? (
                <>
                  <GapStrip view={strips.gap} layout={layout} />
                  <UnrolledStrip view={strips.unrolled} layout={layout} whole={inPlace} lit={ids} />
                </>
              ) : (
                <StripsToCome layout={layout} />
              )}
              {pushed && <PushLayer layout={layout} pushed={pushed} />}
              <Marks layout={layout} marks={pushed?.marks ?? marks} theta={theta} />
            </svg>
            {/* What follows the hand lies on a sheet of its own: the drawing below is not painted anew. */}
            <svg ref={wheel} width={layout.width} height={layout.height} className="strips-over" {...pointer}>
              <RulerStrip layout={layout} whole={whole} onRange={setRange} />
              {strips && !pushed && (
                <PartGrips view={lengthwise} handles={strips.handles} layout={layout} whole={whole} />
              )}
              <CursorLayer layout={layout} whole={whole} cursor={cursor} hover={hover} onCursor={setCursor} />
            </svg>
          </>
        )}
      </div>
      {pushRoom !== undefined && <PushBar id={pushBar} />}
    </section>
  )
}

/** Metal that is broken off in the drawing is shown to its end where little lacks. */
function wholeOf({ z0, z1, sections }: LengthwiseView): Range {
  const [rear, blade] = [Math.min(...sections.map((s) => s.z0)), Math.max(...sections.map((s) => s.z1))]
  return { z0: z0 - rear < brokenOff ? Math.min(z0, rear) : z0, z1: blade - z1 < brokenOff ? Math.max(z1, blade) : z1 }
}

const brokenOff = 15

/** The stretch of the hilt that the lit field or finding is about. */
function LitStretch({ layout, stretch }: { readonly layout: StripLayout; readonly stretch: Range | undefined }) {
  if (!stretch) return undefined
  const [a, b] = [layout.frame.x(stretch.z0), layout.frame.x(stretch.z1)]
  return (
    <rect
      className="lit-stretch"
      x={round(a)}
      y={layout.ruler.height}
      width={round(Math.max(2, b - a))}
      height={layout.height - layout.ruler.height - 6}
    />
  )
}

/** A place is ringed in the section and on the map; its height is marked in the gap strip. */
function Marks(props: { readonly layout: StripLayout; readonly marks: readonly Mark[]; readonly theta: number }) {
  const { layout, marks, theta } = props
  const { frame, gap, unrolled } = layout
  return (
    <g className="strip-marks">
      {marks.map(({ at, tone }) => {
        const x = frame.x(at.z)
        return (
          <g key={`${tone} ${at.z} ${at.theta} ${at.r}`}>
            <PlaceMark x={x} y={frame.y(at.r * Math.cos(((at.theta - theta) * Math.PI) / 180))} tone={tone} />
            <path
              className={`place-tick place-${tone}`}
              d={`M${round(x)} ${gap.y}v7M${round(x)} ${gap.y + gap.height}v-7`}
            />
            <PlaceMark x={x} y={unrolled.y + (clock(at.theta) / 360) * unrolled.height} tone={tone} />
          </g>
        )
      })}
    </g>
  )
}

/** The wheel zooms only while Ctrl is held; otherwise it scrolls the page as everywhere. */
function useWheelZoom(layout: StripLayout, shown: Range, whole: Range, onRange: (r: Range | undefined) => void) {
  const ref = useRef<SVGSVGElement>(null)
  useEffect(() => {
    const svg = ref.current
    if (!svg) return
    const zoom = (event: WheelEvent) => {
      if (!event.ctrlKey) return
      event.preventDefault()
      const z = layout.frame.z(event.clientX - svg.getBoundingClientRect().left)
      onRange(zoomed(shown, whole, Math.exp(-event.deltaY / 400), z))
    }
    svg.addEventListener('wheel', zoom, { passive: false })
    return () => svg.removeEventListener('wheel', zoom)
  })
  return ref
}

/** Which place of the hilt the pointer is at; a press and what follows it moves the cursor there. */
function usePlace(
  layout: StripLayout,
  whole: Range,
  theta: number,
  cursor: Cursor,
  onCursor: (c: Cursor) => void,
  onHover: (c: Cursor | undefined) => void,
) {
  const held = useRef(false)
  const placeOf = (event: { readonly clientX: number; readonly clientY: number; readonly currentTarget: Element }) => {
    const box = event.currentTarget.getBoundingClientRect()
    const [x, y] = [event.clientX - box.left, event.clientY - box.top]
    const z = Math.round(10 * Math.min(whole.z1, Math.max(whole.z0, layout.frame.z(x)))) / 10
    const { section, unrolled } = layout
    if (y >= unrolled.y - 4) {
      const share = Math.min(0.9999, Math.max(0, (y - unrolled.y) / unrolled.height))
      return { z, theta: Math.round(360 * share) % 360 }
    }
    if (y >= section.y && y < section.y + section.height)
      return { z, theta: y <= layout.frame.y(0) ? theta : (theta + 180) % 360 }
    return { z, theta: cursor.theta }
  }
  return {
    onPointerDown: (event: PointerEvent<SVGSVGElement>) => {
      if (event.button !== 0) return
      event.currentTarget.setPointerCapture(event.pointerId)
      held.current = true
      onCursor(placeOf(event))
    },
    onPointerMove: (event: PointerEvent<SVGSVGElement>) => {
      if (held.current) return onCursor(placeOf(event))
      if (event.pointerType !== 'touch') onHover(placeOf(event))
    },
    onPointerUp: () => {
      held.current = false
    },
    onPointerCancel: () => {
      held.current = false
    },
    onPointerLeave: () => onHover(undefined),
  }
}
