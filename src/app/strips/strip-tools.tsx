import { type Range, zoomed } from './strip-frame.ts'
import { TypedNumber } from './typed-number.tsx'

export interface StripToolsProps {
  readonly theta: number
  readonly onTheta: (theta: number) => void
  readonly dimensions: boolean
  readonly onDimensions: (on: boolean) => void
  readonly pushing: boolean
  readonly onPushing: (on: boolean) => void
  /** Of what opens where something is to be pushed in. */
  readonly pushBar: string
  readonly range: Range
  readonly whole: Range
  readonly zoomedIn: boolean
  readonly onRange: (range: Range | undefined) => void
  /** Only where the section is higher than its strip: what of it is shown. */
  readonly middle: { readonly value: number; readonly reach: number; readonly onValue: (v: number) => void } | undefined
}

/** How the strips are looked at. */
export function StripTools(props: StripToolsProps) {
  const { theta, onTheta, dimensions, onDimensions, range, whole, zoomedIn, onRange, middle } = props
  const { pushing, onPushing, pushBar } = props
  return (
    <div className="strip-tools">
      <button
        type="button"
        className="button"
        aria-expanded={pushing}
        aria-controls={pushing ? pushBar : undefined}
        onClick={() => onPushing(!pushing)}
      >
        Push it in
      </button>
      <TypedNumber
        id="cut-angle"
        label="Cut at θ"
        unit="°"
        value={theta}
        places={0}
        min={0}
        max={359}
        step={1}
        onValue={onTheta}
      />
      <label className="strip-check">
        <input type="checkbox" checked={dimensions} onChange={(event) => onDimensions(event.target.checked)} />
        Dimensions
      </label>
      <span className="zoom-buttons">
        {middle && (
          <input
            type="range"
            aria-label="Which height of the section is shown, mm above the axis"
            min={-middle.reach}
            max={middle.reach}
            step={0.5}
            value={middle.value}
            onChange={(event) => middle.onValue(Number(event.target.value))}
          />
        )}
        <button
          type="button"
          className="button"
          aria-label="Farther"
          disabled={!zoomedIn}
          onClick={() => onRange(zoomed(range, whole, 1 / 1.6))}
        >
          −
        </button>
        <button type="button" className="button" aria-label="Nearer" onClick={() => onRange(zoomed(range, whole, 1.6))}>
          +
        </button>
        <button type="button" className="button" disabled={!zoomedIn} onClick={() => onRange(undefined)}>
          Whole hilt
        </button>
      </span>
    </div>
  )
}
