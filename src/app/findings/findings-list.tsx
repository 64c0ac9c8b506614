import './findings.css'
import { type ReactNode, useState } from 'react'
import type { Finding, NotChecked } from '../../checks/finding.ts'
import { VerdictMark } from '../verdict/verdict-mark.tsx'
import { FindingRow } from './finding-row.tsx'
import type { FindingActions } from './fix-line.tsx'
import { marginScale } from './margin-bar.tsx'
import { nothingChecked } from './nothing-checked.ts'

export interface FindingsListProps {
  /** Tightest first. */
  readonly findings: readonly Finding[]
  readonly notChecked: readonly NotChecked[]
  readonly assumptions: readonly string[]
  /** Id of the finding that is open and lit in the drawings. */
  readonly selected: string | undefined
  readonly onSelect: (id: string | undefined) => void
  readonly actions: FindingActions
  /** Whether what might help is still being tried. */
  readonly trying: boolean
  /** What stands in the head beside the title. */
  readonly tools?: ReactNode
}

/** Clear with so much to spare, mm, a finding may wait behind a button; so many are shown in any case. */
const room = 1
const least = 6
const roomy = (f: Finding): boolean => f.status === 'clear' && f.unit === 'mm' && f.margin.worst >= room

/** All findings, tightest first, on one scale; what could not be checked; what was taken for granted. */
export function FindingsList(props: FindingsListProps) {
  const { findings, notChecked, assumptions, selected, onSelect, actions, trying, tools } = props
  const [all, setAll] = useState(false)
  const empty = nothingChecked(props)
  const shown = findings.filter((f, i) => all || f.id === selected || i < least || !roomy(f))
  const lengths = marginScale(findings.filter((f) => f.unit === 'mm'))
  return (
    <section className="findings" aria-labelledby="findings-title">
      <div className="panel-head">
        <h2 id="findings-title">Findings</h2>
        {!empty && (
          <p className="small soft">
            {findings.length} checked{notChecked.length > 0 && `, ${notChecked.length} not`}, tightest first
          </p>
        )}
        {tools && <div className="panel-tool">{tools}</div>}
      </div>
      {empty ? (
        <p className="small soft">Nothing to check yet: nothing lies in the hilt.</p>
      ) : (
        <p className="finding-columns small soft" aria-hidden="true">
          <span>left, mm</span>
          <span>worst to best</span>
        </p>
      )}
      <ul>
        {notChecked.map((n) => (
          <NotCheckedRow key={n.id} notChecked={n} actions={actions} />
        ))}
        {shown.map((f) => (
          <FindingRow
            key={f.id}
            finding={f}
            scale={f.unit === 'mm' ? lengths : marginScale([f])}
            open={f.id === selected}
            onToggle={() => onSelect(f.id === selected ? undefined : f.id)}
            actions={actions}
            trying={trying}
          />
        ))}
      </ul>
      {(all || shown.length < findings.length) && (
        <button type="button" className="button button-plain" aria-expanded={all} onClick={() => setAll(!all)}>
          {all
            ? 'Show the tight ones only'
            : `Show ${findings.length - shown.length} more, with ${room} mm or more to spare`}
        </button>
      )}
      {assumptions.length > 0 && (
        <div className="assumed small">
          <h3>Taken for granted</h3>
          <ul>
            {assumptions.map((a) => (
              <li key={a}>{a}</li>
            ))}
          </ul>
        </div>
      )}
    </section>
  )
}

function NotCheckedRow({ notChecked, actions }: { readonly notChecked: NotChecked; readonly actions: FindingActions }) {
  const field = actions.goTo(notChecked.path)
  return (
    <li className="finding finding-not-checked">
      <div className="finding-button finding-plain">
        <VerdictMark status="not-checked" />
        <span className="finding-title">
          {notChecked.title}
          <span className="finding-sub">
            not checked · {notChecked.hint}{' '}
            {field && (
              <button type="button" className="button button-plain" onClick={field.go}>
                Go to {field.label}
              </button>
            )}
          </span>
        </span>
      </div>
    </li>
  )
}
