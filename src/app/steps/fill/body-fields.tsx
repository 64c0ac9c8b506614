import { plausibleSize } from '../../../entry/plausible.ts'
import { type ShapeForm, shapeForm, shapeForms, shortSize, withShape } from '../../../job/part-forms.ts'
import type { BodyInput } from '../../../project/schema/part.ts'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { SizeField } from '../../readings/size-field.tsx'
import { BoardFields } from './board-fields.tsx'
import { shapeWords } from './kind-words.ts'
import type { PartInHand } from './use-part.ts'

/** Its own shape and sizes, as measured on the part itself. */
export function BodyFields({ hand, body }: { readonly hand: PartInHand; readonly body: BodyInput }) {
  const { part, path, section, placeOf, edit } = hand
  const form = shapeForm(body)
  return (
    <>
      <div className="fill-fields">
        {(part.kind !== 'cell' || form !== 'cylinder') && (
          <div className="fill-whole">
            <ChoiceField
              id={`${path}/body/shape`}
              label="Shape"
              value={form}
              onValue={(to) => edit((p) => withShape(p, to as ShapeForm, { section, placeOf }))}
              options={shapeForms
                .filter((f) => f !== 'outline' || part.kind === 'board' || form === 'outline')
                .map((f) => ({ value: f, label: shapeWords[f] }))}
            />
          </div>
        )}
        {sizesOf(body).map(([field, label, kind]) => {
          const usual = plausibleSize(part.kind, field)
          return (
            <SizeField
              key={field}
              path={`${path}/body/${field}`}
              label={label}
              kind={kind}
              {...(usual && { usual })}
              placeholder={kind === 'angle' ? '°' : 'mm or in'}
            />
          )
        })}
      </div>
      {body.shape === 'outline' && (
        <p className="small">
          Over all <b className="number">{shortSize(body)} mm</b>, width × height × length. Choose "block" above to
          measure these three alone.
        </p>
      )}
      {body.shape === 'outline' && <BoardFields hand={hand} body={body} />}
    </>
  )
}

type SizeOf = readonly [field: string, label: string, kind: 'length' | 'angle']

function sizesOf(body: BodyInput): readonly SizeOf[] {
  switch (body.shape) {
    case 'cylinder':
      return [
        ['diameter', 'Diameter', 'length'],
        ['length', body.axis === 'radial' ? 'Depth behind the wall' : 'Length', 'length'],
      ]
    case 'box':
      return [
        ['width', 'Width, across', 'length'],
        ['height', 'Height, outwards', 'length'],
        ['length', 'Length, along', 'length'],
      ]
    case 'ring-sector':
      return [
        ['inner', 'Inner radius', 'length'],
        ['outer', 'Outer radius', 'length'],
        ['half', 'Half angle, °', 'angle'],
        ['length', 'Length', 'length'],
      ]
    case 'outline':
      return [['thickness', 'Thickness', 'length']]
  }
}
