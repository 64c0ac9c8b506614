/**
 * The first field that stands twice in one record of a JSON text, as its path; undefined where there is none. JSON
 * readers keep the last of them and drop the others without a word, so that a verdict would rest on half of what was
 * written. The text must be valid JSON.
 */
export function repeatedKey(text: string): string | undefined {
  const open: Level[] = []
  const tokens = /"[^"\\]*(?:\\.[^"\\]*)*"|[{}[\],]/gs
  for (const { 0: token, index } of text.matchAll(tokens)) {
    const level = open.at(-1)
    if (token === '{') open.push({ keys: new Set(), at: '' })
    else if (token === '[') open.push({ keys: undefined, at: 0 })
    else if (token === '}' || token === ']') open.pop()
    else if (token === ',') {
      if (typeof level?.at === 'number') level.at++
    } else if (level?.keys && isKey(text, index + token.length)) {
      level.at = JSON.parse(token) as string
      if (level.keys.has(level.at)) return open.map((l) => l.at).join('/')
      level.keys.add(level.at)
    }
  }
  return undefined
}

/** A record with its keys so far, or a list; and where in it the reading stands. */
interface Level {
  readonly keys: Set<string> | undefined
  at: string | number
}

/** A text is a field's name where a colon follows it. */
function isKey(text: string, from: number): boolean {
  let i = from
  while (' \t\n\r'.includes(text.charAt(i)) && i < text.length) i++
  return text.charAt(i) === ':'
}
