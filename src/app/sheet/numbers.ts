/** Numbers as the page writes them: hundredths of a millimetre, a true minus sign, never "−0.00". */
export function fixed(n: number, places = 2): string {
  const text = Math.abs(n).toFixed(places)
  return n < 0 && Number(text) !== 0 ? `−${text}` : text
}

/** With its sign: what is left over a limit, or lacking. A count has no unit, and no hundredths. */
export const signed = (n: number, unit = 'mm'): string => {
  const text = fixed(n, unit === '' ? 0 : 2)
  return text.startsWith('−') ? text : `+${text}`
}

/** `67 %`; the ends are never rounded to certainty. */
export function percent(share: number): string {
  if (share > 0 && share < 0.01) return 'under 1 %'
  if (share < 1 && share > 0.99) return 'over 99 %'
  return `${Math.round(share * 100)} %`
}

/** A title at the beginning of a line. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** `7.96–8.04`; a stretch with a number below nothing in it takes a word, so that no dash is read as a sign. One number is no stretch. */
export const stretch = (low: string, high: string): string =>
  low === high
    ? minus(low)
    : /^[-−]/.test(low) || /^[-−]/.test(high)
      ? `${minus(low)} to ${minus(high)}`
      : `${low}–${high}`

const minus = (n: string): string => n.replace(/^-/, '−')
