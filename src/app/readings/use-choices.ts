import { useEffect, useState } from 'react'
import type { PresetChoices } from '../../presets/preset-choices.ts'
import type { Desk } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { useWork } from '../work/work-context.ts'

/** They never change while the page is open. */
let fetched: PresetChoices | undefined
/** One question for all who wait: of several in one lane only the last would be answered. */
let asked: Promise<PresetChoices | undefined> | undefined

/** What the presets offer; undefined until it is there. */
export function useChoices(): PresetChoices | undefined {
  const { desk } = useWork()
  const [choices, setChoices] = useState(fetched)
  useEffect(() => {
    if (choices) return
    let wanted = true
    void (asked ??= fetchChoices(desk)).then((found) => wanted && setChoices(found))
    return () => {
      wanted = false
    }
  }, [desk, choices])
  return choices
}

async function fetchChoices(desk: Desk<WorkCalls>): Promise<PresetChoices | undefined> {
  const reply = await desk.ask('choices', 20_000, (calls) => calls.choices())
  if (reply.kind === 'done') fetched = reply.value
  else asked = undefined
  return fetched
}
