import { type Eye, nearer, start, turns, views } from './eye.ts'
import type { MetalShown } from './hilt-scene.tsx'

/** What is shown of the hilt, and how. */
export interface Shows {
  readonly metal: MetalShown
  readonly contents: boolean
  readonly sledCut: boolean
  /** How far things are drawn apart, 0 to 1. */
  readonly apart: number
}

export const usualShows: Shows = { metal: 'open', contents: true, sledCut: true, apart: 0 }

const metals: readonly (readonly [MetalShown, string])[] = [
  ['open', 'Hilt cut open'],
  ['whole', 'Hilt whole'],
  ['away', 'Without the hilt'],
]

export interface HiltToolsProps {
  readonly onEye: (turn: (eye: Eye) => Eye) => void
  readonly shows: Shows
  readonly onShows: (shows: Shows) => void
  readonly onPicture: () => void
}

/** Every move of the eye and every way of showing, as buttons. */
export function HiltTools({ onEye, shows, onShows, onPicture }: HiltToolsProps) {
  return (
    <>
      <fieldset className="solid-tools">
        <legend className="unseen">View of the solid</legend>
        {views.map(([name, to]) => (
          <button
            key={name}
            type="button"
            className="button button-small"
            onClick={() => onEye((e) => ({ ...e, ...to }))}
          >
            {name}
          </button>
        ))}
        <span className="solid-pad">
          {turns.map(([name, sign, turn]) => (
            <button
              key={name}
              type="button"
              className="button button-small"
              aria-label={name}
              onClick={() => onEye(turn)}
            >
              {sign}
            </button>
          ))}
          <button
            type="button"
            className="button button-small"
            aria-label="Nearer"
            onClick={() => onEye((e) => nearer(e, 1.25))}
          >
            +
          </button>
          <button
            type="button"
            className="button button-small"
            aria-label="Farther"
            onClick={() => onEye((e) => nearer(e, 0.8))}
          >
            −
          </button>
        </span>
        <button
          type="button"
          className="button button-small"
          onClick={() => onEye((e) => ({ ...e, zoom: start.zoom }))}
        >
          Fit
        </button>
        <button type="button" className="button button-small" onClick={onPicture}>
          Save picture
        </button>
      </fieldset>
      <fieldset className="solid-tools">
        <legend className="unseen">What the solid shows</legend>
        <select
          className="solid-choice"
          aria-label="Hilt"
          value={shows.metal}
          onChange={(event) => onShows({ ...shows, metal: event.target.value as MetalShown })}
        >
          {metals.map(([value, name]) => (
            <option key={value} value={value}>
              {name}
            </option>
          ))}
        </select>
        <label className="tick">
          <input
            type="checkbox"
            checked={shows.contents}
            onChange={(event) => onShows({ ...shows, contents: event.target.checked })}
          />
          Contents
        </label>
        <label className="tick">
          <input
            type="checkbox"
            checked={shows.sledCut}
            onChange={(event) => onShows({ ...shows, sledCut: event.target.checked })}
          />
          Sled cut open
        </label>
        <label className="tick solid-apart">
          Draw apart
          <input
            className="slider"
            type="range"
            min={0}
            max={100}
            step={10}
            value={Math.round(100 * shows.apart)}
            aria-valuetext={shows.apart === 0 ? 'in place' : `${Math.round(100 * shows.apart)} %`}
            onChange={(event) => onShows({ ...shows, apart: Number(event.target.value) / 100 })}
          />
        </label>
      </fieldset>
    </>
  )
}
