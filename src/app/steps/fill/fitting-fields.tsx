import { throughWall } from '../../../job/place-forms.ts'
import { choicesOf } from '../../../project/choice-words.ts'
import { placeWords } from '../../../project/place-words.ts'
import { PickField } from '../../fields/pick-field.tsx'
import { TickField } from '../../fields/tick-field.tsx'
import { SizeField } from '../../readings/size-field.tsx'
import { useProject, useSetValue, useWork } from '../../work/work-context.ts'
import type { PartInHand } from './use-part.ts'

const fits = choicesOf('parts/held')

/** What it sits on, when it goes in, and what it needs behind it. */
export function FittingFields({ hand }: { readonly hand: PartInHand }) {
  const { part, path, body, preset, edit } = hand
  const project = useProject((p) => p)
  const name = (ref: string) => placeWords(project, ref)
  const inWall = part.on?.startsWith('sections/') ?? false
  const radial = throughWall(body)
  const sit = (on: string) =>
    edit((p) => {
      const { on: _on, goesIn: _goesIn, through: _through, ...rest } = p
      return on === '' ? rest : { ...rest, on, ...(on.startsWith('sections/') ? { goesIn: 'after' } : {}) }
    })
  const holes = project.features.filter((f) => f.kind !== 'intrusion')
  const sled = project.sleds[0]
  return (
    <fieldset>
      <legend>Fitting</legend>
      <div className="fill-fields">
        <PickField
          path={`${path}/on`}
          label="Sits on"
          none={sled ? `the ${name(`sleds/${sled.id}`)}` : 'nothing'}
          onValue={sit}
          options={[
            ...project.sleds.slice(1).map((s) => ({ value: `sleds/${s.id}`, label: name(`sleds/${s.id}`) })),
            ...project.sections.map((s) => ({
              value: `sections/${s.id}`,
              label: `the hilt: ${name(`sections/${s.id}`)}`,
            })),
          ]}
        />
        {(inWall || part.goesIn !== undefined) && (
          <PickField
            path={`${path}/goesIn`}
            label="Goes in"
            none={inWall ? 'before the sled (usual)' : 'with the sled (usual)'}
            options={choicesOf('parts/goesIn').filter((o) => (inWall ? o.value !== 'with-sled' : true))}
          />
        )}
        {inWall && holes.length > 0 && (
          <PickField
            path={`${path}/through`}
            label="Through"
            none="the bore"
            options={holes.map((f) => ({ value: `features/${f.id}`, label: name(`features/${f.id}`) }))}
          />
        )}
        {!radial && part.kind !== 'contact' && (
          <PickField path={`${path}/held`} label="Held by" none="slide fit (usual)" options={fits} />
        )}
        {radial && (
          <>
            <SizeField
              path={`${path}/tags`}
              label="Tags behind it, mm"
              optional
              placeholder={preset?.tags ? 'as the preset' : 'none'}
            />
            <SizeField
              path={`${path}/wireBend`}
              label="Bend of the wire, mm"
              optional
              measured={false}
              placeholder={preset?.wireBend ? 'as the preset' : 'none'}
            />
          </>
        )}
      </div>
      {part.kind !== 'contact' && (
        <TickField
          path={`${path}/swapped`}
          also={preset?.swapped === true && !part.body}
          label="Will be swapped for another of its kind, so its size varies"
        />
      )}
      <PartStates hand={hand} />
    </fieldset>
  )
}

/** In which states it is there, for what comes and goes; all of them where nothing was said. */
function PartStates({ hand: { part, path } }: { readonly hand: PartInHand }) {
  const { judged } = useWork()
  const set = useSetValue()
  const states = judged.report?.states ?? []
  if (states.length === 0) return undefined
  const there = part.states ?? states.map((s) => s.id)
  const tick = (id: string, on: boolean) => {
    const next = states.map((s) => s.id).filter((s) => (s === id ? on : there.includes(s)))
    set(`${path}/states`, next.length === states.length ? undefined : next)
  }
  return (
    <details className="fill-more">
      <summary className="small">
        There in {part.states ? `${there.length} of ${states.length} states` : 'every state'}
      </summary>
      <div className="fill-ticks" id={`${path}/states`}>
        {states.map((s) => (
          <label key={s.id} className="tick">
            <input
              type="checkbox"
              checked={there.includes(s.id)}
              onChange={(event) => tick(s.id, event.target.checked)}
            />
            <span>{s.name}</span>
          </label>
        ))}
      </div>
    </details>
  )
}
