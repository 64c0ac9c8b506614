import { Dimension } from '../../drawing/dimension.tsx'
import { useView } from '../../work/work-context.ts'
import type { Form } from './feature-forms.ts'

/** A wall, the axis, and something through the wall between them, px; nothing is computed from it. */
const [wall, inner, axis, end] = [24, 46, 136, 92]
const [left, right] = [140, 176]

/** What the fields of something that sticks in ask for. The field that has the focus lights its dimension. */
export function IntrusionSketch({ path, form }: { readonly path: string; readonly form: Form }) {
  const lit = useView((v) => v.lit)
  const on = (field: string) => lit === `${path}/${field}`
  const pin = form === 'pin'
  const across = pin ? 'diameter' : 'length'
  const round = pin ? 12 : 0
  const outline = `M${left} 12V${end - round}q0 ${round} ${round} ${round}H${right - round}q${round} 0 ${round} ${-round}V12Z`
  return (
    <div className="datum">
      <svg
        viewBox="0 0 360 150"
        role="img"
        aria-label={`Where to measure: ${pin ? 'the diameter across it' : 'the length along z'}; how far it sticks in, from the bore wall to its end; or instead how far its end is from the axis.`}
      >
        <path className="datum-metal" d={`M8 ${wall}H352V${inner}H8Z`} />
        <path className="datum-metal" d={outline} />
        <path className="datum-axis" d={`M8 ${axis}H352`} />
        <text x="12" y={axis - 6}>
          axis
        </text>
        <text x="12" y={inner - 8}>
          wall
        </text>
        <Dimension from={[left, 24]} to={[right, 24]} at={10} text="" lit={on(across)} />
        <text x={right + 18} y="14">
          {pin ? 'diameter' : 'length along z'}
        </text>
        <Dimension upright from={[left, inner]} to={[left, end]} at={112} text="" lit={on('reach')} />
        <text x="104" y="73" textAnchor="end">
          sticks in by
        </text>
        <Dimension upright from={[right, end]} to={[right, axis]} at={208} text="" lit={on('tip')} />
        <text x="218" y="118">
          or: its end, from the axis
        </text>
        {pin && (
          <>
            <path className={on('round') ? 'datum-line' : 'datum-lead'} d={`M${right - 3} ${end - 4}L212 72H216`} />
            <text x="219" y="76">
              rounding of its end
            </text>
          </>
        )}
      </svg>
    </div>
  )
}
