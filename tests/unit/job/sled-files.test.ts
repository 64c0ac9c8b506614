import { createHash } from 'node:crypto'
import { beforeAll, describe, expect, it } from 'vitest'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import type { Kernel } from '../../../geometry/kernel/manifold.ts'
import type { FileLayout } from '../../../src/job/lay-out.ts'
import { reportOf } from '../../../src/job/report.ts'
import { type NamedFile, sledFiles, sledSet } from '../../../src/job/sled-files.ts'
import { type SledReport, sledReport } from '../../../src/job/sled-report.ts'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { readThreeMf } from '../../oracle/readers/three-mf.ts'
import { answerTo, demo, projectOf } from './demo-answer.ts'

let kernel: Kernel
beforeAll(async () => {
  kernel = await loadKernel()
})

function setOf(project: ProjectInput, layout?: FileLayout) {
  const made = sledSet(kernel, answerTo(project), layout)
  if (!made.ok) throw new Error(JSON.stringify(made.problems))
  return made.value
}

interface Made {
  readonly files: readonly NamedFile[]
  readonly report: SledReport
}

async function make(project: ProjectInput, layout?: FileLayout): Promise<Made> {
  const answer = answerTo(project)
  const made = sledSet(kernel, answer, layout)
  if (!made.ok) throw new Error(JSON.stringify(made.problems))
  const files = await sledFiles(made.value, { base: 'job', job: 'Job' })
  const report = reportOf(answer, { project: projectOf(project), unknownFields: [] })
  return { files, report: await sledReport(made.value, files, report) }
}

const names = (files: readonly NamedFile[]) => files.map((f) => f.name)

