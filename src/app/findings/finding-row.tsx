import type { Finding } from '../../checks/finding.ts'
import { fixed, percent, signed } from '../sheet/numbers.ts'
import { statusWords, VerdictMark } from '../verdict/verdict-mark.tsx'
import { type FindingActions, FixLine } from './fix-line.tsx'
import { MarginBar, type MarginScale } from './margin-bar.tsx'

export interface FindingRowProps {
  readonly finding: Finding
  readonly scale: MarginScale
  readonly open: boolean
  readonly onToggle: () => void
  readonly actions: FindingActions
  /** Whether what might help is still being tried. */
  readonly trying: boolean
}

/** One finding: a line to compare by, and opened, all that a doubter wants to know. */
export function FindingRow({ finding, scale, open, onToggle, actions, trying }: FindingRowProps) {
  const body = `finding-${finding.id.replace(/[^\w-]/g, '-')}`
  // A way in says so in its title.
  const state = finding.state === 'every state' || finding.check === 'way-in' ? undefined : finding.state
  return (
    <li className={`finding finding-${finding.status}`} data-open={open || undefined} data-finding={finding.id}>
      <h3 className="finding-head">
        <button type="button" className="finding-button" aria-expanded={open} aria-controls={body} onClick={onToggle}>
          <VerdictMark status={finding.status} />
          <span className="finding-title">
            {finding.title}
            <span className={finding.status === 'clear' && !state ? 'unseen' : 'finding-sub'}>
              {statusWords[finding.status]}
              {state && ` · ${state}`}
              {finding.probability !== undefined && ` · ${percent(finding.probability)} likely to hold`}
            </span>
          </span>
          <span className="finding-margin number">{signed(finding.margin.worst, finding.unit)}</span>
          <MarginBar finding={finding} scale={scale} />
        </button>
      </h3>
      <div id={body} className="finding-body" hidden={!open}>
        {open && <Details finding={finding} actions={actions} trying={trying && fails(finding)} />}
      </div>
    </li>
  )
}

const fails = (f: Finding): boolean => f.status === 'clash' || f.status === 'unsure'

function Details({ finding, actions, trying }: Pick<FindingRowProps, 'finding' | 'actions' | 'trying'>) {
  const { margin, unit, at } = finding
  return (
    <dl>
      <Row name="Why">{finding.why}</Row>
      <Row name="Left over">
        <span className="number">
          {signed(margin.worst, unit)} worst, {signed(margin.nominal, unit)} nominal, {signed(margin.best, unit)} best{' '}
          {unit}
        </span>
        {finding.settled < 0 && margin.nominal >= 0 && (
          <>; as measured it holds, but what varies may take more than is left, and no reading settles that.</>
        )}
      </Row>
      {(finding.fix.length > 0 || trying) && (
        <Row name="What helps">
          <ul>
            {finding.fix.map((fix) => (
              <li key={fix.text}>
                <FixLine fix={fix} actions={actions} />
              </li>
            ))}
            {trying && (
              <li className="soft" data-trying>
                Numbers that might help are being tried …
              </li>
            )}
          </ul>
        </Row>
      )}
      {finding.contributors.length > 0 && (
        <Row name="What moves it">
          <ul className="shares">
            {finding.contributors.slice(0, 4).map((c) => (
              <li key={c.path}>
                <span className="share" aria-hidden="true">
                  <span style={{ width: `${Math.round(c.share * 100)}%` }} />
                </span>
                <span className="number">{percent(c.share)}</span> {actions.placeName(c.path)}
                <span className="soft">
                  {' '}
                  ({sourceWords[c.source]}, {c.kind === 'unknown' ? 'can be measured closer' : 'varies'})
                </span>
              </li>
            ))}
          </ul>
        </Row>
      )}
      <Row name="Limit">
        {fixed(finding.limit, unit === '' ? 0 : 2)} {unit}; {finding.source}
      </Row>
      {at && (
        <Row name="Where">
          <span className="number">
            z {fixed(at.z, 1)} mm, θ {fixed(at.theta, 0)}°, r {fixed(at.r, 1)} mm
          </span>
        </Row>
      )}
    </dl>
  )
}

const sourceWords = {
  measured: 'as measured',
  preset: 'from the list',
  computed: 'computed',
  assumed: 'assumed',
} as const

function Row({ name, children }: { readonly name: string; readonly children: React.ReactNode }) {
  return (
    <div className="finding-row">
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  )
}
