import { createStore } from 'zustand/vanilla'

/** The steps of a job that there are, in their usual order; any may be entered first. */
export const steps = ['measure', 'fill', 'sled', 'print'] as const
export type StepName = (typeof steps)[number]

/** A place in the bore that the pointer or the keys are at. */
export interface Cursor {
  readonly z: number
  readonly theta: number
}

/** Where the person looks: nothing of it changes the job. */
export interface View {
  readonly step: StepName
  /** Clock angle of the lengthwise section, degrees. */
  readonly theta: number
  /** Height of the cross-section and of the one cursor in all strips; the tightest place where undefined. */
  readonly cursor: Cursor | undefined
  /** The stretch of the ruler that is shown; all of it where undefined. */
  readonly range: { readonly z0: number; readonly z1: number } | undefined
  /** Id of the state looked at; the first where undefined. */
  readonly state: string | undefined
  /** Id of the finding that is open and lit; null where the person closed all. */
  readonly finding: string | null | undefined
  /** Path of the field or part whose place is lit. */
  readonly lit: string | undefined
  /** Whether dimension chains are drawn. */
  readonly dimensions: boolean
  /** The way of the insertion slider (`InsertionWay.id`) and the depth the unit is at, mm; all in place where undefined. */
  readonly push: { readonly insertion: string; readonly depth: number } | undefined
}

export type ViewStore = ReturnType<typeof createViewStore>

export function createViewStore(step: StepName) {
  return createStore<View>()(() => ({
    step,
    theta: 0,
    cursor: undefined,
    range: undefined,
    state: undefined,
    finding: undefined,
    lit: undefined,
    // Where the window is low, the strips keep the room for what is below them.
    dimensions: (globalThis.innerHeight ?? 1000) >= 900,
    push: undefined,
  }))
}
