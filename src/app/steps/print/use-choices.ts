import { useEffect, useState } from 'react'
import type { PresetChoices } from '../../../presets/preset-choices.ts'
import { useWork } from '../../work/work-context.ts'

/** Reading the presets takes no longer, ms. */
const patience = 20_000

/** What the presets offer, once they are there. */
export function useChoices(): PresetChoices | undefined {
  const { desk } = useWork()
  const [choices, setChoices] = useState<PresetChoices>()
  useEffect(() => {
    let wanted = true
    void desk
      .ask('print-choices', patience, (calls) => calls.choices())
      .then((reply) => wanted && reply.kind === 'done' && setChoices(reply.value))
    return () => {
      wanted = false
    }
  }, [desk])
  return choices
}
