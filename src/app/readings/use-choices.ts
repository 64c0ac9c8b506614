import { useEffect, useState } from 'react'
import type { PresetChoices } from '../../presets/preset-choices.ts'
import { useWork } from '../work/work-context.ts'

/** They never change while the page is open. */
let fetched: PresetChoices | undefined

/** What the presets offer; undefined until it is there. */
export function useChoices(): PresetChoices | undefined {
  const { desk } = useWork()
  const [choices, setChoices] = useState(fetched)
  useEffect(() => {
    if (choices) return
    let wanted = true
    void desk
      .ask('choices', 20_000, (calls) => calls.choices())
      .then((reply) => {
        if (reply.kind !== 'done') return
        fetched = reply.value
        if (wanted) setChoices(fetched)
      })
    return () => {
      wanted = false
    }
  }, [desk, choices])
  return choices
}
