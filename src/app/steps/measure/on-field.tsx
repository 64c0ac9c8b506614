import { placeWords } from '../../../project/place-words.ts'
import { useProject } from '../../work/work-context.ts'
import { PickField } from './name-field.tsx'

/** The section that something sits on. */
export function OnField({ path, label = 'On' }: { readonly path: string; readonly label?: string }) {
  const project = useProject((p) => p)
  return (
    <PickField
      path={path}
      label={label}
      options={project.sections.map((s) => ({
        value: `sections/${s.id}`,
        label: placeWords(project, `sections/${s.id}`),
      }))}
    />
  )
}
