import type { Kind, Preset, PresetOf } from './schema/kinds.ts'

/** The presets, frozen. A part of a project names an entry by its id; its sizes stay the entry's. */
export interface Presets {
  readonly kinds: readonly Kind[]
  /** Undefined for an id nobody has: the caller answers with `unknown-preset`. */
  byId(id: string): Preset | undefined
  /** In the files' own order. */
  ofKind<K extends Kind>(kind: K): readonly PresetOf<K>[]
}

/** The entries of some files as a registry. */
export function presetsOf(files: readonly { readonly entries: readonly unknown[] }[]): Presets {
  const ids = new Map<string, Preset>()
  const kinds = new Map<Kind, Preset[]>()
  for (const file of files) {
    for (const entry of file.entries as readonly Preset[]) {
      freeze(entry)
      ids.set(entry.id, entry)
      const list = kinds.get(entry.kind)
      if (list) list.push(entry)
      else kinds.set(entry.kind, [entry])
    }
  }
  for (const list of kinds.values()) Object.freeze(list)
  return Object.freeze({
    kinds: Object.freeze([...kinds.keys()]),
    byId: (id: string) => ids.get(id),
    ofKind: <K extends Kind>(kind: K) => (kinds.get(kind) ?? []) as unknown as readonly PresetOf<K>[],
  })
}

function freeze(value: unknown): void {
  if (value === null || typeof value !== 'object') return
  for (const inner of Object.values(value)) freeze(inner)
  Object.freeze(value)
}
