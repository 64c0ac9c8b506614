import type { Finding } from '../checks/finding.ts'
import { upTo } from '../checks/fix-value.ts'
import type { Layout } from './quick.ts'
import { usualLayout as usual } from './usual-layout.ts'

/** Distances of the quick layout that follow from how well the parts are known, mm. */
export interface Spacing {
  /** Between the speaker and the contact behind it. */
  readonly bulkhead: number
  /** Between the cell and the board over it. */
  readonly boardToCell: number
  /** Between the front contact and the board in line. */
  readonly boardBehind: number
  /** The cell lies against the side away from the wires, not on the axis. */
  readonly isCellAside: boolean
}

export const usualSpacing: Spacing = {
  bulkhead: usual.bulkhead,
  boardToCell: usual.boardToCell,
  boardBehind: usual.bulkhead,
  isCellAside: false,
}

/**
 * The distances with what the checks say is lacking: a wall between two nests, or a way past the cell for the
 * wires. Nobody typed them, so nobody is to move parts apart that the program laid too close. Undefined where nothing
 * that can be moved lacks.
 */
export function roomier(now: Spacing, findings: readonly Finding[], layout: Layout): Spacing | undefined {
  const lack = (f: Finding | undefined) => (f ? Math.max(0, -f.margin.worst) : 0)
  const wall = findings.find((f) => f.check === 'sled-wall')
  const beside = (...parts: readonly string[]) =>
    parts.some((p) => wall?.parts.includes(`parts/${p}`)) && (wall?.parts.length ?? 0) > 2
  const board = beside('board')
  const wires = findings.find((f) => f.check === 'wire-channel' && f.parts.includes('parts/cell'))
  const more: Spacing = {
    bulkhead: upTo(now.bulkhead + (!board && beside('speaker') ? lack(wall) : 0)),
    boardToCell: upTo(now.boardToCell + (board && layout === 'over the cell' ? lack(wall) : 0)),
    boardBehind: upTo(now.boardBehind + (board && layout === 'in line' ? lack(wall) : 0)),
    isCellAside: now.isCellAside || lack(wires) > 0,
  }
  const grew = (Object.keys(more) as (keyof Spacing)[]).some((key) => Number(more[key]) > Number(now[key]) + 1e-9)
  return grew ? more : undefined
}
