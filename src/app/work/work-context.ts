import { createContext, useContext } from 'react'
import { useStore } from 'zustand'
import { withValue } from '../../project/path.ts'
import type { Project } from '../../project/schema/project.ts'
import type { Desk } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import type { Theme } from '../theme/theme.ts'
import type { JobStore } from './job-store.ts'
import type { Judged } from './use-judged.ts'
import type { View, ViewStore } from './view-store.ts'

/** What every panel of the work page shares. */
export interface Work {
  readonly job: JobStore
  readonly view: ViewStore
  readonly desk: Desk<WorkCalls>
  /** With a way to ask for it again. */
  readonly judged: Judged & { readonly retry: () => void }
  readonly theme: Theme
}

export const WorkContext = createContext<Work | undefined>(undefined)

export function useWork(): Work {
  const work = useContext(WorkContext)
  if (!work) throw new Error('only inside the work page')
  return work
}

/** A piece of the job; drawn anew when it is another one. */
export function useProject<T>(select: (project: Project) => T): T {
  const { job } = useWork()
  return useStore({ getState: job.get, subscribe: job.subscribe, getInitialState: job.initial }, select)
}

export function useView<T>(select: (view: View) => T): T {
  return useStore(useWork().view, select)
}

/** Sets the value at a path of the project; typing on at one path is one step back. */
export function useSetValue(): (path: string, value: unknown) => void {
  const { job } = useWork()
  return (path, value) => void job.edit((p) => withValue(p, path, value), path)
}
