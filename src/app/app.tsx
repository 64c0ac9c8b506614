import { lazy, Suspense, useEffect, useState } from 'react'
import type { Desk } from '../worker/desk.ts'
import type { WorkCalls } from '../worker/work-calls.ts'
import { useFileDrop } from './keeping/use-file-drop.ts'
import { forgetForm } from './quick/kept-form.ts'
import { QuickPage } from './quick/quick-page.tsx'
import { CrashScreen } from './sheet/crash-screen.tsx'

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
  // The pages guard what is on them; this is for what they do before they draw anything.
  if (quick.includes(place.address))
    return (
      <CrashScreen forget={forgetForm}>
        <QuickPage desk={desk} />
      </CrashScreen>
    )
  // Each arrival is one of its own: a demo that became a job is a demo again when its address is gone to again.
  return (
    <CrashScreen key={place.arrival}>
      <Suspense>
        <WorkRoom desk={desk} address={place.address} />
      </Suspense>
    </CrashScreen>
  )
}

let arrivals = 0
const here = () => ({ address: location.hash.slice(1), arrival: arrivals++ })
