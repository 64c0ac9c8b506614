import './solid.css'
import { lazy, Suspense, useState } from 'react'
import type { SolidView } from '../../worker/press.ts'
import { fixed } from '../sheet/numbers.ts'
import { Survives } from './survives.tsx'
import { hasWebGl } from './webgl.ts'

/** Three and fiber come with this file, and only when a solid is first shown. */
const SolidScene = lazy(() => import('./solid-scene.tsx'))

export interface SolidPanelProps {
  readonly solid: SolidView | undefined
  /** Why there is none, in words. */
  readonly trouble: string | undefined
  readonly shown: boolean
  readonly onShow: () => void
  readonly theme: string
}

/** The sled as a solid. Everything it says can be had without it: the drawings, the findings and the file do not wait. */
export function SolidPanel({ solid, trouble, shown, onShow, theme }: SolidPanelProps) {
  const [able, setAble] = useState(true)
  const show = () => {
    setAble(hasWebGl())
    onShow()
  }
  return (
    <section className="solid" aria-labelledby="solid-title">
      <div className="panel-head">
        <h2 id="solid-title">Solid</h2>
        {solid && (
          <p className="small soft number">
            {solid.size.map((s) => fixed(s, 1)).join(' × ')} mm, {fixed(solid.volume / 1000, 1)} cm³
          </p>
        )}
      </div>
      {!shown && (
        <div className="solid-closed">
          <p className="small soft">The sled in the round, with what lies in it.</p>
          <button type="button" className="button" onClick={show}>
            Show the solid
          </button>
        </div>
      )}
      {shown && !able && <Unable />}
      {shown && trouble !== undefined && <p className="small">{trouble}</p>}
      {shown && able && trouble === undefined && (
        <Survives instead={<Unable />}>
          <Suspense fallback={<p className="small soft">Fetching the solid view …</p>}>
            {solid ? <SolidScene solid={solid} theme={theme} /> : <p className="small soft">Building the sled …</p>}
          </Suspense>
        </Survives>
      )}
    </section>
  )
}

/** Said where there is no WebGL. */
export const Unable = () => (
  <p className="small">This browser cannot draw solids. The drawings, the findings and the STL are complete without.</p>
)
