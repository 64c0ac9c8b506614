import { fieldLabels, fieldOf } from './field-paths.ts'

/** Words for the ends of paths that would not be understood as they stand. */
const words: Readonly<Record<string, string>> = {
  ovality: 'how round it is',
  outline: 'its outline',
  thickness: 'thickness of its plate',
  height: 'height of what stands on it',
  preset: '',
  solid: 'fully pressed length',
  free: 'free length',
}

/** Lists and forms in a path that say nothing to a person. */
const silent = new Set(['parts', 'sections', 'wires', 'sleds', 'printer', 'preset', 'body', 'bore', 'at', 'components'])

/** A path of the project in words: "board: height of what stands on it". */
export function placeName(path: string): string {
  if (path === 'printer/error') return 'print error'
  const parts = path.split('/').filter((p) => !/^\d+$/.test(p))
  const last = parts.at(-1) ?? ''
  const field = fieldOf(path)
  const said = words[last] ?? last
  if (field) {
    const label = fieldLabels[field]
    const exact = field.includes('.') || ['diameter', 'length', 'thread', 'wires'].includes(last)
    if (path.includes('/preset/') && !field.includes('.')) return said === '' ? label : `${label}: ${said}`
    return exact || said === '' || label.includes(said) ? label : `${label}: ${said}`
  }
  return parts
    .filter((p) => !silent.has(p))
    .map((p) => words[p] ?? p.replaceAll('-', ' '))
    .join(': ')
}
