import { choicesOf } from '../../../project/choice-words.ts'
import { placeWords } from '../../../project/place-words.ts'
import type { ScrewInput } from '../../../project/schema/hilt.ts'
import { PickField } from '../../fields/pick-field.tsx'
import { WordsField } from '../../fields/words-field.tsx'
import { SizeField } from '../../readings/size-field.tsx'
import { useProject } from '../../work/work-context.ts'
import { OnField } from './on-field.tsx'
import { PlaceField } from './place-field.tsx'
import { RecordCard } from './record-card.tsx'
import { StatesField } from './states-field.tsx'
import { ThreadField } from './thread-field.tsx'

/** A screw through the wall: once it is in, its tip stands in the bore. */
export function ScrewCard({ screw }: { readonly screw: ScrewInput }) {
  const path = `screws/${screw.id}`
  const name = useProject((p) => placeWords(p, path))
  const on = useProject((p) => placeWords(p, screw.on))
  return (
    <RecordCard
      path={path}
      group="screws"
      name={name}
      line={
        <span className="plain-line">
          <b>{name}</b>
          <span>
            {screw.thread} in {on}
          </span>
        </span>
      }
    >
      <div className="fields-3">
        <WordsField path={`${path}/name`} label="Name" placeholder={screw.id} />
        <ThreadField path={`${path}/thread`} required />
        <OnField path={`${path}/on`} place={`${path}/at/z`} label="In" />
      </div>
      <PlaceField path={`${path}/at/z`} label="Place" />
      <div className="fields-3">
        <SizeField path={`${path}/at/theta`} label="Clock angle θ" kind="angle" optional placeholder="0" />
        <SizeField
          path={`${path}/tip`}
          label="Tip, from the axis"
          optional
          measured={false}
          placeholder="radius"
          narrow
        />
        <PickField
          path={`${path}/fitted`}
          label="Fitted"
          none="after the sled"
          options={choicesOf('screws/fitted').slice(0, 1)}
        />
      </div>
      <details className="more">
        <summary>When it is there</summary>
        <StatesField path={`${path}/states`} label="There when" />
      </details>
    </RecordCard>
  )
}
