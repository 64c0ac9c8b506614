import { SizeField } from '../../readings/size-field.tsx'
import { type Form, formFields } from './feature-forms.ts'

/** The dimensions of a feature's form. */
export function FeatureShape({ path, form }: { readonly path: string; readonly form: Form }) {
  return (
    <div className="fields-3">
      {formFields[form].map(({ name, label, optional, angle, placeholder }) => (
        <SizeField
          key={name}
          path={`${path}/${name}`}
          label={label}
          kind={angle ? 'angle' : 'length'}
          optional={optional === true}
          placeholder={placeholder ?? 'mm or in'}
          measured={!angle && name !== 'tip' && name !== 'round'}
          narrow
        />
      ))}
    </div>
  )
}
