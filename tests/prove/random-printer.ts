import type { ProjectInput } from '../../src/project/schema/project.ts'
import type { Rng } from './rng.ts'

/** A printer in one of the forms people tell of it, or none. */
export function printerOf(rng: Rng): Pick<ProjectInput, 'printer'> {
  const kind = rng.whole(0, 4)
  if (kind === 0) return {}
  if (kind === 1) return { printer: [{ id: 'p', process: 'process-resin' }] }
  if (kind === 2) return { printer: [{ id: 'p', error: rng.between(0.02, 0.2) }] }
  if (kind === 3)
    return {
      printer: [
        {
          id: 'p',
          error: {
            value: 0,
            plus: rng.between(0.02, 0.12),
            minus: 0.05,
            ...(rng.chance(0.4) ? { kind: 'unknown' as const, source: 'measured' as const } : {}),
          },
        },
      ],
    }
  return { printer: [{ id: 'p', error: { value: 0.05, plus: 0.03, minus: 0.03 } }] }
}
