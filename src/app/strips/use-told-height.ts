import { type RefObject, useLayoutEffect } from 'react'
import type { StripLayout } from './strip-frame.ts'

/** Tells the page around the strips how high they are, whenever they are laid out anew: what stays in view stays below them. */
export function useToldHeight(sheet: RefObject<HTMLElement | null>, layout: StripLayout): void {
  useLayoutEffect(() => {
    const strips = sheet.current?.closest<HTMLElement>('.strips')
    strips?.parentElement?.style.setProperty('--strips', `${Math.ceil(strips.offsetHeight)}px`)
  }, [sheet, layout])
}
