import { expect, it } from 'vitest'
import { fetchRare } from '../../../src/checks/rare.ts'
import { answer } from '../../../src/job/answer.ts'
import { quickProject } from '../../../src/job/quick.ts'
import { quickPresets } from '../presets/quick-presets.ts'

it('rods that find no place lack a number of places, not millimetres', async () => {
  await fetchRare()
  const quick = quickProject({ bore: '21', depth: '148', cell: 'cell-18650-flat' }, 'in line')
  const sleds = quick.sleds.map((s) => ({ ...s, construction: 'discs-on-rods' as const }))
  const judged = answer({ ...quick, sleds }, quickPresets())
  const found = judged.ok ? judged.value.findings.find((f) => f.title.includes('rods')) : undefined
  expect(found).toMatchObject({ unit: '', margin: { worst: -2 }, status: 'clash' })
  expect(found?.why).toContain('0 places for rods')
})
