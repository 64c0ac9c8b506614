import { emptyForm, exampleForm, isEmpty, type QuickForm } from './quick-form.ts'

/** What stands on the page of the quick check. */
export interface Kept {
  readonly form: QuickForm
  /** Whether it began with the invented numbers. */
  readonly invented: boolean
}

const key = 'sledwright-quick'
/** As it was last left since the page was loaded: all there is where the browser keeps nothing. */
let left: Kept | undefined

/**
 * Keeps what somebody has changed, and says whether it will be there when the browser is opened again. Twice: in the
 * tab, so that its reload brings back its own numbers, and beyond it, where of two tabs the last one written stays.
 */
export function keepForm(kept: Kept): boolean {
  left = kept
  const text = JSON.stringify(kept)
  written(() => sessionStorage, text)
  return written(() => localStorage, text)
}

export const forgetForm = (): boolean => keepForm({ form: emptyForm, invented: false })

/**
 * What was left here, exactly as typed: in this tab, else in any. `#example`, come to anew or with nothing left, brings
 * the invented numbers; to look at them takes nobody's own away.
 */
export function openingForm(): Kept {
  const example = location.hash === '#example'
  const [arrival] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[]
  const anew = example && arrival?.type === 'navigate'
  const kept =
    left ?? (anew ? undefined : (stored(() => sessionStorage) ?? (example ? undefined : stored(() => localStorage))))
  left = kept && !isEmpty(kept.form) ? kept : { form: example ? exampleForm : emptyForm, invented: example }
  return left
}

/** To ask for a storage may throw already. */
function written(storage: () => Storage, text: string): boolean {
  try {
    storage().setItem(key, text)
    return true
  } catch {
    return false
  }
}

function stored(storage: () => Storage): Kept | undefined {
  try {
    const { form, invented } = JSON.parse(storage().getItem(key) ?? '')
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
