import type { ReactNode } from 'react'

export interface PictureOption<T extends string> {
  readonly value: T
  readonly label: string
  readonly says: string
  readonly picture: ReactNode
}

export interface PictureChoiceProps<T extends string> {
  /** Path of the choice in the project; its options carry it in their names. */
  readonly path: string
  readonly legend: string
  readonly value: T
  readonly options: readonly PictureOption<T>[]
  readonly onValue: (value: T) => void
}

/** One of a few ways, each with its drawing: the system's own radio buttons. */
export function PictureChoice<T extends string>({ path, legend, value, options, onValue }: PictureChoiceProps<T>) {
  return (
    <fieldset className="picture-choice" id={path}>
      <legend>{legend}</legend>
      <div className="picture-options">
        {options.map((o) => (
          <label key={o.value} className="picture-option" data-chosen={o.value === value || undefined}>
            {o.picture}
            <span className="picture-words">
              <span>
                <input type="radio" name={path} checked={o.value === value} onChange={() => onValue(o.value)} />{' '}
                {o.label}
              </span>
              <span className="small soft">{o.says}</span>
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
