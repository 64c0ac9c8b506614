import { describe, expect, it } from 'vitest'
import { reading } from '../../../src/checks/reading.ts'
import type { World } from '../../../src/checks/world.ts'
import { newJob } from '../../../src/job/new-job.ts'
import type { Contribution } from '../../../src/quantity/margins.ts'

const world = { assembly: { project: newJob('x') } } as World
const margins = { worst: -1, nominal: 0.2, settled: 0.1, best: 1 }
const spread = (path: string, half: number, more: Partial<Contribution> = {}): Contribution => ({
  path,
  kind: 'unknown',
  source: 'preset',
  from: 'a list',
  distribution: 'rectangular',
  down: -half,
  up: half,
  ...more,
})
const asked = (contributions: Contribution[], m = margins) => reading(world, { contributions, margins: m })

describe('the reading that is asked for', () => {
  it('is of the widest unknown, however much a print varies', () => {
    const [fix, ...rest] = asked([
      spread('printer/error', 3, { kind: 'varies' }),
      spread('sections/body/length', 0.1),
      spread('sections/body/bore/bore/diameter', 0.4),
    ])
    expect(rest).toEqual([])
    expect(fix?.path).toBe('sections/body/bore/bore/diameter')
    expect(fix?.text).toMatch(/^Measure the diameter .*: of what a reading can settle, it moves this most\.$/)
  })

  it('is a finer one where it was measured', () => {
    const [fix] = asked([spread('sections/body/length', 0.1, { source: 'measured' })])
    expect(fix?.text).toMatch(/once more, or with a finer tool/)
  })

  it('of the room a sled may find is to say how far it may shift', () => {
    const [fix] = asked([spread('sleds/main/float/room', 0.5)])
    expect([fix?.path, fix?.text]).toEqual([
      'sleds/main/float',
      expect.stringMatching(/^Say how far the sled may shift/),
    ])
  })

  it('of a bend is of the size that bends', () => {
    expect(asked([spread('sections/body/length/bend', 0.1)])[0]?.path).toBe('sections/body/length')
  })

  it('is none where no reading decides, or nothing is unknown', () => {
    expect(asked([spread('sections/body/length', 0.1)], { ...margins, settled: -0.01 })).toEqual([])
    expect(asked([spread('printer/error', 3, { kind: 'varies' })])).toEqual([])
  })
})
