import { buildBody, type Kernel } from '../../geometry/kernel/manifold.ts'
import { planSpan } from '../../geometry/plan/plan.ts'
import type { Finding } from '../../src/checks/finding.ts'
import { type Answer, answer } from '../../src/job/answer.ts'
import type { Presets } from '../../src/presets/presets.ts'
import { checkProject } from '../../src/project/read.ts'
import type { Project, ProjectInput } from '../../src/project/schema/project.ts'
import { planSled } from '../../src/sled/plan-sled.ts'
import type { Demand } from './demand.ts'
import { demandsOf } from './demands.ts'
import type { Bounds } from './gaps.ts'
import { Search } from './search.ts'
import { SledMesh } from './sled-mesh.ts'
import { type BuiltSled, type Job, worldAt } from './world.ts'

/** Facets of a round body near contact. */
const facets = 512
/** What facets and the search for the nearest point may be off, mm. */
export const tolerance = 0.002
/** A clash must be less than this off, mm. */
const clashTolerance = 0.05

export interface Fault {
  readonly kind: 'false clear' | 'false clash'
  readonly id: string
  readonly said: string
  readonly gap: number
  readonly limit: number
  /** The draw that shows it. */
  readonly draw: Readonly<Record<string, number>>
}

/** A verdict that could have been sharper: what was said and the true gaps. */
export interface Caution {
  readonly id: string
  readonly could: 'clear' | 'clash'
  readonly worst: number
  readonly said: number
}

export interface Remark {
  readonly id: string
  readonly what: string
}

export interface Judged {
  readonly verdict: Answer['verdict']
  readonly demands: number
  readonly statuses: Readonly<Record<string, number>>
  readonly faults: readonly Fault[]
  readonly cautions: readonly Caution[]
  readonly remarks: readonly Remark[]
}

export interface Seam {
  /** What the product is asked, where that is not the job itself: how the controls break a verdict on purpose. */
  readonly asked?: (project: ProjectInput) => ProjectInput
}

/** Judges a job twice, by the product and by what is true in draw after draw; undefined where the product refuses it. */
export function judgeJob(input: ProjectInput, presets: Presets, kernel: Kernel, seam: Seam = {}): Judged | string {
  const read = checkProject(input)
  if (!read.ok) return read.problems.map((p) => `${p.path}: ${p.code} ${p.got}`).join('; ')
  const asked = checkProject(seam.asked ? seam.asked(input) : input)
  if (!asked.ok) return 'the seam broke the project'
  const said = answer(asked.value.project, presets)
  if (!said.ok) return said.problems.map((p) => `${p.path}: ${p.code} ${p.got} (${p.limit})`).join('; ')
  const sleds = builtSleds(said.value, kernel)
  if (typeof sleds === 'string') return sleds
  return compare(read.value.project, presets, said.value, sleds)
}

function builtSleds(a: Answer, kernel: Kernel): Map<string, BuiltSled> | string {
  const sleds = new Map<string, BuiltSled>()
  for (const sled of a.assembly.sleds) {
    const [body] = planSled(a.assembly, sled).plan.bodies
    if (!body) return 'no body'
    const built = buildBody(kernel, body, facets)
    if (!built.ok) return built.faults.map((f) => `${f.item}: ${f.what}`).join('; ')
    const adds = body.items.filter((i) => i.op === 'add')
    const spans = adds.map((i) => planSpan(i.solid))
    const ends = { rear: Math.min(...spans.map((s) => s.z0)), blade: Math.max(...spans.map((s) => s.z1)) }
    sleds.set(sled.id, {
      id: sled.id,
      ...ends,
      pieces: sled.pieces.map((p) => ({ rear: p.z0, blade: p.z1, radius: p.radius })),
      rings: sled.rings.map((r) => ({ id: r.id, rear: r.z0, blade: r.z1 })),
      mesh: new SledMesh(built.mesh, body),
    })
  }
  return sleds
}

function compare(project: Project, presets: Presets, said: Answer, sleds: Map<string, BuiltSled>): Judged {
  const job: Job = { project, presets, sleds }
  const nominal = worldAt(job)
  const demands = demandsOf(nominal, said.assembly.states)
  const search = new Search(job, demands)
  const faults: Fault[] = []
  const cautions: Caution[] = []
  const remarks: Remark[] = []
  const statuses: Record<string, number> = {}
  for (const [i, d] of demands.entries()) {
    const finding = findingOf(said.findings, d)
    const status = finding?.status ?? 'clear'
    statuses[`${d.check} ${status}`] = (statuses[`${d.check} ${status}`] ?? 0) + 1
    const worst = search.worst(i)
    const base = { id: d.id, limit: d.limit }
    const fails = worst.gap.hi < d.limit - tolerance
    if (fails && (status === 'clear' || said.verdict === 'clear'))
      faults.push({
        ...base,
        kind: 'false clear',
        said: finding ? status : 'nothing',
        gap: worst.gap.hi,
        draw: worst.draw,
      })
    if (status === 'clash') {
      const settled = search.settled(i, d.limit + clashTolerance)
      if (settled.gap.lo >= d.limit + clashTolerance)
        faults.push({ ...base, kind: 'false clash', said: status, gap: settled.gap.lo, draw: settled.draw })
    }
    if (status === 'unsure' && finding && !finding.contributors.some((c) => c.source === 'assumed')) {
      const lo = worst.gap.lo
      if (lo > d.limit + 0.01)
        cautions.push({ id: d.id, could: 'clear', worst: lo - d.limit, said: finding.margin.worst })
      else if (fails) {
        const settled = search.settled(i, d.limit)
        if (settled.gap.hi < d.limit - 0.01)
          cautions.push({ id: d.id, could: 'clash', worst: settled.gap.hi - d.limit, said: finding.settled })
      }
    }
    if (finding) remarks.push(...remarkOn(d, finding, worst.gap))
  }
  return { verdict: said.verdict, demands: demands.length, statuses, faults, cautions, remarks }
}

function findingOf(findings: readonly Finding[], d: Demand): Finding | undefined {
  if (d.state === undefined) return findings.find((f) => f.id === d.id)
  const own = findings.filter((f) => f.id.startsWith(d.id))
  return own.find((f) => f.state === 'every state' || f.state.split(', ').includes(d.state as string))
}

/** A margin that is told larger than it is misleads even where the verdict holds. */
function remarkOn(d: Demand, f: Finding, worst: Bounds): Remark[] {
  if (d.check === 'nest-fit') return []
  const { worst: told } = f.margin
  if (told <= Math.max(worst.hi, 0) - d.limit + tolerance || worst.hi >= 2.5) return []
  return [{ id: d.id, what: `worst margin said ${told.toFixed(3)}, true ${(worst.hi - d.limit).toFixed(3)}` }]
}
