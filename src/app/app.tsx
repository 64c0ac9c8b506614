import { lazy, Suspense, useEffect, useState } from 'react'
import type { Desk } from '../worker/desk.ts'
import type { WorkCalls } from '../worker/work-calls.ts'
import { QuickPage } from './quick/quick-page.tsx'

/** The full job comes when one is opened: the quick check waits for none of it. */
const WorkRoom = lazy(() => import('./work/work-room.tsx'))

/** What the address says is open: the quick check, or a job. */
export function App({ desk }: { readonly desk: Desk<WorkCalls> }) {
  const [hash, setHash] = useState(location.hash)
  useEffect(() => {
    const follow = () => setHash(location.hash)
    addEventListener('hashchange', follow)
    return () => removeEventListener('hashchange', follow)
  }, [])
  if (hash === '' || hash === '#' || hash === '#example') return <QuickPage desk={desk} />
  return (
    <Suspense>
      <WorkRoom key={hash} desk={desk} address={hash.slice(1)} />
    </Suspense>
  )
}
