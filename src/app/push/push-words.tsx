import type { InsertionWay, WayTouch } from '../../papers/insertion-way.ts'
import { capital, fixed } from '../sheet/numbers.ts'
import { depthAt, sampleAt } from './pushing.ts'

/** The name of a reference, for people. */
export type NameOf = (reference: string) => string

/** Where the unit is, what it comes nearest to, what holds it, and what is not there yet. */
export function PushWords(props: {
  readonly way: InsertionWay
  readonly travel: number | undefined
  readonly held: WayTouch | undefined
  readonly nameOf: NameOf
}) {
  const { way, travel, held, nameOf } = props
  const sample = travel === undefined ? undefined : sampleAt(way, depthAt(way, travel))
  return (
    <div className="push-words small" aria-live="polite">
      {held ? (
        <p className="push-held">
          <b>Stops here.</b> {capital(held.mover)} comes against {held.obstacle} at z {fixed(held.at.z, 1)}, θ{' '}
          {fixed(held.at.theta, 0)}°, r {fixed(held.at.r, 1)}. Pushed on, they would overlap by up to{' '}
          <b className="number">{fixed(held.overlap)} mm</b>.
        </p>
      ) : (
        sample && (
          <p>
            {Number.isFinite(sample.gap) ? (
              <>
                {sample.gap < 0 ? 'Overlap' : 'Least gap'} <b className="number">{fixed(Math.abs(sample.gap))} mm</b>
                {sample.gap >= 0 && <span className="number"> ({fixed(sample.worst)} at the worst)</span>}:{' '}
                {sample.mover} and {sample.obstacle}.
              </>
            ) : (
              'Nothing is near it here.'
            )}
          </p>
        )
      )}
      {travel !== undefined && way.absent.length > 0 && (
        <p className="soft">Not there yet: {way.absent.map(nameOf).join(', ')}.</p>
      )}
    </div>
  )
}
