import { plausible } from '../../../entry/plausible.ts'
import type { SectionInput } from '../../../project/schema/hilt.ts'
import { PickField } from '../../fields/pick-field.tsx'
import { SizeField } from '../../readings/size-field.tsx'
import { useProject, useSetValue } from '../../work/work-context.ts'
import { PlaceField } from './place-field.tsx'
import { StatesField } from './states-field.tsx'

/** What few sections have: a place of their own, a bore beside the axis, a clamp. */
export function SectionMore({ section, first }: { readonly section: SectionInput; readonly first: boolean }) {
  const path = `sections/${section.id}`
  const set = useSetValue()
  const hilts = useProject((p) => p.hilts)
  return (
    <details className="more">
      <summary>Where it starts, bore beside the axis, clamp</summary>
      {hilts.length > 1 && (
        <PickField
          path={`${path}/hilt`}
          label="Hilt"
          none="the first"
          options={hilts.map((h) => ({ value: h.id, label: h.name ?? h.id }))}
        />
      )}
      <PlaceField
        path={`${path}/z`}
        label="Starts"
        none={first ? 'at z = 0' : 'after the one before, as the joint says'}
      />
      <div className="fields-3">
        <SizeField
          path={`${path}/eccentricity/offset`}
          label="Bore beside the axis by"
          optional
          measured={false}
          placeholder="centred"
          narrow
          onValue={(offset) =>
            offset === undefined ? set(`${path}/eccentricity`, undefined) : set(`${path}/eccentricity/offset`, offset)
          }
        />
        {section.eccentricity && (
          <SizeField
            path={`${path}/eccentricity/theta`}
            label="towards θ"
            kind="angle"
            optional
            placeholder="anywhere"
          />
        )}
      </div>
      <label className="tick">
        <input
          id={`${path}/clamp`}
          type="checkbox"
          checked={section.clamp !== undefined}
          onChange={(event) => set(`${path}/clamp`, event.target.checked ? { open: '', closed: '' } : undefined)}
        />
        <span>A slotted clamp: its bore closes</span>
      </label>
      {section.clamp && (
        <>
          <div className="fields-3">
            <SizeField path={`${path}/clamp/open`} label="Bore ⌀, open" usual={plausible.bore} narrow />
            <SizeField path={`${path}/clamp/closed`} label="Bore ⌀, closed" usual={plausible.bore} narrow />
          </div>
          <StatesField path={`${path}/clamp/openIn`} label="Open when" usual={['stripped']} />
        </>
      )}
    </details>
  )
}
