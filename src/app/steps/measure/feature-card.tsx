import { choicesOf } from '../../../project/choice-words.ts'
import { withValue } from '../../../project/path.ts'
import { placeWords } from '../../../project/place-words.ts'
import type { FeatureInput } from '../../../project/schema/hilt.ts'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { PickField } from '../../fields/pick-field.tsx'
import { TickField } from '../../fields/tick-field.tsx'
import { WordsField } from '../../fields/words-field.tsx'
import { SizeField } from '../../readings/size-field.tsx'
import { useProject, useWork } from '../../work/work-context.ts'
import { inShape, shapesFor } from './feature-forms.ts'
import { FeatureShape } from './feature-shape.tsx'
import { IntrusionSketch } from './intrusion-sketch.tsx'
import { OnField } from './on-field.tsx'
import { PlaceField } from './place-field.tsx'
import { RecordCard } from './record-card.tsx'
import { StatesField } from './states-field.tsx'

const kinds = choicesOf('features/kind')

const fitted = choicesOf('features/fitted')

/** Something in or through the wall: where it is, its form, and when it is there. */
export function FeatureCard({ feature }: { readonly feature: FeatureInput }) {
  const { job } = useWork()
  const path = `features/${feature.id}`
  const name = useProject((p) => placeWords(p, path))
  const on = useProject((p) => placeWords(p, feature.on))
  const kind = kinds.find((k) => k.value === feature.kind)?.label ?? feature.kind
  const forms = shapesFor(feature.kind)
  return (
    <RecordCard
      path={path}
      group="features"
      name={name}
      line={
        <span className="plain-line">
          <b>{name}</b>
          <span>
            {kind}
            {feature.kind === 'intrusion' && feature.shape.form !== name && `, ${feature.shape.form}`}, on the {on}
          </span>
        </span>
      }
    >
      <div className="fields-3">
        <WordsField path={`${path}/name`} label="Name" placeholder={feature.id} />
        <ChoiceField
          id={`${path}/kind`}
          label="Kind"
          value={feature.kind}
          options={kinds}
          onValue={(next) => {
            const other = { ...feature, kind: next as FeatureInput['kind'] }
            const [first] = shapesFor(other.kind)
            const fits = shapesFor(other.kind).some((f) => f.value === feature.shape.form)
            void job.edit((p) =>
              withValue(p, path, fits || !first ? other : { ...other, shape: inShape(feature.shape, first.value) }),
            )
          }}
        />
        <OnField path={`${path}/on`} place={`${path}/at/z`} />
      </div>
      <PlaceField path={`${path}/at/z`} label="Place" />
      <div className="fields-3">
        <PickField
          path={`${path}/at/face`}
          label="What of it lies there"
          none="its middle"
          options={choicesOf('features/face').filter((o) => o.value !== 'middle')}
        />
        <SizeField path={`${path}/at/theta`} label="Clock angle θ" kind="angle" optional placeholder="0" />
        <ChoiceField
          id={`${path}/shape/form`}
          label="Form"
          value={feature.shape.form}
          options={forms}
          onValue={(form) =>
            void job.edit((p) =>
              withValue(p, `${path}/shape`, inShape(feature.shape, form as FeatureInput['shape']['form'])),
            )
          }
        />
      </div>
      {feature.kind === 'intrusion' && <IntrusionSketch path={`${path}/shape`} form={feature.shape.form} />}
      <FeatureShape path={`${path}/shape`} form={feature.shape.form} />
      {feature.kind === 'intrusion' && (
        <div className="fields-3">
          <PickField path={`${path}/fitted`} label="Fitted" none="before the sled" options={fitted.slice(1)} />
        </div>
      )}
      <details className="more">
        <summary>When it is there, edges</summary>
        <StatesField path={`${path}/states`} label="There when" />
        <TickField path={`${path}/sharp`} label="Its edge is sharp" />
      </details>
    </RecordCard>
  )
}
