import type { Fix } from '../../checks/finding.ts'

/** What can be done about a finding on this page. */
export interface FindingActions {
  /** Undefined where the page has no field that takes the fix's number. */
  readonly apply: (fix: Fix) => (() => void) | undefined
  /** Undefined where the page has no field for the path. */
  readonly goTo: (path: string) => { readonly label: string; readonly go: () => void } | undefined
  /** A path in words. */
  readonly placeName: (path: string) => string
}

/** A fix in words, with the button that does it or leads to it. */
export function FixLine({ fix, actions }: { readonly fix: Fix; readonly actions: FindingActions }) {
  const apply = actions.apply(fix)
  // What is said of no place leads to none.
  const field = apply || fix.path === '' ? undefined : actions.goTo(fix.path)
  const weak = fix.spoils?.status === 'clash'
  const text =
    fix.path === '' ? fix.text : fix.text.replace(fix.path.replaceAll('/', ' › '), actions.placeName(fix.path))
  const named = field !== undefined && text.includes(field.label)
  return (
    <>
      {weak ? <span className="soft">{text}</span> : text}{' '}
      {apply && (
        <button type="button" className={`button ${weak ? 'button-plain' : 'button-small'}`} onClick={apply}>
          {weak ? 'Apply anyway' : 'Apply'}
        </button>
      )}
      {field && (
        <button
          type="button"
          className="button button-plain"
          aria-label={named ? `Go to field: ${field.label}` : undefined}
          onClick={field.go}
        >
          Go to {named ? 'field' : field.label}
        </button>
      )}
    </>
  )
}
