import { createStore } from 'zustand/vanilla'
import type { Cursor } from '../work/view-store.ts'

/** The place under the pointer; nothing but the thin lines and the line of values follows it. */
export interface Hover {
  readonly at: Cursor | undefined
}

export type HoverStore = ReturnType<typeof createHoverStore>

export const createHoverStore = () => createStore<Hover>()(() => ({ at: undefined }))
