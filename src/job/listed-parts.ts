import type { Fix } from '../checks/finding.ts'
import { bounds } from '../presets/bounds.ts'
import type { Presets } from '../presets/registry.ts'
import type { Preset } from '../presets/schema/kinds.ts'
import { valueAt } from '../project/path.ts'
import type { Project } from '../project/schema/project.ts'

/**
 * A part from the list that is too wide: the same advice with each narrower round part of its kind in the list, the
 * widest first. None of them is tried here.
 */
export function listedParts(project: Project, presets: Presets, fix: Fix): Fix[] {
  if (fix.value !== undefined || !/^parts\/[^/]+\/preset$/.test(fix.path)) return []
  const now = valueAt(project, fix.path)
  const held = typeof now === 'string' ? presets.byId(now) : undefined
  const width = held && widest(held)
  if (!held || width === undefined) return []
  const narrower = (presets.ofKind(held.kind) as readonly Preset[]).flatMap((preset) => {
    const own = widest(preset)
    return own !== undefined && own < width ? [{ preset, own }] : []
  })
  return narrower
    .toSorted((a, b) => b.own - a.own)
    .map(({ preset }) => ({ ...fix, text: `${fix.text} From the list: ${preset.name}.`, value: preset.id }))
}

/** The most a round part is wide, mm; undefined for any other shape. */
function widest(preset: Preset): number | undefined {
  if (!('body' in preset) || preset.body.shape !== 'cylinder') return undefined
  return bounds(preset.body.diameter).max
}
