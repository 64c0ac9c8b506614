import { lazy, Suspense } from 'react'

const CompareDialog = lazy(() => import('./compare-dialog.tsx'))

/** The comparison of the job with another, fetched when it is first wanted. */
export function Comparing({ onClose }: { readonly onClose: () => void }) {
  return (
    <Suspense>
      <CompareDialog onClose={onClose} />
    </Suspense>
  )
}
