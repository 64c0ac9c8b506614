import type { Finding, Fix } from '../checks/finding.ts'

/** Margins that read the same are the same, mm. */
const same = 0.01
/** A wall that is left thinner than before is told of where it has less than this to spare, mm. */
const closeWall = 1

/** What of a job is worse after a change than before, besides the finding it mends; the worst of it, in a sentence. */
export function spoiltBy(before: readonly Finding[], after: readonly Finding[], mended: string): Fix['spoils'] {
  const was = new Map(before.map((f) => [f.id, f]))
  const others = after.filter((f) => f.id !== mended)
  const fresh = others.find((f) => f.status === 'clash' && was.get(f.id)?.status !== 'clash')
  if (fresh) return { status: 'clash', text: `But then it clashes elsewhere: ${fresh.title}.` }
  const deeper = others.find((f) => f.status === 'clash' && isLess(f, was.get(f.id)))
  if (deeper) return { status: 'clash', text: `But then it clashes by more elsewhere: ${deeper.title}.` }
  // What is unsure for an assumed size alone is so because of the change itself, until that is made and measured.
  const unsure = others.find((f) => f.status === 'unsure' && f.margin.worst < 0 && was.get(f.id)?.status === 'clear')
  if (unsure) return { status: 'unsure', text: `Then it is not sure elsewhere: ${unsure.title}.` }
  const wall = after.find((f) => f.check === 'sled-wall' && f.margin.worst < closeWall && isLess(f, was.get(f.id)))
  return (
    wall && {
      status: wall.status,
      text: `Its walls are then thinner: ${wall.value.toFixed(2)} mm, where ${wall.limit.toFixed(2)} mm can be printed.`,
    }
  )
}

const isLess = (now: Finding, before: Finding | undefined): boolean =>
  before === undefined || now.margin.worst < before.margin.worst - same
