import type { SimpleSolid } from '../../papers/simple-solid.ts'
import type { JobSolids } from '../../worker/job-solids.ts'
import { fixed } from '../sheet/numbers.ts'
import type { Placed } from './placing.ts'
import { keyOf } from './placing.ts'

/** The picture in words: everything that is shown, its sizes, where it lies, and how far it stands from its place. */
export function HiltWords({ solids, where }: { readonly solids: JobSolids; readonly where: readonly Placed[] }) {
  const lines = linesOf(solids, where)
  return (
    <details className="solid-words">
      <summary>The picture in words</summary>
      <ul className="small">
        {lines.map(([key, name, text]) => (
          <li key={key}>
            <b>{name}</b> <span className="number">{text}</span>
          </li>
        ))}
      </ul>
    </details>
  )
}

/** A line a thing, in the order in which they lie along the hilt: metal, sleds, contents. */
export function linesOf(solids: JobSolids, where: readonly Placed[]): [key: string, name: string, text: string][] {
  return where.flatMap((p): [string, string, string][] => {
    const along = `z ${fixed(p.room.z0, 1)} to ${fixed(p.room.z1, 1)}${moved(p)}`
    const leaf = solids.hilt.metal.find((l) => l.section === p.key)
    if (leaf) return [[p.key, leaf.name, `${fixed(2 * p.room.r, 1)} mm outside, ${along}`]]
    const body = solids.sleds.flatMap((s) => s.bodies).find((b) => b.id === p.key)
    if (body) {
      const size = [0, 1, 2].map((k) => fixed((body.max[k] as number) - (body.min[k] as number), 1)).join(' × ')
      return [[p.key, body.name, `printed, ${size} mm, ${fixed(body.volume / 1000, 1)} cm³, ${along}`]]
    }
    const thing = solids.hilt.things.find((t) => keyOf(t) === p.key)
    const [first] = thing?.solids ?? []
    return thing && first ? [[p.key, thing.name, `${sizeWords(first)}, ${along}`]] : []
  })
}

function moved({ offset: [along, up, out] }: Placed): string {
  if (Math.abs(along) < 0.05 && Math.hypot(up, out) < 0.05) return ''
  const parts = [
    ...(Math.abs(along) < 0.05
      ? []
      : [`${fixed(Math.abs(along), 1)} ${along > 0 ? 'towards the blade' : 'towards the rear'}`]),
    ...(Math.hypot(up, out) < 0.05 ? [] : [`${fixed(Math.hypot(up, out), 1)} outwards`]),
  ]
  return `; drawn ${parts.join(' and ')}`
}

function sizeWords(s: SimpleSolid): string {
  if (s.shape === 'cylinder') return `${fixed(2 * Math.max(s.r0, s.r1), 1)} × ${fixed(s.z1 - s.z0, 1)} mm round`
  if (s.shape === 'box') return `${fixed(s.width, 1)} × ${fixed(s.height, 1)} × ${fixed(s.z1 - s.z0, 1)} mm`
  if (s.shape === 'pin')
    return `${fixed(2 * s.radius, 1)} mm round, at θ ${fixed(s.theta, 0)}°, in to r ${fixed(s.rIn, 1)}`
  return `from r ${fixed(s.rIn, 1)} to ${fixed(s.rOut, 1)}, ${fixed(2 * s.half, 0)}° about θ ${fixed(s.theta, 0)}°`
}
