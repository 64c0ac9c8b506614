import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { demos } from '../../../src/job/demos/index.ts'
import { runHere } from './command.ts'
import { mutations, spoiled } from './mutations.ts'

describe('demos with fields spoiled end in a verdict or in a list of problems, never in a fault', () => {
  it.each(demos.map((d, i) => ({ ...d, seed: 91 + i })))('$name (seed $seed)', async ({ project, seed }) => {
    await fc.assert(
      fc.asyncProperty(mutations, async (list) => {
        const ran = await runHere(['check', '-', '--json'], JSON.stringify(spoiled(project, list)))
        expect([0, 1, 2, 65]).toContain(ran.code)
        const said = JSON.parse(ran.out)
        if (ran.code === 65) expect(said.problems.length).toBeGreaterThan(0)
        else {
          expect(said.verdict).toBe(['clear', 'unsure', 'clash'][Number(ran.code)])
          for (const { margin } of said.findings)
            expect([margin.worst, margin.nominal, margin.best].every((n) => typeof n === 'number')).toBe(true)
        }
        const text = await runHere(['check', '-', '--full'], JSON.stringify(spoiled(project, list)))
        expect(text.code).toBe(ran.code)
      }),
      { seed, numRuns: 80 },
    )
  })
})
