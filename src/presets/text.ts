import { intervalText } from './bounds.ts'
import type { Body } from './schema/body.ts'
import type { Interval } from './schema/interval.ts'
import type { Preset } from './schema/kinds.ts'

/** One line for a terminal's list: id, name, the figures one chooses by, how they are known and from what. */
export function presetText(entry: Preset): string {
  const known = typeof entry.how === 'string' ? [entry.how] : [...new Set(Object.values(entry.how))]
  return `${entry.id}: ${entry.name}; ${figuresText(entry)}; ${entry.source} (${known.join(' / ')})`
}

/** The figures one chooses by, in one line. */
export function figuresText(entry: Preset): string {
  switch (entry.kind) {
    case 'cell':
      return `${bodyText(entry.body)}, ${intervalText(entry.mass)} g, ${intervalText(entry.capacity)} mAh, ${intervalText(entry.current)} A`
    case 'contact':
      return `solid ${intervalText(entry.solid)}, working ${intervalText(entry.working)}, free ${intervalText(entry.free)} mm, ${intervalText(entry.force)} N`
    case 'speaker':
      return `${bodyText(entry.body)}, ${entry.impedance.join(' or ')} Ω, ${intervalText(entry.power)} W`
    case 'switch':
      if (entry.type === 'tact')
        return `${bodyText(entry.body)}, overall ${intervalText(entry.overall)} mm, travel ${intervalText(entry.travel)} mm`
      if (entry.type === 'panel')
        return `cutout ⌀${intervalText(entry.cutout)}, behind the wall ${bodyText(entry.body)}`
      return `${bodyText(entry.body)}, ${intervalText(entry.current)} A`
    case 'port':
      return entry.type === 'barrel'
        ? `hole ⌀${intervalText(entry.hole)}, behind the wall ${bodyText(entry.body)}`
        : bodyText(entry.body)
    case 'board':
    case 'connector':
      return bodyText(entry.body)
    case 'thread':
      return `major ${entry.major}, pitch ${entry.pitch}, minor ${entry.minor} mm`
    case 'drill':
      return `⌀${entry.diameter} mm`
    case 'wire':
      return `outside ⌀${intervalText(entry.outside)} mm, ${entry.conductor.area} mm², ${entry.resistance} Ω/km`
    case 'material':
      return entry.modulus
        ? `stiffness ${intervalText(entry.modulus)} GPa, ${expands(entry.expansion)}`
        : expands(entry.expansion)
    case 'process':
      return `error ${intervalText(entry.error)} mm, walls from ${entry.minWall} mm, play in a bore ${intervalText(entry.toBoreDiametral)} mm on the diameter`
    case 'guideline':
      return Object.entries(entry.figures)
        .map(([name, value]) => `${name} ${figure(value)}`)
        .join(', ')
    case 'tool':
      return `measures ${entry.measures.join(', ')}: error ±${entry.mpe}, step ${entry.resolution} mm`
  }
}

/** 1e-6/K is a thousandth of a millimetre in each metre for each degree. */
const expands = (by: Interval) => `expands ${intervalText(by)} µm a metre and degree`

const figure = (value: number | Interval) => (typeof value === 'number' ? String(value) : intervalText(value))

/** The sizes of a body in one line, mm. */
export function bodyText(body: Body): string {
  switch (body.shape) {
    case 'cylinder':
      return `⌀${intervalText(body.diameter)} × ${intervalText(body.length)} mm`
    case 'box':
      return `${intervalText(body.width)} × ${intervalText(body.height)} × ${intervalText(body.length)} mm`
    case 'outline': {
      const extent = (n: number[]) => Math.max(...n) - Math.min(...n)
      const across = extent(body.outline.map((corner) => corner[1]))
      const along = extent(body.outline.map((corner) => corner[0]))
      return `${across} × ${along} mm, ${intervalText(body.thickness)} mm thick, ${body.components.map(componentText).join(', ')}`
    }
  }
}

const componentText = (c: { name: string; height: number | Interval }) => `${c.name} ${figure(c.height)} mm high`
