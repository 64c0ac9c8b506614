import type { Assembly } from '../resolve/assembly.ts'
import { checks } from './checks.ts'
import { byMargin, type Finding, type NotChecked } from './finding.ts'
import { overall, type Verdict } from './verdict.ts'
import { worldOf } from './world.ts'

/** What is said of a whole job. */
export interface Judgement {
  readonly verdict: Verdict
  /** Tightest first. */
  readonly findings: readonly Finding[]
  readonly notChecked: readonly NotChecked[]
}

/** Every check on an assembly; `state` narrows it to one state. */
export function judgeAssembly(assembly: Assembly, state?: string): Judgement {
  const world = worldOf(assembly, state)
  const results = checks.flatMap((c) => c.run(world))
  const findings = results.filter((r): r is Finding => 'status' in r).sort(byMargin)
  const notChecked = [...results.filter((r): r is NotChecked => !('status' in r)), ...missingInputs(assembly)]
  const verdict = overall([...findings.map((f) => f.status), ...notChecked.map((): 'not-checked' => 'not-checked')])
  return { verdict, findings, notChecked }
}

/** What is there but was never measured keeps the job from being clear. */
function missingInputs(assembly: Assembly): NotChecked[] {
  return assembly.missing.map((m) => ({
    id: `missing:${m.path}`,
    check: 'inputs',
    title: `Not measured: ${m.what}`,
    parts: [m.of],
    missing: m.what,
    path: m.path,
    hint: m.hint,
  }))
}
