import { useState } from 'react'
import { Comparing } from './comparing.tsx'

/** Opens the comparison of the job with another. */
export function CompareButton() {
  const [open, setOpen] = useState(false)
  return (
    <>
      <button type="button" className="button" onClick={() => setOpen(true)}>
        Compare …
      </button>
      {open && <Comparing onClose={() => setOpen(false)} />}
    </>
  )
}
