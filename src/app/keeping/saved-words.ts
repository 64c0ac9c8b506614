/** `11:42`, as clocks in a workshop show it. */
export const timeOfDay = (ms: number): string =>
  new Date(ms).toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' })

/** `25 Nov 2026, 11:42` */
export const dateAndTime = (ms: number): string =>
  `${new Date(ms).toLocaleDateString('en-GB', { day: 'numeric', month: 'short', year: 'numeric' })}, ${timeOfDay(ms)}`

/** A size of a file in the usual thousands: `12 kB`. */
export function sizeText(bytes: number): string {
  if (bytes < 1000) return `${bytes} B`
  return bytes < 1e6 ? `${Math.round(bytes / 1000)} kB` : `${(bytes / 1e6).toFixed(1)} MB`
}
