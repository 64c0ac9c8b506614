import { useMemo } from 'react'
import { endHeight, heightSaid, type PlaceOf, sectionAt } from '../../../job/place-forms.ts'
import type { Place } from '../../../papers/places.ts'
import type { PartPreset } from '../../../presets/preset-choices.ts'
import { withValue } from '../../../project/path.ts'
import type { BodyInput, PartInput } from '../../../project/schema/part.ts'
import { useChoices } from '../../readings/use-choices.ts'
import { useProject, useWork } from '../../work/work-context.ts'

const nowhere: readonly Place[] = []

/** Where things lie, by the newest answer there was. */
export function usePlaces(): { readonly places: readonly Place[]; readonly placeOf: PlaceOf } {
  const places = useWork().judged.report?.places ?? nowhere
  return useMemo(() => ({ places, placeOf: (ref: string) => places.find((p) => p.ref === ref) }), [places])
}

/** A part in hand: what it is, where it lies, and how it is changed. */
export interface PartInHand {
  readonly part: PartInput
  readonly path: string
  readonly presets: readonly PartPreset[]
  readonly preset: PartPreset | undefined
  /** Its own, else its preset's; undefined while the presets are on their way. */
  readonly body: BodyInput | undefined
  readonly place: Place | undefined
  readonly placeOf: PlaceOf
  /** The section at its height; else the first. */
  readonly section: string | undefined
  readonly edit: (change: (part: PartInput) => PartInput) => void
}

export function usePart(id: string): PartInHand | undefined {
  const { job } = useWork()
  const part = useProject((p) => p.parts.find((q) => q.id === id))
  const first = useProject((p) => p.sections[0]?.id)
  const choices = useChoices()
  const { places, placeOf } = usePlaces()
  if (!part) return undefined
  const path = `parts/${id}`
  const presets = part.kind === 'other' ? [] : (choices?.parts[part.kind] ?? [])
  const preset = presets.find((p) => p.id === part.preset)
  const place = placeOf(path)
  // Until it was judged for the first time it lies where it was said to lie.
  const height = place ? endHeight(place, 'middle') : heightSaid(part.at?.z, placeOf)
  const here = height === undefined ? undefined : sectionAt(places, height)
  return {
    part,
    path,
    presets,
    preset,
    body: part.body ?? preset?.body,
    place,
    placeOf,
    section: here ?? (first === undefined ? undefined : `sections/${first}`),
    edit: (change) => {
      job.settle()
      job.edit((p) => {
        const now = p.parts.find((q) => q.id === id)
        return now && withValue(p, path, change(now))
      })
    },
  }
}
