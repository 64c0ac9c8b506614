import { lazy, Suspense, useEffect, useState } from 'react'
import type { Desk } from '../worker/desk.ts'
import type { WorkCalls } from '../worker/work-calls.ts'
import { useFileDrop } from './keeping/use-file-drop.ts'
import { QuickPage } from './quick/quick-page.tsx'

/** Full jobs come when one is asked for: the quick check waits for none of it. */
const WorkRoom = lazy(() => import('./work/work-room.tsx'))

/** Addresses of the quick check; the last is a place on it. */
const quick = ['', 'quick', 'example', 'answer']

/** What the address says is open: the quick check, or a full job. */
export function App({ desk }: { readonly desk: Desk<WorkCalls> }) {
  const [place, setPlace] = useState(here)
  useEffect(() => {
    const follow = () => setPlace(here())
    addEventListener('hashchange', follow)
    return () => removeEventListener('hashchange', follow)
  }, [])
  useFileDrop(desk)
  if (quick.includes(place.address)) return <QuickPage desk={desk} />
  // Each arrival is one of its own: a demo that became a job is a demo again when its address is gone to again.
  return (
    <Suspense>
      <WorkRoom key={place.arrival} desk={desk} address={place.address} />
    </Suspense>
  )
}

let arrivals = 0
const here = () => ({ address: location.hash.slice(1), arrival: arrivals++ })
