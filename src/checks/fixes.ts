import type { Fix } from './finding.ts'
import type { Tightest } from './group.ts'
import { measureNext, mm } from './words.ts'
import type { World } from './world.ts'

/** Numbers offered are rounded to this, towards the side that works, mm. */
const step = 0.05

const downTo = (n: number): number => Number((Math.floor(n / step + 1e-9) * step).toFixed(4))

/** What would make a gap hold: the change with its number, then the reading that would tell. Nothing where it holds. */
export function gapFixes(world: World, t: Tightest, of: string): Fix[] {
  if (t.margins.worst >= 0) return []
  return [...change(world, t, of), ...reading(t)]
}

/** The measurement that takes most doubt away, where measuring can decide it at all. */
export function reading(t: Pick<Tightest, 'contributions' | 'margins'>): Fix[] {
  const next = measureNext(t)
  return next && t.margins.best >= 0 ? [{ text: `Measure ${spoken(next)}: it moves this most.`, path: next }] : []
}

export const spoken = (path: string): string => path.replaceAll('/', ' › ')

function change(world: World, t: Tightest, of: string): Fix[] {
  const { assembly } = world
  const lack = -t.margins.worst
  const other = t.pair.b
  const fixes: Fix[] = []
  const sled = assembly.sleds.find((s) => of === `sleds/${s.id}`)
  const intrusion = assembly.intrusions.find((i) => i.body.id === other.id)
  if (intrusion && other.shape.kind === 'pin') {
    const feature = other.of.startsWith('features/')
    const tip = other.shape.rIn.nominal + lack
    fixes.push({
      text: `Let ${other.name} end at radius ${mm(Math.ceil(tip / step) * step)} or farther out.`,
      path: feature ? `${other.of}/shape/tip` : `${other.of}/tip`,
      value: Number((Math.ceil(tip / step - 1e-9) * step).toFixed(4)),
    })
    if (sled && !sled.input.windows?.some((w) => w.for === other.of))
      fixes.push({ text: `Cut a window for ${other.name} into the sled.`, path: `sleds/${sled.id}/windows` })
  } else if (sled && sled.pieces.length === 1) {
    const piece = sled.pieces[0] as (typeof sled.pieces)[number]
    const d = downTo(2 * (piece.radius - lack))
    if (d > 2 && t.at.r > piece.radius - 3)
      fixes.push({ text: `Make the sled ${mm(d)} in diameter.`, path: `sleds/${sled.id}/diameter`, value: d })
  }
  const part = assembly.parts.find((p) => p.id === of)
  if (part?.extent.round && part.across.x.nominal === 0 && part.across.y.nominal === 0) {
    const d = downTo(2 * (part.extent.halfU.nominal - lack))
    if (d > 0)
      fixes.push({
        text: `The largest that fits here is ${mm(d)} in diameter.`,
        path: `${part.id}/body/diameter`,
        value: d,
      })
  }
  return fixes
}
