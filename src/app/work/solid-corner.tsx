import { useEffect, useState } from 'react'
import { problemText } from '../../problem/problem.ts'
import type { SolidView } from '../../worker/press.ts'
import { SolidPanel } from '../solid/solid-panel.tsx'
import { useProject, useWork } from './work-context.ts'

/** The kernel is fetched at the first call, perhaps over a slow line, ms. */
const patience = 60_000

/** The sled as a solid, built anew when the job has changed. */
export function SolidCorner() {
  const { desk, theme } = useWork()
  const project = useProject((p) => p)
  const [shown, setShown] = useState(false)
  const [solid, setSolid] = useState<SolidView>()
  const [trouble, setTrouble] = useState<string>()
  const sled = project.sleds[0]?.id
  useEffect(() => {
    if (!shown || sled === undefined) return
    let wanted = true
    void desk
      .ask('build', patience, (calls) => calls.build(project, sled))
      .then((reply) => {
        if (!wanted || reply.kind === 'overtaken') return
        if (reply.kind !== 'done') return setTrouble(reply.kind === 'stuck' ? 'It took too long.' : reply.message)
        if (!reply.value.ok) return setTrouble(reply.value.problems.map(problemText).join(' '))
        setTrouble(undefined)
        setSolid(reply.value.value)
      })
    return () => {
      wanted = false
    }
  }, [desk, project, sled, shown])
  return <SolidPanel solid={solid} trouble={trouble} shown={shown} onShow={() => setShown(true)} theme={theme} />
}
