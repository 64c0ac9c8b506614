import { widestChannel } from '../../../geometry/packing/channel.ts'
import { clock } from '../../../geometry/region/point.ts'
import { good } from '../../problem/problem.ts'
import { numberOf, type Rule } from '../rule.ts'
import { loadInputs, loadOf } from './load-inputs.ts'

export const widestChannelRule: Rule = {
  name: 'widest-channel',
  title: 'Widest channel beside the contents',
  what: 'The widest round wire channel that still fits in a sled beside what lies in it, and where.',
  inputs: [
    { name: 'sled', unit: 'mm', what: 'Diameter of the sled.', range: { exclusiveMin: 0, max: 200 } },
    {
      name: 'wall',
      unit: 'mm',
      what: 'Wall kept to the outside and to everything else (common practice, no source).',
      range: { min: 0, max: 20 },
      default: 1.2,
    },
    ...loadInputs,
  ],
  outputs: [
    { name: 'diameter', unit: 'mm', what: 'Diameter of the widest channel; 0 where none fits.' },
    { name: 'x', unit: 'mm', what: 'Its middle towards θ = 0.' },
    { name: 'y', unit: 'mm', what: 'Its middle towards θ = 90°.' },
    { name: 'theta', unit: 'deg', what: 'Its clock angle.' },
    { name: 'r', unit: 'mm', what: 'Its distance from the axis.' },
  ],
  formula: 'greatest r with r ≤ R − wall − |c| and r ≤ distance from c to everything else − wall, over all c',
  sources: [
    {
      text: 'Search over the whole sled: never wider than there is, and its radius within 0.05 of the widest',
      how: 'computed',
    },
    { text: 'Wall', how: 'common practice, no source' },
  ],
  example: { sled: '29', discs: '18.5', discX: '-4.6' },
  run: (values) => {
    const load = loadOf(values, 'widest-channel')
    if (!load.ok) return load
    const found = widestChannel(
      numberOf(values, 'sled') / 2,
      load.value.map((item) => item.region),
      numberOf(values, 'wall'),
    )
    if (found.r <= 0) return good({ diameter: 0, x: '', y: '', theta: '', r: '' })
    return good({
      diameter: 2 * found.r,
      x: found.c.x,
      y: found.c.y,
      theta: clock(found.c),
      r: Math.hypot(found.c.x, found.c.y),
    })
  },
}
