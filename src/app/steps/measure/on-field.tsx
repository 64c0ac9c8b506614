import { isRelative } from '../../../project/forms.ts'
import { valueAt, withValue } from '../../../project/path.ts'
import { placeWords } from '../../../project/place-words.ts'
import type { ZPlaceInput } from '../../../project/schema/place.ts'
import { PickField } from '../../fields/pick-field.tsx'
import { useProject, useWork } from '../../work/work-context.ts'

interface OnFieldProps {
  readonly path: string
  /** The height of the same thing: measured from its section, it goes along to another. */
  readonly place: string
  readonly label?: string
}

/** The section that something sits on. */
export function OnField({ path, place, label = 'On' }: OnFieldProps) {
  const { job } = useWork()
  const project = useProject((p) => p)
  const choose = (next: string) => {
    const [old, z] = [valueAt(project, path), valueAt(project, place) as ZPlaceInput | undefined]
    const along = z !== undefined && isRelative(z) && z.of === old
    job.edit((p) => {
      const moved = withValue(p, path, next)
      return moved && along ? withValue(moved, `${place}/of`, next) : moved
    })
  }
  return (
    <PickField
      path={path}
      label={label}
      onValue={choose}
      options={project.sections.map((s) => ({
        value: `sections/${s.id}`,
        label: placeWords(project, `sections/${s.id}`),
      }))}
    />
  )
}
