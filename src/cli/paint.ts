import { styleText } from 'node:util'

const looks = {
  clear: ['bold', 'green'],
  unsure: ['bold', 'yellow'],
  clash: ['bold', 'red'],
  advice: ['cyan'],
  'not-checked': ['yellow'],
  title: ['bold'],
} as const satisfies Record<string, readonly (keyof typeof import('node:util').inspect.colors | 'bold')[]>

export type Look = keyof typeof looks

/** A word in its colour, where colour is used; the word itself says the same. */
export function paint(word: string, look: Look, colour: boolean): string {
  return colour ? styleText([...looks[look]], word, { validateStream: false }) : word
}
