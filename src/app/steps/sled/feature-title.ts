import type { FeatureKind } from '../../../papers/sled-words.ts'
import { valueWords } from '../../../papers/value-words.ts'
import { placeWords } from '../../../project/place-words.ts'
import type { Project } from '../../../project/schema/project.ts'
import { capital } from '../../sheet/numbers.ts'

export interface FeatureTitle {
  /** "Bulkhead at z 196.8", "Window for the push switch". */
  readonly what: string
  /** The word that findings tell it from its like by; undefined where that says no more than what it is. */
  readonly called: string | undefined
}

/** What a feature of a sled is and where it sits: of several bulkheads one looks for the one at that height. */
export function featureTitle(
  project: Project,
  kind: FeatureKind,
  record: Readonly<Record<string, unknown>>,
): FeatureTitle {
  const { id, z, theta, text, against } = record
  const aim = record['for']
  const word = kind.list === 'keys' && record['kind'] === 'keyway' ? 'keyway' : kind.word
  const called = typeof id === 'string' && !word.split(' ').includes(id.replace(/-\d+$/, '')) ? id : undefined
  const place = (): string => {
    if (typeof aim === 'string') return ` for ${placeWords(project, aim)}`
    if (typeof against === 'string') return ` against ${placeWords(project, against)}`
    if (typeof text === 'string') return ` “${text}”`
    if (z !== undefined) return ` at z ${valueWords(project, z)}`
    return theta === undefined ? '' : ` at θ ${valueWords(project, theta)}°`
  }
  return {
    what: capital(`${word}${place()}`),
    called: typeof aim === 'string' ? undefined : called?.replaceAll('-', ' '),
  }
}
