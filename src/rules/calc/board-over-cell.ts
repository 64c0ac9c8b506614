import { enclosingCircle } from '../../../geometry/packing/enclosing-circle.ts'
import { good } from '../../problem/problem.ts'
import { numberOf, type Rule } from '../rule.ts'
import { usual } from '../usual.ts'
import { clearanceInput } from './smallest-bore.ts'

const size = { exclusiveMin: 0, max: 200 } as const

export const boardOverCellRule: Rule = {
  name: 'board-over-cell',
  title: 'Board over an off-centre cell',
  what: 'How far off the axis a cell and the board over it must lie to fit the smallest bore, and that bore.',
  inputs: [
    { name: 'cell', unit: 'mm', what: 'Largest diameter of the cell.', range: size },
    { name: 'width', unit: 'mm', what: 'Width of the board.', range: size },
    { name: 'height', unit: 'mm', what: 'Height of the board over its components.', range: size },
    {
      name: 'gap',
      unit: 'mm',
      what: 'Between cell and board (common practice, no source).',
      range: { min: 0, max: 50 },
      default: usual.partGap,
    },
    {
      name: 'wall',
      unit: 'mm',
      what: 'Sled material left outside the contents at their farthest points.',
      range: { min: 0, max: 20 },
      default: 0,
    },
    clearanceInput,
  ],
  outputs: [
    { name: 'bore', unit: 'mm', what: 'Smallest bore.' },
    { name: 'sled', unit: 'mm', what: 'Diameter of the sled in it.' },
    { name: 'cellOffset', unit: 'mm', what: 'How far the middle of the cell lies from the axis, away from the board.' },
    { name: 'boardOffset', unit: 'mm', what: 'How far the middle of the board lies from the axis, the other way.' },
    { name: 'touches', unit: '', what: 'What touches: the cell, the outer or the inner corners of the board.' },
  ],
  formula:
    't = d/2 + gap + h; e = ((w/2)² + t² − (d/2)²) / (2 (d/2 + t)), so that d/2 + e = √((w/2)² + (t − e)²) = R, or the circle about the corners of a board much wider than the cell; sled = 2 (R + wall); bore = sled + 2 clearance',
  sources: [
    { text: 'Circle about a disc and the corners over it: smallest enclosing circle', how: 'computed' },
    { text: 'Gap and clearance', how: 'common practice, no source' },
  ],
  example: { cell: '18.6', width: '18', height: '6', gap: '2' },
  run: (values) => {
    const n = (name: string) => numberOf(values, name)
    const [r, half, low] = [n('cell') / 2, n('width') / 2, n('cell') / 2 + n('gap')]
    const high = low + n('height')
    const corner = (x: number, of: string) => [half, -half].map((y) => ({ c: { x, y }, r: 0, of }))
    const circle = enclosingCircle([
      { c: { x: 0, y: 0 }, r, of: 'cell' },
      ...corner(high, 'outer corners'),
      ...corner(low, 'inner corners'),
    ])
    const sled = 2 * (circle.r + n('wall'))
    return good({
      bore: sled + 2 * n('clearance'),
      sled,
      cellOffset: circle.c.x,
      boardOffset: (low + high) / 2 - circle.c.x,
      touches: [...new Set(circle.touched.map((t) => t.of))].join(' and '),
    })
  },
}
