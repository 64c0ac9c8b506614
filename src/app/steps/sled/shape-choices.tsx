import { type OutsideChoice, outsideOf } from '../../../papers/sled-words.ts'
import { choices } from '../../../project/choice-words.ts'
import type { SledInput } from '../../../project/schema/sled.ts'
import { useSetValues } from '../../dimensions/use-set-values.ts'
import { useSetValue } from '../../work/work-context.ts'
import { ConstructionPictogram, OutsidePictogram } from './pictograms.tsx'
import { PictureChoice } from './picture-choice.tsx'

const { 'sleds/construction': built, 'sleds/outside': form } = choices

const constructions = [
  { value: 'full-cage', label: built['full-cage'], says: 'a solid body with a nest for each part' },
  { value: 'open-cradle', label: built['open-cradle'], says: 'a back with walls and arms, open on one side' },
  { value: 'discs-on-rods', label: built['discs-on-rods'], says: 'printed discs on bought rods' },
] as const

/** How the sled is built. */
export function ConstructionChoice({ sled }: { readonly sled: SledInput }) {
  const setValue = useSetValue()
  const path = `sleds/${sled.id}/construction`
  return (
    <PictureChoice
      path={path}
      legend="Construction"
      value={sled.construction ?? 'full-cage'}
      options={constructions.map((c) => ({ ...c, picture: <ConstructionPictogram kind={c.value} /> }))}
      onValue={(value) => setValue(path, value)}
    />
  )
}

const outsides = [
  { value: 'straight', label: form.straight, says: 'one width over the whole length' },
  { value: 'throat', label: form.throat, says: 'follows the way in, as wide as each stretch allows' },
  { value: 'slim', label: form.slim, says: 'two rings fill the bore, less plastic between' },
] as const
const pieces = {
  value: 'pieces',
  label: 'typed pieces',
  says: 'each with its own diameter, as the file has them',
} as const

/** What the outside does. Pieces typed in a file are shown, and kept until another way is chosen. */
export function OutsideForm({ sled }: { readonly sled: SledInput }) {
  const setValues = useSetValues()
  const path = `sleds/${sled.id}/outside`
  const value = outsideOf(sled)
  const options = value === 'pieces' ? [...outsides, pieces] : outsides
  return (
    <PictureChoice<OutsideChoice>
      path={path}
      legend="Body outside"
      value={value}
      options={options.map((o) => ({ ...o, picture: <OutsidePictogram kind={o.value} /> }))}
      onValue={(next) => {
        if (next === 'pieces') return
        setValues({ [path]: next, ...(sled.bodies && { [`sleds/${sled.id}/bodies`]: undefined }) })
      }}
    />
  )
}
