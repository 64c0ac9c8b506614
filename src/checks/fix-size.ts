import type { Part } from '../resolve/assembly.ts'
import type { Fix } from './finding.ts'
import { downTo } from './fix-value.ts'
import { mm } from './words.ts'

/**
 * How wide a round part on the axis could be at most: by what lacks on its radius narrower than it is. With a number to
 * apply where its own sizes are typed; another preset has to be chosen.
 */
export function smaller(part: Part, lack: number): Fix[] {
  const value = downTo(2 * (part.extent.halfU.nominal - lack))
  const onAxis = part.extent.round && part.across.x.nominal === 0 && part.across.y.nominal === 0
  if (!onAxis || value <= 0) return []
  const text = `Use another ${part.name}: the largest that fits here is ${mm(value)} mm in diameter.`
  return [part.input.body ? { text, path: `${part.id}/body/diameter`, value } : { text, path: `${part.id}/preset` }]
}
