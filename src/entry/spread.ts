/** Where, in one typed entry, the value ends and its spread begins. Text only; the numbers are read elsewhere. */

export interface SpreadText {
  readonly base: string
  readonly plus: string
  readonly minus: string
}

/** `25.4..25.6`, `25.4 to 25.6`, `25.4–25.6` (the dash of print, not the hyphen): the two ends. */
export function splitRange(t: string): readonly [string, string] | undefined {
  const m = /^(.*?\S) ?(?:\.{2,3}|…|–| to ) ?(\S.*)$/.exec(t)
  return m ? [m[1] as string, m[2] as string] : undefined
}

/** `25.4 ±0.05`; `25.4 +0.1 -0.05` in either order; `25.4 +0.1` or `25.4 -0.05`, the sign close to its number. */
export function splitSpread(t: string): SpreadText | undefined {
  const both = /^(.*?\S) ?(?:±|\+ ?\/ ?-|\+-) ?(.+)$/.exec(t)
  if (both) return spread(both[1], both[2], both[2])
  const up = /^(.*?[^\s+-]) ?\+ ?([^+-]+?) ?\/? ?(?:- ?([^+-]+)| (0))$/.exec(t)
  if (up) return spread(up[1], up[2], up[3])
  const down = /^(.*?[^\s+-]) -([^+-]+?) ?\/? ?(?:\+ ?([^+-]+)| (0))$/.exec(t)
  if (down) return spread(down[1], down[3], down[2])
  const above = /^(.*?[^\s+-]) ?\+([^\s+-][^+-]*)$/.exec(t)
  if (above) return spread(above[1], above[2], undefined)
  // A fraction after a minus may be a mixed number typed with a dash, so it is left to be refused.
  const below = /^(.*?[^\s+-]) -([^\s+/-][^+/-]*)$/.exec(t)
  if (below) return spread(below[1], undefined, below[2])
  return undefined
}

const spread = (base: string | undefined, plus = '0', minus = '0'): SpreadText => ({
  base: base as string,
  plus,
  minus,
})
