import { useMemo } from 'react'

const names = ['ink', 'sled', 'cell', 'board', 'speaker', 'contact', 'other'] as const

/** The colours of the drawing as the solid view needs them: plain values, read from the theme in force. */
export function useInks(theme: string): Readonly<Record<string, string>> {
  return useMemo(() => readInks(theme), [theme])
}

function readInks(_theme: string): Readonly<Record<string, string>> {
  const probe = document.createElement('span')
  document.body.append(probe)
  const found = names.map((name): [string, string] => {
    probe.style.color = `var(--${name})`
    return [name, getComputedStyle(probe).color]
  })
  probe.remove()
  return Object.fromEntries(found)
}
