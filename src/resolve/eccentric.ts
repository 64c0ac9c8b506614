import type { SectionInput } from '../project/schema/hilt.ts'
import { combine, doubt, exact, known, most, type Quantity } from '../quantity/quantity.ts'
import type { Context } from './context.ts'
import { quantityOf } from './quantity.ts'

/** Where the bore's axis lies beside the hilt's. Without a clock angle it may be anywhere around. */
export function eccentric(
  ctx: Context,
  id: string,
  input: NonNullable<SectionInput['eccentricity']>,
): { x: Quantity; y: Quantity; sway: Quantity | undefined } {
  const centred = { x: exact(0), y: exact(0), sway: undefined }
  const path = `sections/${id}/eccentricity`
  const offset = quantityOf(ctx, input.offset, { path: `${path}/offset`, as: 'offset', min: 0, max: 20 })
  if (!offset) return centred
  if (input.theta === undefined) {
    const most = offset.nominal + (offset.terms[0]?.spread.plus ?? 0)
    return {
      ...centred,
      sway: known(0, {
        path: `${path}/theta`,
        kind: 'unknown',
        minus: most,
        plus: most,
        distribution: 'rectangular',
        source: 'measured',
        from: 'clock angle of the offset not given',
      }),
    }
  }
  const theta = quantityOf(ctx, input.theta, { path: `${path}/theta`, as: 'angle' })
  if (!theta) return centred
  const [c, w] = [(theta.nominal * Math.PI) / 180, Math.PI / 180]
  const turn = (gain: number): [Quantity, number] => [doubt(theta), gain * most(offset) * w]
  return {
    x: combine([[offset, Math.cos(c)], turn(-Math.sin(c))]),
    y: combine([[offset, Math.sin(c)], turn(Math.cos(c))]),
    sway: undefined,
  }
}
