import type { Fix } from '../checks/finding.ts'

/** What can be said of a finding before any number was tried. */
export const advice = (fixes: readonly Fix[]): readonly Fix[] =>
  fixes.filter((f) => f.value === undefined && !f.onlyTried)
