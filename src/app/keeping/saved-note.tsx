import { useStanding } from './keeping-context.ts'
import { timeOfDay } from './saved-words.ts'

/** Whether the job is kept, in two or three words beside its name. */
export function SavedNote() {
  const standing = useStanding()
  const wrong = standing.kind === 'failed' || standing.kind === 'elsewhere'
  return (
    <p className={wrong ? 'saved-note saved-not' : 'saved-note'} data-standing={standing.kind}>
      {standing.kind === 'kept' ? `saved ${timeOfDay(standing.at)}` : words[standing.kind]}
    </p>
  )
}

const words = {
  untouched: 'kept once you change it',
  waiting: 'not saved yet',
  failed: 'not saved',
  elsewhere: 'not saved',
} as const
