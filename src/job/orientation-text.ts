import type { Orientation, OrientationReason } from '../../geometry/mesh/orientation.ts'
import { footLimits } from '../../geometry/mesh/orientation.ts'

/** How a body is printed and why, in a sentence or two. */
export function orientationText(o: Orientation): string {
  return `${wayOf(o)}${reasons[o.reason](o)}`
}

function wayOf({ down }: Orientation): string {
  if (typeof down === 'number') return `On its side, θ ${plain(down)}° down: `
  return down === 'rear' ? 'Upright on its rear end: ' : 'Upright on its blade end, turned over: '
}

const reasons: Readonly<Record<OrientationReason, (o: Orientation) => string>> = {
  'only-foot': (o) => `the other end gives no foot to stand on (${footText(other(o))}).`,
  'less-overhang': (o) => `${area(o.chosen.overhang)} hang over; the other way up ${area(other(o).overhang)} would.`,
  'split-face': () => 'it is the face of the split, and about as much hangs over either way.',
  'wider-foot': (o) => `its foot has ${area(o.chosen.foot)}, the other end's ${area(other(o).foot)}.`,
  'as-drawn': () => 'either end would do.',
  'no-foot': ({ ends: { rear, blade }, chosen }) =>
    `no end gives a foot of ${footLimits.area} mm² that it does not fall over (rear ${footText(rear)}, blade ${footText(blade)}). ` +
    `It lies on ${area(chosen.foot)} and wants supports under ${area(chosen.overhang)}.`,
}

const other = (o: Orientation) => (o.down === 'rear' ? o.ends.blade : o.ends.rear)
const area = (mm2: number): string => `${mm2.toFixed(0)} mm²`
const footText = (s: Orientation['chosen']): string =>
  s.foot < footLimits.area ? area(s.foot) : `${area(s.foot)}, falls when tipped by ${Math.max(0, s.tip).toFixed(0)}°`
const plain = (n: number): string => String(Number(n.toFixed(2)))
