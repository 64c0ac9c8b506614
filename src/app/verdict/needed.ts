import type { Finding } from '../../checks/finding.ts'
import { fixed } from '../sheet/numbers.ts'

/** What the number left is counted from, so that a nothing does not read as touching; empty where nothing is asked for. */
export const needed = ({ unit, limit, margin }: Finding): string =>
  unit === 'mm' && limit > 0
    ? `${fixed(margin.worst).startsWith('−') ? 'against' : 'beyond'} the ${fixed(limit)} needed`
    : ''
