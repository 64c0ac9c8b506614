import { emptyForm, exampleForm, isEmpty, type QuickForm } from './quick-form.ts'

/** What stands on the page of the quick check. */
export interface Kept {
  readonly form: QuickForm
  /** Whether it began with the invented numbers. */
  readonly invented: boolean
}

/** Of this tab alone, so that two tabs have no numbers to take from each other; a reload leaves it there. */
const key = 'sledwright-quick'
/** As it was last left since the page was loaded: all there is where the browser keeps nothing. */
let left: Kept | undefined

export function keepForm(kept: Kept): void {
  left = kept
  try {
    sessionStorage.setItem(key, JSON.stringify(kept))
  } catch {
    // Storage may be refused; the numbers then last as long as the page.
  }
}

export const forgetForm = (): void => keepForm({ form: emptyForm, invented: false })

/** What was left here, exactly as typed; `#example`, come to anew or with nothing left, brings the invented numbers. */
export function openingForm(): Kept {
  const [arrival] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[]
  const kept = left ?? (location.hash === '#example' && arrival?.type === 'navigate' ? undefined : stored())
  if (kept && !isEmpty(kept.form)) return kept
  const invented = location.hash === '#example'
  return { form: invented ? exampleForm : emptyForm, invented }
}

function stored(): Kept | undefined {
  try {
    const { form, invented } = JSON.parse(sessionStorage.getItem(key) ?? '')
    return isAlike(form, emptyForm) ? { form, invented } : undefined
  } catch {
    return undefined
  }
}

/** The page may be newer than what it has kept: whatever has another shape is not taken for a form. */
const isAlike = (value: unknown, like: unknown): boolean =>
  typeof value === typeof like &&
  (typeof like !== 'object' ||
    Object.entries(like as object).every(([name, field]) => isAlike((value as never)?.[name], field)))
