import { spawnSync } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { cpus, loadavg, tmpdir, totalmem } from 'node:os'
import { join } from 'node:path'
import { loadKernel } from '../../geometry/kernel/load.ts'
import { clearanceMap } from '../../geometry/map/clearance-map.ts'
import { gridOver } from '../../geometry/map/grid.ts'
import { realise } from '../../src/body/realise.ts'
import { fetchRare } from '../../src/checks/rare.ts'
import { worldOf } from '../../src/checks/world.ts'
import { answer } from '../../src/job/answer.ts'
import { trySled } from '../../src/job/build-sled.ts'
import { demos } from '../../src/job/demos/index.ts'
import { loadPresets } from '../../src/presets/presets.ts'
import { checkProject } from '../../src/project/read.ts'
import type { Project } from '../../src/project/schema/project.ts'
import { at } from '../../src/quantity/level.ts'
import type { Assembly, Sled } from '../../src/resolve/assembly.ts'
import { planSled } from '../../src/sled/plan-sled.ts'
import { besideOthers, growth } from './other-kernels.ts'
import { row, timed } from './timed.ts'
import { variants } from './variants.ts'

await fetchRare()
const presets = loadPresets()
const projects = demos.map((d): { name: string; project: Project } => {
  const read = checkProject(d.project)
  if (!read.ok) throw new Error(`demo ${d.name} does not read`)
  return { name: d.name, project: read.value.project }
})
const assemblyOf = (project: Project): Assembly => {
  const found = answer(project, presets)
  if (!found.ok) throw new Error(JSON.stringify(found.problems))
  return found.value.assembly
}
/** The largest demo: most features, parts and sections together. */
const weight = (p: Project) => p.sections.length + p.features.length + p.parts.length + p.screws.length
const largest = projects.reduce((a, b) => (weight(b.project) > weight(a.project) ? b : a))

console.log(
  `${cpus()[0]?.model ?? 'unknown processor'}, ${cpus().length} cores, ${Math.round(totalmem() / 2 ** 30)} GiB, Node ${process.version}, load ${(loadavg()[0] as number).toFixed(1)}`,
)
console.log(`Largest demo: ${largest.name}`)

const changed = variants(largest.project, 300)
row(
  'all findings after one changed number (a different one each time)',
  // Every number that stands for a dimension changes once before, and twice while it is timed.
  timed(200, 100, (i) => void answer(changed[i] as Project, presets)),
  'target ≤ 5 ms',
)

const assembly = assemblyOf(largest.project)
const world = worldOf(assembly)
const level = (q: Parameters<typeof at>[0], tight: -1 | 0 | 1) => (tight === 0 ? q.nominal : at(q, tight, 'worst'))
const bodies = [
  ...[...world.outsides.values()].flat(),
  ...assembly.parts.filter((p) => p.sled).flatMap((p) => p.bodies),
].map((b) => realise(b, level))
const obstacles = [...assembly.bores.map((b) => b.body), ...assembly.intrusions.map((i) => i.body)].map((b) =>
  realise(b, level),
)
const z1 = Math.max(...assembly.sections.map((s) => s.ends.blade.nominal))
const grid = gridOver(0, z1)
row(
  `clearance map, 0.25 mm × 1°, ${grid.nz} × ${grid.nTheta} cells, on the way in`,
  timed(40, 10, () => void clearanceMap(bodies, obstacles, grid, { clearance: 0.15, way: 'blade' })),
  'target ≤ 10 ms',
)

const kernel = await loadKernel()
const sleds = variants(largest.project, 40).map(assemblyOf)
row(
  'sled from parameters at 96 facets, gate included',
  timed(25, 8, (i) => void trySled(kernel, sleds[i] as Assembly, (sleds[i] as Assembly).sleds[0]?.id ?? '')),
  'target ≤ 100 ms',
)
await besideOthers(kernel, planSled(assembly, assembly.sleds[0] as Sled).plan)
growth(kernel)

const file = join(mkdtempSync(join(tmpdir(), 'sledwright-')), 'demo.json')
writeFileSync(file, JSON.stringify(largest.project))
row(
  'command line, from start to verdict',
  timed(11, 2, () => void spawnSync(process.execPath, ['src/cli/sledwright.mjs', 'check', file])),
  'target ≤ 600 ms',
)
