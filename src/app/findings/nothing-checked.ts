import type { Finding, NotChecked } from '../../checks/finding.ts'

/**
 * An empty hilt has neither passed nor failed anything: it has no verdict worth a word. What is begun and waits for its
 * numbers is said by itself.
 */
export const nothingChecked = (of: {
  readonly findings: readonly Finding[]
  readonly notChecked: readonly NotChecked[]
}): boolean => of.findings.length === 0 && of.notChecked.every((n) => n.id.startsWith('waiting:'))
