import { lazy, Suspense, useState } from 'react'

const CompareDialog = lazy(() => import('./compare-dialog.tsx'))

/** Opens the comparison of the job with another. */
export function CompareButton() {
  const [open, setOpen] = useState(false)
  return (
    <>
      <button type="button" className="button" onClick={() => setOpen(true)}>
        Compare with …
      </button>
      {open && (
        <Suspense>
          <CompareDialog onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </>
  )
}
