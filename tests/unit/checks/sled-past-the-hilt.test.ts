import { expect, it } from 'vitest'
import { judgeAssembly } from '../../../src/checks/judge-assembly.ts'
import { assemblyOf } from '../resolve/project-of.ts'
import { job } from './smallest.ts'

const judged = (from: number, to: number) =>
  judgeAssembly(assemblyOf(job({ sleds: [{ id: 'main', from, to, diameter: 20 }] })))

it('a sled that reaches past the hilt is never clear: nothing is known of what is around it', () => {
  expect(judged(0, 100)).toMatchObject({ verdict: 'clear', notChecked: [] })
  expect(judged(-40, 60)).toMatchObject({ verdict: 'unsure', notChecked: [{ path: 'sleds/main/from' }] })
  expect(judged(40, 101)).toMatchObject({ verdict: 'unsure', notChecked: [{ path: 'sleds/main/to' }] })
})
