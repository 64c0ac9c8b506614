import './verdict.css'
import type { ReactNode } from 'react'
import type { Finding } from '../../checks/finding.ts'
import type { Verdict } from '../../checks/verdict.ts'
import { capital, signed } from '../sheet/numbers.ts'
import { needed } from './needed.ts'
import { statusWords, VerdictMark } from './verdict-mark.tsx'

export interface VerdictBandProps {
  readonly verdict: Verdict
  readonly tightest: Finding | undefined
  readonly notChecked: number
  /** What would settle or mend the tightest place. */
  readonly help?: ReactNode
  /** The file. */
  readonly children?: ReactNode
}

/** The answer: word, mark and hatch, and the tightest place with what is left there. */
export function VerdictBand({ verdict, tightest, notChecked, help, children }: VerdictBandProps) {
  return (
    <section className={`verdict verdict-${verdict}`} aria-labelledby="verdict-word">
      <span className="verdict-hatch" aria-hidden="true" />
      <VerdictMark status={verdict} size={44} />
      <div className="verdict-text">
        <p id="verdict-word" className="verdict-word">
          <span className="unseen">Verdict: </span>
          {statusWords[verdict]}
        </p>
        <p className="verdict-says">{sentence(verdict, notChecked)}</p>
      </div>
      {tightest && (
        <div className="verdict-tightest">
          <p className="small soft">Tightest</p>
          <p>
            {capital(tightest.title)}{' '}
            <b className="number">
              {signed(tightest.margin.worst, tightest.unit)} {tightest.unit}
            </b>{' '}
            <span className="soft">{needed(tightest)} at the worst</span>
          </p>
          {help && <p className="small verdict-help">{help}</p>}
        </div>
      )}
      {children}
    </section>
  )
}

function sentence(verdict: Verdict, notChecked: number): string {
  if (verdict === 'clear') return 'It goes in and lies free, for every size these numbers allow.'
  if (verdict === 'clash') return 'It does not go together with these numbers.'
  if (notChecked > 0) return 'Something could not be checked yet.'
  return 'It depends on a size that is not known well enough.'
}
