import { useMemo } from 'react'

const names = [
  'ink',
  'sled',
  'sled-hatch',
  'cell',
  'board',
  'speaker',
  'contact',
  'other',
  'metal',
  'metal-hatch',
  'sheet',
  'blue',
  'clash',
  'unsure',
  'clear',
] as const

export type InkName = (typeof names)[number]
export type Inks = Readonly<Record<InkName, string>>

/** The colours of the drawing as the solid view needs them: plain values, read from the theme in force. */
export function useInks(theme: string): Inks {
  return useMemo(() => readInks(theme), [theme])
}

function readInks(_theme: string): Inks {
  const probe = document.createElement('span')
  document.body.append(probe)
  const found = names.map((name): [string, string] => {
    probe.style.color = `var(--${name})`
    return [name, getComputedStyle(probe).color]
  })
  probe.remove()
  return Object.fromEntries(found) as Inks
}
