/** Codes of ECMA-48 (SGR), which every terminal understands. */
const looks = {
  clear: '1;32',
  unsure: '1;33',
  clash: '1;31',
  advice: '36',
  'not-checked': '33',
  title: '1',
} as const

export type Look = keyof typeof looks

/** A word in its colour, where colour is used; the word itself says the same. */
export const paint = (word: string, look: Look, colour: boolean): string =>
  colour ? `\u001b[${looks[look]}m${word}\u001b[0m` : word
