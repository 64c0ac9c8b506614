import { describe, expect, it } from 'vitest'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import { bodyReport } from '../../../src/job/body-report.ts'
import { trySled } from '../../../src/job/build-sled.ts'
import { layOut } from '../../../src/job/lay-out.ts'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { findingOf, perfect, sure } from '../checks/judged.ts'
import { assemblyOf } from '../resolve/project-of.ts'
import { builder, cell, job, nest } from './planned.ts'

const build = builder()
/** A way for wires that leaves 0.5 to the outside at θ 90: 14 − 12 − 1.5. */
const sliver = (extra: Partial<ProjectInput> = {}) =>
  job({ channels: [{ id: 'c', theta: 90, width: 3, r: 12 }] }, extra)

describe('a sliver between a nest and the outside', () => {
  it('is found as drawn, with its place, its limit and what to change', () => {
    const f = findingOf(sliver(), 'sled-wall:main')
    expect(f.status).toBe('clash')
    expect([f.value, f.limit, f.margin.worst]).toEqual([expect.closeTo(0.5, 6), 1.2, expect.closeTo(0.5 - 1.2, 6)])
    expect([f.at?.theta, f.at?.r]).toEqual([expect.closeTo(90, 6), expect.closeTo(13.75, 6)])
    expect(f.title).toContain('wire channel and the outside')
    expect(f.fix[0]).toMatchObject({ path: 'sleds/main/channels/c/width', text: expect.stringContaining('0.70 mm') })
  })

  it('is measured on the solid too, where it keeps the file back', () => {
    const [found, ...others] = build(sliver()).problems
    for (const p of [found, ...others]) expect(p).toMatchObject({ code: 'solid-failed', path: 'sleds/main' })
    expect(found?.got).toMatch(/a wall of 0\.(49|50) mm at z [\d.]+, θ (8\d|9\d)°/)
  })

  it('is shown with the body: how thick, where, and between what', async () => {
    const tried = trySled(await loadKernel(), assemblyOf(sliver()), 'main')
    if (!tried.ok) throw new Error(JSON.stringify(tried.problems))
    const [placed] = layOut(tried.value, 'assembled')
    if (!placed) throw new Error('no body')
    const { thinnestWall } = bodyReport(placed, tried.value.sled, tried.value.plan, null)
    expect(thinnestWall?.thickness).toBeCloseTo(0.5, 1)
    expect(Math.abs((thinnestWall?.at.theta ?? 0) - 90)).toBeLessThan(15)
    expect(thinnestWall?.between.map((s) => s.nest).toSorted()).toEqual(['body', 'wire channel'])
  })

  it('is gone with the wall that the finding asks for', () => {
    const mended = job({ channels: [{ id: 'c', theta: 90, width: 3, r: 11.3 }] })
    expect(findingOf(mended, 'sled-wall:main').status).toBe('clear')
    expect(build(mended).problems).toEqual([])
  })
})

it('a sliver between two nests is found as well', () => {
  const project = job(
    {
      nests: [nest('cell', { gap: 0.2, opening: 180 })],
      // Pocket to 9.2, channel from 9.7.
      channels: [{ id: 'c', theta: 0, width: 3, r: 11.2 }],
    },
    { parts: [cell()] },
  )
  const f = findingOf(project, 'sled-wall:main')
  expect(f.value).toBeCloseTo(0.5, 6)
  expect(f.title).toContain('cell pocket and wire channel')
  expect(f.parts).toContain('parts/cell')
})

it('how thin a wall may be is said by whoever says it: the process, or the person', () => {
  expect(findingOf(sliver(), 'sled-wall:main').source).toContain('Filament')
  const own = findingOf(sliver({ printer: [{ id: 'mine', error: sure(0), leastWall: 0.4 }] }), 'sled-wall:main')
  expect([own.status, own.limit, own.source]).toEqual(['clear', 0.4, 'least wall: typed in printer/mine/leastWall'])
  expect(perfect[0]).not.toHaveProperty('leastWall')
})
