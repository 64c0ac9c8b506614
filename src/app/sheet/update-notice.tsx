import { registerSW } from 'virtual:pwa-register'
import { useEffect, useState } from 'react'

/** Keeps the page for use without a network. A newer one waits until the person says yes: it would take their numbers. */
export function UpdateNotice() {
  const [update, setUpdate] = useState<() => void>()
  useEffect(() => {
    const install = registerSW({ onNeedRefresh: () => setUpdate(() => () => void install(true)) })
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
