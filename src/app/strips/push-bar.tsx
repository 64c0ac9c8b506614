import { useEffect, useRef } from 'react'
import { placeWords } from '../../project/place-words.ts'
import { PushPanel } from '../push/push-panel.tsx'
import { useWays } from '../work/use-ways.ts'
import { useProject, useView, useWork } from '../work/work-context.ts'

/** The way in, step by step, at the foot of the strips that follow it. What it costs is asked for only while it is open. */
export function PushBar({ id }: { readonly id: string }) {
  const { view } = useWork()
  const project = useProject((p) => p)
  const push = useView((v) => v.push)
  const { value, trouble } = useWays(true, 'push-ways')
  const here = useRef<HTMLElement>(null)
  const known = value !== undefined
  // On a small screen it would open below the edge.
  useEffect(() => {
    if (known) here.current?.scrollIntoView({ block: 'nearest' })
  }, [known])
  useEffect(() => () => view.setState({ push: undefined }), [view])
  return (
    <section id={id} className="push" aria-label="Push it in" ref={here}>
      {trouble !== undefined && <p className="small">{trouble}</p>}
      {value ? (
        <PushPanel
          ways={value}
          at={push}
          onPush={(to) => view.setState({ push: to })}
          onPlace={({ at }) => view.setState({ cursor: { z: at.z, theta: at.theta } })}
          nameOf={(reference) => placeWords(project, reference)}
        />
      ) : (
        trouble === undefined && <p className="small soft">Looking along the way in …</p>
      )}
    </section>
  )
}
