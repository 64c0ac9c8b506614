import { fieldLabels, fieldOf } from './field-paths.ts'

/** Ends of paths that would not be understood as they stand, before "of the board". */
const ends: Readonly<Record<string, string>> = {
  ovality: 'roundness',
  height: 'height of what stands on',
  solid: 'fully pressed length',
  free: 'free length',
}

/** Lists and forms in a path that say nothing to a person. */
const silent = new Set(['parts', 'sections', 'wires', 'sleds', 'printer', 'preset', 'body', 'bore', 'at', 'components'])

/** A path of the project in words: "height of what stands on the board". */
export function placeName(path: string): string {
  if (path === 'printer/error') return 'print error'
  const parts = path.split('/').filter((p) => !/^\d+$/.test(p))
  const last = parts.at(-1) ?? ''
  const field = fieldOf(path)
  if (field) {
    const label = fieldLabels[field]
    const whole =
      field.includes('.') || ['bore', 'depth', 'thread', 'threadLength', 'wires', 'sledDiameter'].includes(field)
    return (whole && last !== 'ovality') || last === 'preset' ? label : of(last, label)
  }
  const [thing = path, ...rest] = parts.filter((p) => !silent.has(p)).map((p) => p.replaceAll('-', ' '))
  return rest.length === 0 ? thing : of(rest.at(-1) ?? '', thing)
}

function of(what: string, thing: string): string {
  const said = ends[what] ?? what
  return said.endsWith(' on') ? `${said} the ${thing}` : `${said} of the ${thing}`
}
