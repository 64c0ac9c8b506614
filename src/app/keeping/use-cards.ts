import { useEffect, useState } from 'react'
import type { JobCard } from './kept-job.ts'
import { recover } from './recover.ts'
import { allCards } from './shelf.ts'
import { listen } from './tidings.ts'

/** The list of jobs as it stands. */
export type Cards =
  | { readonly kind: 'fetching' }
  | { readonly kind: 'fetched'; readonly cards: readonly JobCard[] }
  | { readonly kind: 'refused'; readonly why: string }

/** All kept jobs, read anew whenever this or another tab has done something to one. */
export function useCards(): Cards {
  const [cards, setCards] = useState<Cards>({ kind: 'fetching' })
  useEffect(() => {
    let wanted = true
    const fetch = () =>
      allCards().then(
        (all) => wanted && setCards({ kind: 'fetched', cards: all }),
        (error: unknown) => wanted && setCards({ kind: 'refused', why: String(error) }),
      )
    const stop = listen(() => void fetch())
    void recover()
      .catch(() => undefined)
      .then(fetch)
    return () => {
      wanted = false
      stop()
    }
  }, [])
  return cards
}
