import { useEffect, useState } from 'react'
import { keepCopy } from './keep-copy.ts'

/** Keeps the page for use without a network. A newer one waits until the person says yes: it would take their numbers. */
export function UpdateNotice() {
  const [update, setUpdate] = useState<() => void>()
  useEffect(() => {
    // While one works on the page there is no copy; and keeping one must not slow the page's own loading.
    if (!import.meta.env.PROD) return
    const keep = () => void keepCopy(navigator.serviceWorker, location, (load) => setUpdate(() => load))
    if (document.readyState === 'complete') keep()
    else addEventListener('load', keep, { once: true })
  }, [])
  if (!update) return undefined
  return (
    <p className="update small" aria-live="polite">
      A newer version is here.{' '}
      <button type="button" className="button button-plain" onClick={update}>
        Load it; what is typed here is lost
      </button>
    </p>
  )
}
