/** Lines for a terminal: wrapped, hung under their label, and free of control characters. */

/** Text from a project as it may be shown: whatever could move the cursor or recolour the screen becomes a "?". */
export function shown(text: string): string {
  return text.replace(/\s+/g, ' ').replace(/[\p{Cc}\u202a-\u202e\u2066-\u2069]/gu, '?')
}

/** Words in lines of at most `width` columns; a word longer than a line is broken. */
export function wrap(text: string, width: number): string[] {
  const room = Math.max(8, width)
  const lines: string[] = []
  let line = ''
  for (const word of shown(text)
    .split(' ')
    .flatMap((w) => pieces(w, room))) {
    if (line !== '' && line.length + 1 + word.length > room) {
      lines.push(line)
      line = word
    } else line = line === '' ? word : `${line} ${word}`
  }
  return line === '' && lines.length > 0 ? lines : [...lines, line]
}

function pieces(word: string, room: number): string[] {
  if (word.length <= room) return [word]
  return Array.from({ length: Math.ceil(word.length / room) }, (_, i) => word.slice(i * room, (i + 1) * room))
}

/** `label` in a column of its own, the text wrapped beside it. */
export function labelled(label: string, text: string, indent: number, labelWidth: number, width: number): string[] {
  const hang = indent + labelWidth
  const blank = ' '.repeat(hang)
  return wrap(text, width - hang).map(
    (line, i) => `${i === 0 ? `${' '.repeat(indent)}${label.padEnd(labelWidth)}` : blank}${line}`,
  )
}

/** Text in hanging lines: the first with `first` before it, the rest under it. */
export function hanging(first: string, text: string, width: number): string[] {
  return wrap(text, width - first.length).map((line, i) => `${i === 0 ? first : ' '.repeat(first.length)}${line}`)
}

export const lines = (list: readonly string[]): string => list.map((line) => `${line.trimEnd()}\n`).join('')
