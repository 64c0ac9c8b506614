import { describe, expect, it } from 'vitest'
import { judgeAssembly } from '../../../src/checks/judge-assembly.ts'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { assemblyOf, tube } from './project-of.ts'

const told = (extra: Partial<ProjectInput>) =>
  assemblyOf(tube(extra)).assumptions.find((a) => a.startsWith('Not looked at yet'))
const sleeve = { id: 'grip', z: 40, length: 60 }
const wires = { id: 'loom', preset: 'wire-26-silicone', count: 2 }

describe('what is filled in and not looked at yet', () => {
  it('is told in one sentence', () => {
    const parts = [
      {
        id: 'block',
        kind: 'other' as const,
        body: { shape: 'box' as const, width: 3, height: 3, length: 3 },
        at: { z: 20 },
      },
    ]
    const move = {
      id: 'in',
      moves: 'sleds/main',
      mayTurn: true,
      through: { of: 'sections/body', end: 'rear' as const },
    }
    const all = told({
      sleeves: [{ ...sleeve, sliding: true }],
      sleds: [{ id: 'main', from: 10, to: 60 }],
      insertions: [move],
      parts,
      wires: [{ ...wires, from: 'parts/block' }],
    })
    expect(all).toBe(
      'Not looked at yet: that "in" may turn; where "loom" lead; outside, gap, ends and sliding of "grip".',
    )
  })

  it('is not told of what is not filled in', () => {
    expect(told({ sleeves: [sleeve], sleds: [{ id: 'main', from: 10, to: 60 }], wires: [wires] })).toBeUndefined()
  })
})

describe('a switch and a port', () => {
  const part = (kind: 'switch' | 'port' | 'other') => ({
    id: kind,
    kind,
    body: { shape: 'box' as const, width: 3, height: 3, length: 3 },
    at: { z: 20 },
  })
  const sleds = [{ id: 'main', from: 10, to: 60 }]

  it('of which no opening is told may lie behind solid metal: that is said', () => {
    expect(told({ sleds, parts: [part('port')] })).toBe(
      'Not looked at yet: how "port" is reached from outside, as no opening is told for it.',
    )
    expect(told({ sleds, parts: [part('switch')] })).toContain('"switch"')
    expect(told({ sleds, parts: [part('other')] })).toBeUndefined()
  })
})

describe('a thread that only the joint has', () => {
  const sections = (step: object) => [
    { id: 'rear', length: 100, outside: [{ diameter: 40 }], bore: [{ id: 'a', diameter: 33, ...step }] },
    { id: 'blade', length: 100, outside: [{ diameter: 40 }], bore: [{ id: 'b', diameter: 30 }] },
  ]
  const judged = (step: object) =>
    judgeAssembly(
      assemblyOf(
        tube({
          sections: sections(step),
          joints: [{ id: 'j', kind: 'threaded', rear: 'rear', blade: 'blade', thread: 'M33x1.5', engagement: 0 }],
          sleds: [{ id: 'main', from: 10, to: 60, diameter: 20 }],
        }),
      ),
    ).notChecked.map((n) => n.path)

  it('is in one of the two bores, whose crests are narrower than it was measured', () => {
    expect(judged({})).toEqual(['joints/j/thread'])
    expect(judged({ kind: 'threaded', thread: 'M33x1.5', diameter: undefined })).toEqual([])
  })
})
