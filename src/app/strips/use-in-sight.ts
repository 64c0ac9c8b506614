import { type RefObject, useEffect } from 'react'

/** Least room between the cursor and the edge of what is seen, px. */
const margin = 16

/** Where the sheet is wider than the page, it is drawn along so far that the cursor is seen whenever that has moved. */
export function useInSight(sheet: RefObject<HTMLElement | null>, x: number, scrolls: boolean): void {
  useEffect(() => {
    const seen = sheet.current
    if (!seen || !scrolls) return
    const from = x - seen.scrollLeft
    if (from < margin || from > seen.clientWidth - margin) seen.scrollTo({ left: x - seen.clientWidth / 2 })
  }, [sheet, x, scrolls])
}
