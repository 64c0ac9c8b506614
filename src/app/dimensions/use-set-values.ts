import { withValue } from '../../project/path.ts'
import type { Project } from '../../project/schema/project.ts'
import { useWork } from '../work/work-context.ts'

/** Sets several values of the project in one step. */
export function useSetValues(): (values: Readonly<Record<string, unknown>>) => void {
  const { job } = useWork()
  return (values) => {
    job.settle()
    job.edit((project) =>
      Object.entries(values).reduce<Project | undefined>((p, [path, value]) => p && withValue(p, path, value), project),
    )
  }
}
