import { isRelative } from '../../../project/forms.ts'
import { valueAt } from '../../../project/path.ts'
import { placeWords } from '../../../project/place-words.ts'
import type { ZPlaceInput } from '../../../project/schema/place.ts'
import type { Project } from '../../../project/schema/project.ts'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { PickField } from '../../fields/pick-field.tsx'
import { SizeField } from '../../readings/size-field.tsx'
import { useProject, useSetValue } from '../../work/work-context.ts'

const ends = [
  { value: 'rear', label: 'rear end' },
  { value: 'middle', label: 'middle' },
  { value: 'blade', label: 'blade end' },
]

/** A height along the hilt: from the datum, or from an end of something that is there. */
export function PlaceField({
  path,
  label,
  none,
}: {
  readonly path: string
  readonly label: string
  readonly none?: string
}) {
  const place = useProject((p) => valueAt(p, path)) as ZPlaceInput | undefined
  const project = useProject((p) => p)
  const set = useSetValue()
  const relative = place !== undefined && isRelative(place)
  const from = relative ? place.of : place === undefined && none !== undefined ? 'none' : 'datum'
  const known = anchors(project, path.split('/').slice(0, 2).join('/'))
  const choose = (value: string) => {
    const kept = relative ? place.by : (place as string | number | undefined)
    const by = typeof kept === 'object' ? '' : (kept ?? '')
    set(
      path,
      value === 'none'
        ? undefined
        : value === 'datum'
          ? by
          : { of: value, end: relative ? (place.end ?? 'blade') : 'rear', by },
    )
  }
  return (
    <div className="place-field">
      <ChoiceField
        id={`${path}/of`}
        label={`${label}: measured from`}
        value={from}
        onValue={choose}
        options={[
          ...(none === undefined ? [] : [{ value: 'none', label: none }]),
          { value: 'datum', label: 'z = 0, the rear of the hilt' },
          ...known.map((ref) => ({ value: ref, label: placeWords(project, ref) })),
          ...(relative && !known.includes(place.of) ? [{ value: place.of, label: place.of }] : []),
        ]}
      />
      {relative && <PickField path={`${path}/end`} label="From which end" options={ends} />}
      {relative ? (
        <SizeField path={`${path}/by`} label="How far along z" measured={false} placeholder="mm or in" />
      ) : (
        from === 'datum' && <SizeField path={path} label="z" measured={false} placeholder="mm or in" />
      )}
    </div>
  )
}

/** What heights may be measured from: sections, the steps of their bores, features; never the thing itself. */
function anchors(project: Project, self: string): string[] {
  const sections = project.sections.flatMap((s) => [
    `sections/${s.id}`,
    ...(s.bore.length > 1 ? s.bore.map((b, i) => `sections/${s.id}/${b.id ?? i}`) : []),
  ])
  return [...sections, ...project.features.map((f) => `features/${f.id}`)].filter(
    (ref) => ref !== self && !ref.startsWith(`${self}/`),
  )
}
