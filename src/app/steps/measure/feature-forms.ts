import { choices } from '../../../project/choice-words.ts'
import type { FeatureInput } from '../../../project/schema/hilt.ts'
import type { QuantityInput } from '../../../project/schema/quantity.ts'

export type Shape = FeatureInput['shape']
export type Form = Shape['form']

/** One dimension of a form. */
export interface FormField {
  readonly name: string
  readonly label: string
  readonly optional?: true
  readonly angle?: true
  readonly placeholder?: string
}

const reach: FormField = { name: 'reach', label: 'Sticks in by', optional: true, placeholder: 'from the bore wall' }
const tip: FormField = { name: 'tip', label: 'Or: its end, from the axis', optional: true, placeholder: 'instead' }
const depth: FormField = { name: 'depth', label: 'Depth', optional: true, placeholder: 'through' }

/** What each form is measured by. */
export const formFields: Readonly<Record<Form, readonly FormField[]>> = {
  pin: [
    { name: 'diameter', label: 'Diameter' },
    reach,
    tip,
    { name: 'round', label: 'Rounding of its end', optional: true, placeholder: 'flat' },
  ],
  block: [{ name: 'length', label: 'Length along z' }, { name: 'width', label: 'Width' }, reach, tip],
  'ring-sector': [
    { name: 'length', label: 'Length along z' },
    { name: 'half', label: 'Half angle', angle: true, placeholder: '180 all around' },
    reach,
    tip,
  ],
  round: [{ name: 'diameter', label: 'Diameter' }, depth],
  slot: [{ name: 'length', label: 'Length along z' }, { name: 'width', label: 'Width' }, depth],
}

const words: Readonly<Record<Form, string>> = choices['features/form']

/** The forms that a kind of feature can have: what sticks in, and what is cut out. */
export function shapesFor(kind: FeatureInput['kind']): readonly { readonly value: Form; readonly label: string }[] {
  const forms: readonly Form[] =
    kind === 'intrusion' ? ['pin', 'block', 'ring-sector'] : kind === 'hole' ? ['round', 'slot'] : ['slot', 'round']
  return forms.map((value) => ({ value, label: words[value] }))
}

/** The shape in another form: dimensions that both have stay, those it must have start empty. */
export function inShape(shape: Shape, form: Form): Shape {
  const old = shape as Readonly<Record<string, QuantityInput | undefined>>
  const sizes = formFields[form].flatMap(({ name, optional }) => {
    const kept = old[name]
    return kept !== undefined ? [[name, kept] as const] : optional ? [] : [[name, ''] as const]
  })
  return { form, ...Object.fromEntries(sizes) } as Shape
}
