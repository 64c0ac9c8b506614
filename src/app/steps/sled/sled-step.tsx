import './sled.css'
import { useState } from 'react'
import type { SledDimension } from '../../../papers/sled-dimension.ts'
import type { Project } from '../../../project/schema/project.ts'
import type { Far } from '../../../worker/desk.ts'
import type { WorkCalls } from '../../../worker/work-calls.ts'
import { useAsked } from '../../dimensions/use-asked.ts'
import { useProject, useView } from '../../work/work-context.ts'
import { Features } from './feature-list.tsx'
import { Limits } from './limits.tsx'
import { NestList } from './nest-list.tsx'
import { PlaceRow } from './place-row.tsx'
import { ConstructionChoice, OutsideForm } from './shape-choices.tsx'
import { SledChooser } from './sled-chooser.tsx'
import { Dimensions } from './sled-numbers.tsx'
import { StandardMarks } from './standard-marks.tsx'
import { Turning } from './turning.tsx'

const askDimensions = (calls: Far<WorkCalls>, project: Project) => calls.dimensions(project)
const askSettings = (calls: Far<WorkCalls>, project: Project) => calls.settings(project)

/** The sled: how it is built, where it ends, its nests and what else is on it, every dimension typed or told. */
export default function SledStep() {
  const project = useProject((p) => p)
  const lit = useView((v) => v.lit)
  const dimensions = useAsked('sled-dimensions', askDimensions)
  const settings = useAsked('settings', askSettings)
  const [chosen, setChosen] = useState<{ readonly id: string; readonly lit: string | undefined }>()
  // Whoever is led to a field of another sled sees that sled.
  const led = /^sleds\/([^/]+)/.exec(lit ?? '')?.[1]
  const wanted = chosen && chosen.lit === lit ? chosen.id : (led ?? chosen?.id)
  const sled = project.sleds.find((s) => s.id === wanted) ?? project.sleds[0]
  const own = (dimensions ?? []).filter((d) => d.sled === sled?.id)
  return (
    <>
      <SledChooser sled={sled} onChoose={(id) => setChosen({ id, lit })} />
      {sled && (
        <div className="sled-fields" key={sled.id}>
          <ConstructionChoice sled={sled} />
          <OutsideForm sled={sled} />
          <h3>Ends and body</h3>
          <Ends sled={sled.id} list={own} />
          <Dimensions list={own.filter(isBody)} />
          <h3>Nests</h3>
          <NestList sled={sled} list={own} />
          <h3>On the sled</h3>
          <Features sled={sled} list={own} />
          <StandardMarks sled={sled} />
          <h3>Way in and limits</h3>
          <Turning sled={sled} />
          {settings && <Limits settings={settings.settings} />}
        </div>
      )}
    </>
  )
}

/** The sled's own numbers but for its ends: two names after its id at most. */
const isBody = (d: SledDimension): boolean => {
  const [, , list = '', more] = d.path.split('/')
  return (more === undefined || list === 'bodies') && list !== 'from' && list !== 'to'
}

function Ends({ sled, list }: { readonly sled: string; readonly list: readonly SledDimension[] }) {
  return (
    <div className="dim-rows">
      {(['from', 'to'] as const).map((field) => (
        <PlaceRow
          key={field}
          path={`sleds/${sled}/${field}`}
          name={field === 'from' ? 'rear end' : 'blade end'}
          unit="mm"
          known={list.find((d) => d.path === `sleds/${sled}/${field}`)}
        />
      ))}
    </div>
  )
}
