/** What the fields of a record are called in a sentence, before "of the …". By the list they are in where that matters. */

const common: Readonly<Record<string, string>> = {
  z: 'place along z',
  'at/z': 'place along z',
  at: 'place',
  'at/theta': 'clock angle',
  'at/face': 'face placed',
  'at/facing': 'clock angle faced',
  'at/outer': 'radius of the outer end',
  'at/across': 'place across',
  'at/across/x': 'offset towards θ 0°',
  'at/across/y': 'offset towards θ 90°',
  'at/across/r': 'distance from the axis',
  'at/across/theta': 'clock angle',
  'at/across/pushed': 'clock angle pushed to',
  'at/across/gap': 'gap beside',
  'at/across/beside': 'neighbour',
  diameterEnd: 'diameter at the blade end',
  threadClass: 'thread class',
  allowance: 'coating',
  ovality: 'roundness',
  'eccentricity/offset': 'offset of the bore',
  'eccentricity/theta': 'direction of the offset',
  'clamp/open': 'open bore',
  'clamp/closed': 'closed bore',
  on: 'section',
  openIn: 'states open',
  wiresCross: 'wires through',
  half: 'half angle',
  round: 'rounding',
  standoff: 'gap under',
  solid: 'fully pressed length',
  free: 'free length',
  preload: 'least compression',
  wireBend: 'bend of the wire',
  goesIn: 'way in',
  presses: 'end pressed',
  tags: 'tags',
  from: 'rear end',
  to: 'blade end',
  outline: 'outline',
  opens: 'opening',
}

const special: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  screws: { tip: 'radius of the tip', at: 'place' },
  features: { tip: 'radius of the inner end' },
  parts: { on: 'carrier' },
  sleeves: { inside: 'inner diameter', outside: 'outer diameter' },
  sections: { bore: 'bore', outside: 'outside' },
  wires: { from: 'start', to: 'end', diameter: 'outside diameter' },
  insertions: { through: 'mouth', during: 'state', moves: 'what moves' },
}

/** Forms that a path goes through and that say nothing: a place is a place in any of them. */
const silent = new Set(['body', 'preset', 'shape', 'at', 'value', 'z', 'by', 'of', 'end', 'min', 'max', 'bore'])

/**
 * The words for what is left of a path below its record; undefined where nothing is left that says more than the
 * record itself. `readings/2/value` is "reading 3 of the diameter"; of one outside step "outside diameter".
 */
export function fieldWords(list: string, rest: readonly string[]): string | undefined {
  if (rest.length === 0) return undefined
  const reading = rest.indexOf('readings')
  if (reading >= 0) {
    const of = fieldWords(list, rest.slice(0, reading)) ?? 'size'
    const at = rest[reading + 1]
    return at === undefined ? `readings of the ${of}` : `reading ${Number(at) + 1} of the ${of}`
  }
  const last = rest.at(-1) as string
  // What a bend adds to a doubt is settled by the same reading.
  if (last === 'bend') return fieldWords(list, rest.slice(0, -1))
  if (last === 'ovality' || (last === 'z' && rest.at(-2) === 'z')) return common['ovality']
  if (list === 'sections' && rest[0] === 'outside' && rest.length > 1)
    return last === 'length' ? 'length of the outside' : 'outside diameter'
  const kept = rest.filter((word) => !/^\d+$/.test(word))
  const known = [kept.slice(-3), kept.slice(-2), kept.slice(-1)]
    .map((end) => end.join('/'))
    .map((key) => special[list]?.[key] ?? common[key])
    .find((words) => words !== undefined)
  if (known !== undefined) return known
  if (kept[0] === 'at') return fieldWords(list, kept.slice(0, -1)) ?? 'place'
  const speaking = kept.filter((word) => !silent.has(word))
  const word = speaking.at(-1) ?? kept.at(-1)
  return word === undefined || (speaking.length === 0 && silent.has(word)) ? undefined : spaced(word)
}

/** `pinDiameter` is "pin diameter". */
export const spaced = (word: string): string =>
  word.replaceAll(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`).replaceAll(/[-/]/g, ' ')
