import { useState } from 'react'
import { duplicate, rename, takeAway } from './job-list.ts'
import type { JobCard, KeptJob } from './kept-job.ts'
import { dateAndTime, sizeText } from './saved-words.ts'

export interface JobRowProps {
  readonly card: JobCard
  /** It was taken off the shelf, and can still be put back. */
  readonly onGone: (kept: KeptJob) => void
}

/** A kept job in the list: its name opens it. */
export function JobRow({ card, onGone }: JobRowProps) {
  const [name, setName] = useState<string>()
  const give = async () => {
    const wanted = name?.trim() ?? ''
    setName(undefined)
    if (wanted !== '' && wanted !== card.name) await rename(card.id, wanted)
  }
  return (
    <li className="job-row">
      {name === undefined ? (
        <a className="job-name" href={`#job/${card.id}`}>
          {card.name}
        </a>
      ) : (
        <form
          className="job-name"
          onSubmit={(event) => {
            event.preventDefault()
            void give()
          }}
        >
          <input
            className="field-input"
            aria-label={`New name of ${card.name}`}
            value={name}
            maxLength={120}
            ref={chosen}
            onChange={(event) => setName(event.target.value)}
            onKeyDown={(event) => event.key === 'Escape' && setName(undefined)}
            onBlur={() => void give()}
          />
        </form>
      )}
      <p className="job-facts small soft number">
        <time dateTime={new Date(card.written).toISOString()}>{dateAndTime(card.written)}</time>
        <span>{sizeText(card.size)}</span>
      </p>
      <p className="job-deeds">
        <button type="button" className="button button-plain" onClick={() => setName(card.name)}>
          Rename<span className="unseen"> {card.name}</span>
        </button>
        <button type="button" className="button button-plain" onClick={() => void duplicate(card.id)}>
          Duplicate<span className="unseen"> {card.name}</span>
        </button>
        <button
          type="button"
          className="button button-plain"
          onClick={() => void takeAway(card.id).then((kept) => kept && onGone(kept))}
        >
          Delete<span className="unseen"> {card.name}</span>
        </button>
      </p>
    </li>
  )
}

/** The hand is in the field that was asked for, and typing takes the place of the old name. */
function chosen(input: HTMLInputElement | null): void {
  input?.select()
}
