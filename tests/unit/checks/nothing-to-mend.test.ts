import { expect, test } from 'vitest'
import { gapFixes } from '../../../src/checks/fixes.ts'
import { tightest } from '../../../src/checks/group.ts'
import { movingOf } from '../../../src/checks/moving.ts'
import { onTheWay } from '../../../src/checks/way-in.ts'
import { worldOf } from '../../../src/checks/world.ts'
import { demos } from '../../../src/job/demos/index.ts'
import { answerTo, demo, projectOf } from '../job/demo-answer.ts'

test.each(demos.map((d) => d.name))('%s: what is clear is offered no fix', (name) => {
  const clear = answerTo(projectOf(demo(name))).findings.filter((f) => f.status === 'clear')
  expect(clear.length).toBeGreaterThan(0)
  expect(clear.filter((f) => f.fix.length > 0).map((f) => f.id)).toEqual([])
})

test('a margin that is nothing but rounding lacks nothing', () => {
  const world = worldOf(answerTo(projectOf(demo('weir-lantern'))).assembly)
  const [moving] = world.assembly.insertions.flatMap((i) => movingOf(world, i))
  const demands = moving && onTheWay(moving, world.assembly.thresholds.clearance.value).get('sleds/main')
  const found = demands && tightest(demands)
  if (!found) throw new Error('the sled meets nothing')
  const leaving = (worst: number) => ({ ...found, margins: { ...found.margins, worst, best: 0.3 } })
  expect(gapFixes(world, leaving(-0.1), 'sleds/main').length).toBeGreaterThan(0)
  expect(gapFixes(world, leaving(-1e-12), 'sleds/main')).toEqual([])
})
