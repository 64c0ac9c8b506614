import { useEffect, useState } from 'react'

export type Theme = 'light' | 'dark'

const key = 'sledwright-theme'
const dark = () => matchMedia('(prefers-color-scheme: dark)')

/** The look in force: the person's choice where one was made, else the system's. */
export function useTheme(): { readonly theme: Theme; readonly choose: (theme: Theme) => void } {
  const [chosen, setChosen] = useState(() => apply(stored()))
  const [system, setSystem] = useState<Theme>(() => (dark().matches ? 'dark' : 'light'))
  useEffect(() => {
    const query = dark()
    const follow = () => setSystem(query.matches ? 'dark' : 'light')
    query.addEventListener('change', follow)
    return () => query.removeEventListener('change', follow)
  }, [])
  const choose = (theme: Theme) => {
    // Before anything is drawn anew: the solid view reads its colours from the style in force.
    apply(theme)
    setChosen(theme)
    try {
      localStorage.setItem(key, theme)
    } catch {
      // Storage may be refused; the choice then lasts as long as the page.
    }
  }
  return { theme: chosen ?? system, choose }
}

function apply(theme: Theme | undefined): Theme | undefined {
  if (theme) document.documentElement.dataset['theme'] = theme
  return theme
}

function stored(): Theme | undefined {
  try {
    const value = localStorage.getItem(key)
    return value === 'light' || value === 'dark' ? value : undefined
  } catch {
    return undefined
  }
}
