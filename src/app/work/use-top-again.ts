import { useEffect } from 'react'

/** At the top of the page its columns begin at their tops, too: scrolled by themselves they would show their lower half. */
export function useTopAgain(): void {
  useEffect(() => {
    const up = () => {
      if (scrollY < 1)
        for (const column of document.querySelectorAll('.findings-panel, .work-corner')) column.scrollTop = 0
    }
    addEventListener('scroll', up, { passive: true })
    return () => removeEventListener('scroll', up)
  }, [])
}
