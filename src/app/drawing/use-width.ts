import { type RefObject, useLayoutEffect, useRef, useState } from 'react'

/** The width a drawing may take, followed as the window changes. */
export function useWidth<E extends HTMLElement>(): readonly [RefObject<E | null>, number] {
  const ref = useRef<E>(null)
  const [width, setWidth] = useState(0)
  useLayoutEffect(() => {
    const element = ref.current
    if (!element) return
    const measure = () => setWidth(Math.floor(element.clientWidth))
    measure()
    const observer = new ResizeObserver(measure)
    observer.observe(element)
    return () => observer.disconnect()
  }, [])
  return [ref, width]
}
