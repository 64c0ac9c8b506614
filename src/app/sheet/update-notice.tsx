import { useEffect, useState } from 'react'
import { keepPage } from './service-worker.ts'

/** A newer page waits until the person says yes. */
export function UpdateNotice() {
  const [update, setUpdate] = useState<() => void>()
  useEffect(() => keepPage((load) => setUpdate(() => load)), [])
  if (!update) return undefined
  return (
    <p className="update small" aria-live="polite">
      A newer version is here.{' '}
      <button type="button" className="button button-plain" onClick={update}>
        Load it
      </button>
    </p>
  )
}
