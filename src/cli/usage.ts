import { lines, wrap } from './columns.ts'

/** What was wrong with the command as typed, and what there is. */
export const usageText = (wrong: string, known: string, width: number): string =>
  lines([...wrap(wrong, width), ...wrap(known, width)])