describe('the files of a job with two sleds of several bodies', () => {
  let made: Made
  beforeAll(async () => {
    made = await make(demo('buoy-lantern'))
  })

  it('are one STL a body and one 3MF a sled', () => {
    expect(names(made.files)).toEqual([
      'job-body-1.stl',
      'job-body-2.stl',
      'job-body.3mf',
      'job-chamber-disc-1.stl',
      'job-chamber-disc-2.stl',
      'job-chamber-disc-3.stl',
      'job-chamber-disc-4.stl',
      'job-chamber.3mf',
    ])
  })

  it('have in a 3MF what the report says of the bodies, named, where the STL has it', () => {
    for (const sled of made.report.sleds) {
      const file = made.files.find((f) => f.name === sled.threeMf)
      const { objects, faults, metadata } = readThreeMf(file?.bytes ?? new Uint8Array())
      expect(faults).toEqual([])
      expect(metadata).toMatchObject({ Title: `Job: ${sled.name}` })
      expect(objects.map((o) => o.name)).toEqual(sled.bodies.map((b) => b.name))
      for (const [i, b] of sled.bodies.entries()) {
        expect(objects[i]?.triangles).toBe(b.triangles)
        expect((objects[i]?.volume ?? 0) / b.volume).toBeCloseTo(1, 6)
        for (const k of [0, 1, 2]) {
          expect(objects[i]?.min[k]).toBeCloseTo(b.bounds.min[k] as number, 6)
          expect(objects[i]?.max[k]).toBeCloseTo(b.bounds.max[k] as number, 6)
        }
        const stl = made.files.find((f) => f.name === b.stl)
        expect(stl?.bytes.length).toBe(84 + 50 * b.triangles)
      }
    }
  })

  it('seat every body on the bed, in the positive octant, no two in one place', () => {
    for (const { bodies } of made.report.sleds) {
      for (const { bounds } of bodies) {
        expect(bounds.min[2]).toBe(0)
        expect(Math.min(...bounds.min.slice(0, 2))).toBeGreaterThan(0)
      }
      for (const [i, a] of bodies.entries())
        for (const b of bodies.slice(i + 1)) {
          const apart = [0, 1].map((k) =>
            Math.max(
              (b.bounds.min[k] as number) - (a.bounds.max[k] as number),
              (a.bounds.min[k] as number) - (b.bounds.max[k] as number),
            ),
          )
          expect(Math.max(...apart)).toBeGreaterThan(9.9)
        }
    }
  })

  it('say which way up and why', () => {
    const all = made.report.sleds.flatMap((s) => s.bodies.map((b) => b.orientation))
    for (const o of all) expect(o?.why).toMatch(/^Upright on its (rear|blade) end.*\.$/)
    expect(new Set(all.map((o) => o?.down))).toEqual(new Set(['rear end', 'blade end']))
  })

  it('say how the hilt lies in the file: the thinnest wall is found again on the moved mesh', () => {
    for (const b of made.report.sleds.flatMap((s) => s.bodies)) {
      const at = b.thinnestWall?.at
      if (!at) throw new Error('no wall')
      const theta = (at.theta * Math.PI) / 180
      const p = [at.r * Math.cos(theta), at.r * Math.sin(theta), at.z, 1]
      const q = b.toFile.map((row) => row.reduce((sum, m, i) => sum + m * (p[i] as number), 0))
      for (const [k, x] of q.entries()) {
        expect(x).toBeGreaterThanOrEqual((b.bounds.min[k] as number) - 1e-3)
        expect(x).toBeLessThanOrEqual((b.bounds.max[k] as number) + 1e-3)
      }
    }
  })

  it('name the thinnest wall with its limit and the two nests it stands between', () => {
    for (const b of made.report.sleds.flatMap((s) => s.bodies)) {
      const wall = b.thinnestWall
      expect(wall?.thickness).toBeGreaterThan(1.2 - 0.02)
      expect(wall).toMatchObject({ limit: 1.2, limitSource: expect.stringContaining('common practice') })
      for (const side of wall?.between ?? [])
        expect(side).toEqual({
          item: expect.stringMatching(/^(sleds|parts)\//),
          nest: expect.any(String),
          by: expect.stringMatching(/^(sleds|parts)\//),
        })
    }
  })

  it('weigh what their volume weighs in their material, which names its source (computed: V · ρ)', () => {
    for (const sled of made.report.sleds) {
      expect(sled.material).toMatchObject({ name: 'PETG', source: expect.stringMatching(/\(read\)$/) })
      const volume = sled.bodies.reduce((sum, b) => sum + b.volume, 0)
      expect(sled.mass?.least).toBeCloseTo(volume * 0.00125, 4)
      expect(sled.mass?.most).toBeCloseTo(volume * 0.00129, 4)
      expect(sled.mass?.least).toBeCloseTo(
        sled.bodies.reduce((sum, b) => sum + (b.mass?.least ?? 0), 0),
        4,
      )
    }
  })

  it('are told of with size and SHA-256', () => {
    expect(made.report.files).toEqual(
      made.files.map(({ name, bytes }) => ({
        name,
        bytes: bytes.length,
        sha256: createHash('sha256').update(bytes).digest('hex'),
      })),
    )
  })

  it('have the same bytes the next time, and so has the report', async () => {
    expect(await make(demo('buoy-lantern'))).toEqual(made)
  })
})

describe('as assembled', () => {
  it('every body lies where it is in the hilt, and the names say so', async () => {
    const { files, report } = await make(demo('buoy-lantern'), 'assembled')
    expect(names(files)).toContain('job-body-1-assembled.stl')
    expect(names(files)).toContain('job-chamber-assembled.3mf')
    const [body, chamber] = report.sleds
    expect(body?.bodies.map((b) => b.bounds.min[2])).toEqual([4, 52])
    expect(chamber?.bodies.at(-1)?.bounds.max[2]).toBe(216)
    for (const b of report.sleds.flatMap((s) => s.bodies)) {
      expect(b.orientation).toBeNull()
      expect(b.toFile).toEqual([
        [1, 0, 0, 0],
        [0, 1, 0, 0],
        [0, 0, 1, 0],
      ])
    }
    const file = files.find((f) => f.name === 'job-chamber-assembled.3mf')
    expect(readThreeMf(file?.bytes ?? new Uint8Array()).faults).toEqual([])
  })
})

describe('what is asked for', () => {
  it.each([
    [['stl'], ['job-main.stl']],
    [['3mf'], ['job-main.3mf']],
    [
      ['3mf', 'stl'],
      ['job-main.stl', 'job-main.3mf'],
    ],
  ] as const)('%j gives %j', async (formats, expected) => {
    const set = setOf(demo('pier-lantern'))
    expect(names(await sledFiles(set, { base: 'job', job: '', formats }))).toEqual(expected)
  })

  it('two bodies of one name in two sleds keep names of their own', async () => {
    const set = setOf(demo('buoy-lantern'))
    const [first, second] = set.sleds
    const [placed] = second?.bodies ?? []
    if (!first || !second || !placed) throw new Error('not two sleds')
    const namesake = {
      ...second,
      sled: { ...second.sled, id: 'body-1' },
      bodies: [{ ...placed, body: { ...placed.body, id: 'body-1' } }],
    }
    const made = names(await sledFiles({ ...set, sleds: [first, namesake] }, { base: 'job', job: '' }))
    expect(new Set(made).size).toBe(made.length)
    expect(made).toContain('job-body-body-1.stl')
    expect(made).toContain('job-body-1-body-1.stl')
  })
})

describe('what is not proven', () => {
  it('says so in every name, in the STL, and in title and objects of the 3MF', async () => {
    const { files, report } = await make(demo('weir-lantern'))
    expect(report.proven).toBe(false)
    expect(names(files)).toEqual(['job-main-UNPROVEN.stl', 'job-main-UNPROVEN.3mf'])
    expect(new TextDecoder().decode(files[0]?.bytes.slice(0, 80))).toContain('UNPROVEN')
    const { metadata, objects } = readThreeMf(files[1]?.bytes ?? new Uint8Array())
    expect(metadata['Title']).toMatch(/^UNPROVEN /)
    for (const o of objects) expect(o.name).toMatch(/^UNPROVEN /)
  })
})

describe('mass', () => {
  it.each([
    [undefined, null, /Name what the printer prints with/],
    ['material-aluminium', 'Aluminium', /density of Aluminium is not known.*printer\/bench\/material/],
  ])('of a material %s is not known, and the report says what to name', async (material, name, hint) => {
    const project = demo('pier-lantern')
    const [{ material: _own, ...printer } = { id: 'bench', material: undefined }] = project.printer ?? []
    const { report } = await make({
      ...project,
      printer: [material === undefined ? printer : { ...printer, material }],
    })
    const [sled] = report.sleds
    expect(sled?.mass).toBeNull()
    expect(sled?.bodies.map((b) => b.mass)).toEqual([null])
    expect(sled?.material?.name ?? null).toBe(name)
    expect(sled?.massHint).toMatch(hint)
  })
})

it('a typed least wall is named as the source of the limit', async () => {
  const project = demo('pier-lantern')
  const printer = (project.printer ?? []).map((p) => ({ ...p, leastWall: 1 }))
  const { report } = await make({ ...project, printer })
  expect(report.sleds[0]?.bodies[0]?.thinnestWall).toMatchObject({
    limit: 1,
    limitSource: 'typed in printer/bench/leastWall',
  })
})
