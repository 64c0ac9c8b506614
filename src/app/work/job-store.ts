import { temporal } from 'zundo'
import { createStore } from 'zustand/vanilla'
import type { Project } from '../../project/schema/project.ts'

/** What can be undone and redone: of each step only the lists that it changed. */
export interface History {
  readonly past: readonly Partial<Project>[]
  readonly future: readonly Partial<Project>[]
}

export type Change = (project: Project) => Project | undefined

/** Steps that can be undone. */
const mostSteps = 200
/** Changes of one gesture that follow one another within this are one step, ms: a word typed, a part dragged. */
const oneGesture = 1500

/** The job on the table. What is on the screen follows from it; every change goes through `edit`. */
export type JobStore = ReturnType<typeof createJobStore>

export function createJobStore(project: Project, history?: History) {
  const store = createStore<Project>()(
    temporal(() => project, {
      limit: mostSteps,
      diff: changedLists,
      ...(history && { pastStates: [...history.past], futureStates: [...history.future] }),
    }),
  )
  let last: { readonly gesture: string; readonly at: number } | undefined
  const time = () => store.temporal.getState()
  return {
    get: store.getState,
    subscribe: store.subscribe,
    initial: store.getInitialState,
    /** What can be undone changes with it. */
    history: store.temporal,
    /**
     * Changes the job. Changes that share a gesture and follow at once are one step back. Gives false where the change
     * leads nowhere.
     */
    edit(change: Change, gesture?: string): boolean {
      const next = change(store.getState())
      if (!next) return false
      const now = Date.now()
      const same =
        last !== undefined && last.gesture === gesture && (isHeld(last.gesture) || now - last.at < oneGesture)
      last = gesture === undefined ? undefined : { gesture, at: now }
      if (same) time().pause()
      store.setState(next, true)
      if (same) time().resume()
      return true
    },
    /** The next change is a step of its own, whatever its gesture. */
    settle(): void {
      last = undefined
    },
    undo(): void {
      last = undefined
      time().undo()
    },
    redo(): void {
      last = undefined
      time().redo()
    },
    /** Another job, or this one as somebody else left it, with its own history: nothing of before can be undone into it. */
    replace(next: Project, history?: History): void {
      last = undefined
      time().pause()
      store.setState(next, true)
      time().resume()
      time().clear()
      if (history) store.temporal.setState({ pastStates: [...history.past], futureStates: [...history.future] })
    },
  }
}

/** Something held in the hand is one gesture until it is let go, however long it is held: its name begins so. */
export const held = 'held '
const isHeld = (gesture: string): boolean => gesture.startsWith(held)

/** Which lists of the earlier state the later one does not share; nothing changed is no step. */
function changedLists(past: Partial<Project>, now: Partial<Project>): Partial<Project> | null {
  const changed = Object.entries(past).filter(([key, value]) => now[key] !== value)
  return changed.length > 0 ? Object.fromEntries(changed) : null
}
