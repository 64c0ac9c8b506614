import { useEffect, useState } from 'react'

/** A pause in typing this long means that the person has come to an end of what they type, ms. */
const pause = 500

/**
 * Whether a text has come to rest: nobody is shown "not a number" for the first half of `1 1/2 in`. Leaving the field
 * settles it at once.
 */
export function useSettled(text: string): { readonly settled: boolean; readonly settle: () => void } {
  const [rested, setRested] = useState(text)
  useEffect(() => {
    if (rested === text) return
    const timer = setTimeout(() => setRested(text), pause)
    return () => clearTimeout(timer)
  }, [text, rested])
  return { settled: rested === text, settle: () => setRested(text) }
}
