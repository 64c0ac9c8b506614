import type { InsertionWay } from './insertion-way.ts'

/** How far what moves stands from its place along the hilt, mm, when the unit is at a depth. */
export function shiftAt(way: Pick<InsertionWay, 'to' | 'moves'>, depth: number): number {
  // A tube is drawn over a unit that stands still: it moves the other way.
  return way.moves.startsWith('sections/') ? way.to - depth : depth - way.to
}
