import type { Finding, Fix } from '../../checks/finding.ts'

/** The findings with the fixes that were tried meanwhile. */
export const withFixes = (
  findings: readonly Finding[],
  fixes: Readonly<Record<string, readonly Fix[]>>,
): readonly Finding[] => findings.map((f) => ({ ...f, fix: fixes[f.id] ?? f.fix }))
