import { useState } from 'react'
import { PushPanel } from '../push/push-panel.tsx'
import { PushPicture } from '../push/push-picture.tsx'
import { useWays } from './use-ways.ts'
import { useView, useWork } from './work-context.ts'

/** The way in, step by step. What it costs is asked for only while it is open. */
export function PushCorner({ nameOf }: { readonly nameOf: (reference: string) => string }) {
  const { view, judged } = useWork()
  const push = useView((v) => v.push)
  const [open, setOpen] = useState(false)
  const { value, trouble } = useWays(open, 'push-ways')
  const way = value?.find((w) => w.id === push?.insertion) ?? value?.[0]
  const lengthwise = judged.views?.lengthwise
  return (
    <details
      className="solid-words"
      onToggle={(event) => {
        setOpen(event.currentTarget.open)
        if (!event.currentTarget.open) view.setState({ push: undefined })
      }}
    >
      <summary>Push it in</summary>
      <div className="push">
        {trouble !== undefined && <p className="small">{trouble}</p>}
        {way && lengthwise && <PushPicture view={lengthwise} way={way} depth={push?.depth} />}
        {value ? (
          <PushPanel
            ways={value}
            at={push}
            onPush={(to) => view.setState({ push: to })}
            onPlace={({ at }) => view.setState({ cursor: { z: at.z, theta: at.theta } })}
            nameOf={nameOf}
          />
        ) : (
          trouble === undefined && <p className="small soft">Looking along the way in …</p>
        )}
      </div>
    </details>
  )
}
