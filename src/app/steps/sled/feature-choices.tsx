import type { FeatureList } from '../../../papers/sled-words.ts'
import { choicesOf } from '../../../project/choice-words.ts'
import { placeWords } from '../../../project/place-words.ts'
import type { Project } from '../../../project/schema/project.ts'
import type { ChoiceOption } from '../../fields/choice-field.tsx'
import { SmallChoice } from '../../fields/small-choice.tsx'
import { useProject, useSetValue } from '../../work/work-context.ts'

export interface FeatureChoicesProps {
  readonly base: string
  readonly list: FeatureList
  readonly record: Readonly<Record<string, unknown>>
}

/** What of a feature is chosen and not measured. */
export function FeatureChoices({ base, list, record }: FeatureChoicesProps) {
  const project = useProject((p) => p)
  const setValue = useSetValue()
  const choice = (field: string, label: string, options: readonly ChoiceOption[], usual: string) => (
    <SmallChoice
      key={field}
      id={`${base}/${field}`}
      label={label}
      value={typeof record[field] === 'string' ? record[field] : usual}
      options={options}
      onValue={(value) => setValue(`${base}/${field}`, value === '' ? undefined : value)}
    />
  )
  const none: ChoiceOption = { value: '', label: 'nothing: typed by hand' }
  const choices = {
    windows: () => [choice('for', 'Makes room for', [none, ...windowAims(project)], '')],
    keys: () => [choice('kind', 'Kind', choicesOf('keys/kind'), 'key')],
    splits: () => [choice('joint', 'Joint', choicesOf('splits/joint'), 'pins')],
    channels: () => [
      <label key="open" className="box-check">
        <input
          type="checkbox"
          checked={record['open'] === true}
          onChange={(event) => setValue(`${base}/open`, event.target.checked || undefined)}
        />{' '}
        open to the outside
      </label>,
    ],
    rings: () => [choice('face', 'Face at z', choicesOf('rings/face'), 'rear')],
    marks: () => [
      <label key="text" className="small-choice">
        <span>Text</span>
        <input
          id={`${base}/text`}
          className="field-input"
          maxLength={40}
          value={typeof record['text'] === 'string' ? record['text'] : ''}
          onChange={(event) => event.target.value !== '' && setValue(`${base}/text`, event.target.value)}
        />
      </label>,
    ],
    seats: () => [
      choice('against', 'Against', seatChoices(project), ''),
      choice('face', 'With its', choicesOf('seats/face'), 'blade'),
      choice('fit', 'Fit', [{ value: '', label: 'usual' }, ...choicesOf('seats/fit')], ''),
    ],
  } as const satisfies Partial<Record<FeatureList, () => readonly React.ReactNode[]>>
  const own = list in choices ? choices[list as keyof typeof choices]() : []
  return own.length === 0 ? undefined : <div className="box-choices">{own}</div>
}

/** What may stick into the bore: intrusions, screw tips, and parts fitted after the sled. */
function windowAims(project: Project): ChoiceOption[] {
  const ids = [
    ...project.features.filter((f) => f.kind === 'intrusion').map((f) => `features/${f.id}`),
    ...project.screws.map((s) => `screws/${s.id}`),
    ...project.parts.filter((p) => p.goesIn !== undefined && p.goesIn !== 'with-sled').map((p) => `parts/${p.id}`),
  ]
  return ids.map((value) => ({ value, label: placeWords(project, value) }))
}

/** Steps of the bore that a sled can be seated on. */
export function seatChoices(project: Project): ChoiceOption[] {
  const ids = project.sections.flatMap((s) => s.bore.map((b, i) => `sections/${s.id}/${b.id ?? i}`))
  return ids.map((value) => ({ value, label: placeWords(project, value) }))
}
