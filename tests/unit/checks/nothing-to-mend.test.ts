import { expect, test } from 'vitest'
import { answer } from '../../../src/job/answer.ts'
import { demos } from '../../../src/job/demos/index.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import { checkProject } from '../../../src/project/read.ts'

/* The ferry lantern's sled just fits: what is left at the worst is nothing, give or take rounding. */

test.each(demos.map((d) => d.name))('%s: what is clear is offered no fix', (name) => {
  const read = checkProject(demos.find((d) => d.name === name)?.project)
  const found = read.ok ? answer(read.value.project, loadPresets()) : read
  if (!found.ok) throw new Error('demo does not read')
  const clear = found.value.findings.filter((f) => f.status === 'clear')
  expect(clear.length).toBeGreaterThan(0)
  expect(clear.filter((f) => f.fix.length > 0).map((f) => f.id)).toEqual([])
})
