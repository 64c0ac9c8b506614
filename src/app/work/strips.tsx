import { StripsPanel } from '../strips/strips-panel.tsx'
import { useWork } from './work-context.ts'

/** The strips on one ruler, as soon as there is something to draw. */
export function Strips() {
  const { views } = useWork().judged
  return views && <StripsPanel lengthwise={views.lengthwise} />
}
