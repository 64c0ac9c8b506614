import './verdict.css'
import type { Status } from '../../checks/verdict.ts'

/** The words of the verdicts. */
export const statusWords: Readonly<Record<Status, string>> = {
  clear: 'clear',
  unsure: 'unsure',
  clash: 'clash',
  'not-checked': 'not checked',
  advice: 'advice',
}

/**
 * The marks of this tool: two walls of a bore and what is to go between them. It passes with room on both sides; it
 * may or may not; it cuts into the walls. Told by form, not by colour alone. The word stands beside it.
 */
export function VerdictMark({ status, size = 22 }: { readonly status: Status; readonly size?: number }) {
  return (
    <svg className={`mark mark-${status}`} width={size} height={size} viewBox="0 0 24 24" aria-hidden="true">
      {status !== 'advice' && <path className="mark-wall" d="M2 4h20M2 20h20" />}
      {status === 'clear' && <rect className="mark-full" x="5" y="8" width="14" height="8" />}
      {status === 'unsure' && (
        <>
          <rect className="mark-full" x="6" y="10" width="12" height="4" />
          <path className="mark-maybe" d="M6 5.5v13M18 5.5v13" />
        </>
      )}
      {status === 'clash' && (
        <>
          <rect className="mark-paper" x="5" y="1" width="14" height="22" />
          <path className="mark-hatch" d="M5 8 12 1M5 15 19 1M5 22 19 8M11 23 19 15" />
          <rect className="mark-line" x="5" y="1" width="14" height="22" />
        </>
      )}
      {status === 'not-checked' && <path className="mark-maybe" d="M4 12h16" />}
      {status === 'advice' && <path className="mark-line" d="M4 20 16 4l4 3L8 22zM14 7l4 3" />}
    </svg>
  )
}
