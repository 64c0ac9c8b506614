import type { Fix } from '../checks/finding.ts'
import { type FixJob, provenFor } from '../job/proven-fixes.ts'

/**
 * The proven fixes of all findings, with a pause after each in which the worker hears of something newer; undefined
 * where it has.
 */
export async function triedFixes(
  job: FixJob,
  overtaken: () => boolean,
): Promise<Readonly<Record<string, readonly Fix[]>> | undefined> {
  const fixes: Record<string, readonly Fix[]> = {}
  for (const finding of job.findings.filter((f) => f.fix.length > 0)) {
    fixes[finding.id] = provenFor(job, finding)
    await new Promise((go) => setTimeout(go))
    if (overtaken()) return undefined
  }
  return fixes
}
