import { describe, expect, it } from 'vitest'
import { findingsOf, sure } from './judged.ts'
import { job } from './smallest.ts'

/** What is built to hold one thing stands in no other, nor in what it holds. */

const lack = (project: Parameters<typeof findingsOf>[0], path: string) =>
  [...findingsOf(project).values()].find((f) => f.check === 'buildable' && f.fix.some((x) => x.path === path))?.margin
    .worst

const sled = (extra: object) => [{ id: 'main', from: 10, to: 90, diameter: 28, ...extra }]

describe('the arms of a cradle', () => {
  const cell = {
    id: 'cell',
    kind: 'cell' as const,
    body: { shape: 'cylinder' as const, diameter: sure(16), length: sure(50) },
    at: { z: 20, across: { x: -3, y: 0 } },
  }
  const board = (y: number) => ({
    id: 'board',
    kind: 'board' as const,
    body: { shape: 'box' as const, width: sure(6), height: sure(1), length: sure(50) },
    at: { z: 20, facing: 90, across: { x: -3, y } },
  })
  const nests = [{ part: 'parts/cell', style: 'cradle' as const, opening: 180 }]
  const cradled = (y: number) => job({ parts: [cell, board(y)], sleds: sled({ nests }) })

  it('do not stand in the board beside the cell', () => {
    // Arms of 1.8 go round to 20° past the equator: at the cell's side they fill what lies 8.25 to 10 mm from its middle.
    expect(lack(cradled(9), 'sleds/main/nests/parts/cell/wrap')).toBeLessThan(-0.5)
    expect(lack(cradled(11.2), 'sleds/main/nests/parts/cell/wrap')).toBeUndefined()
  })
})

describe('lips over a board', () => {
  const board = (x: number) => ({
    id: 'board',
    kind: 'board' as const,
    body: {
      shape: 'outline' as const,
      outline: [
        [0, -8],
        [50, -8],
        [50, 8],
        [0, 8],
      ] as [number, number][],
      thickness: sure(1.6),
      components: [
        {
          name: 'plug',
          z: sure(1),
          x: sure(x),
          length: sure(10),
          width: sure(3),
          height: sure(3),
          side: 'top' as const,
        },
      ],
    },
    at: { z: 20, facing: 90 },
  })
  const lipped = (x: number) => job({ parts: [board(x)], sleds: sled({ nests: [{ part: 'parts/board', lip: 1.2 }] }) })

  it('do not stand in what is on its edge', () => {
    expect(lack(lipped(6.5), 'sleds/main/nests/parts/board/lip')).toBeLessThan(-0.5)
    expect(lack(lipped(4), 'sleds/main/nests/parts/board/lip')).toBeUndefined()
  })
})

describe('the panel of a service face', () => {
  const port = {
    id: 'port',
    kind: 'port' as const,
    body: { shape: 'cylinder' as const, diameter: sure(8), length: sure(8) },
    at: { z: 13 },
  }
  const block = {
    id: 'block',
    kind: 'other' as const,
    body: { shape: 'box' as const, width: sure(6), height: sure(4), length: sure(20) },
    at: { z: 40 },
  }
  const faced = (panel: number) =>
    job({ parts: [port, block], sleds: sled({ nests: [{ part: 'parts/port', panel, hole: 5 }] }) })

  it('ends where the port begins', () => {
    expect(lack(faced(3), 'sleds/main/nests/parts/port/panel')).toBeUndefined()
    expect(lack(faced(5), 'sleds/main/nests/parts/port/panel')).toBeCloseTo(-2, 6)
  })
})

describe('a typed wire channel', () => {
  const wired = (r: number) =>
    job({
      sleds: sled({ channels: [{ id: 'w', theta: 0, r, width: 5, open: true }] }),
      parts: [],
      wires: [{ id: 'wire', diameter: sure(4) }],
    })

  it('holds its bundle inside the sled: its floor lies at least 4 mm within the outside of 14', () => {
    expect(lack(wired(12), 'sleds/main/channels/w/r')).toBeUndefined()
    expect(lack(wired(14), 'sleds/main/channels/w/r')).toBeCloseTo(-(14 + 1.5 - 14), 1)
  })
})
