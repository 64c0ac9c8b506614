import { StripsPanel } from '../strips/strips-panel.tsx'
import { useWork } from './work-context.ts'

/** The strips on one ruler, as soon as there is something to draw. */
export function Strips() {
  const { views, stand } = useWork().judged
  if (!views) return undefined
  const old = stand === 'wrong' || stand === 'stopped'
  return (
    <div className={old ? 'old' : undefined}>
      <StripsPanel lengthwise={views.lengthwise} />
    </div>
  )
}
