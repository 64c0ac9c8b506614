import { useEffect, useMemo, useRef } from 'react'

export interface Run {
  /** Goes from one value to another in a moment, as long as `step` says that it may. */
  readonly start: (from: number, to: number, step: (to: number, from: number) => boolean) => void
  readonly stop: () => void
}

/** The whole way takes so long, ms. */
const duration = 2200

/** A movement that the eye can follow. Where the reader wants no movement it is at its end at once. */
export function useRun(): Run {
  const frame = useRef(0)
  useEffect(() => () => cancelAnimationFrame(frame.current), [])
  return useMemo(
    () => ({
      start: (from, to, step) => {
        cancelAnimationFrame(frame.current)
        if (matchMedia('(prefers-reduced-motion: reduce)').matches) return void step(to, from)
        const began = performance.now()
        let last = from
        const tick = (now: number) => {
          const share = Math.min(1, Math.max(0, (now - began) / duration))
          const next = from + (to - from) * share
          if (step(next, last) && share < 1) frame.current = requestAnimationFrame(tick)
          last = next
        }
        frame.current = requestAnimationFrame(tick)
      },
      stop: () => cancelAnimationFrame(frame.current),
    }),
    [],
  )
}
