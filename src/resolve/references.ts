import type { Project } from '../project/schema/project.ts'
import { type Context, wrong } from './context.ts'
import { stateIds } from './states.ts'

/**
 * Every reference that only narrows something: a state, a hilt, a nest's part. One that leads nowhere would take what
 * it stands on out of the verdict without a word, so it is refused like any other.
 */
export function checkReferences(ctx: Context): void {
  const p = ctx.project
  const known = knownIds(p)
  const ask = (path: string, got: string | undefined, list: keyof typeof known): void => {
    if (got === undefined || known[list].includes(got)) return
    const allowed = known[list].slice(0, 8).join(', ')
    wrong(ctx, 'unknown-reference', path, got, allowed || `one of ${list}, of which there is none`, hints[list])
  }
  for (const s of p.sections) {
    ask(`sections/${s.id}/hilt`, s.hilt, 'hilts')
    for (const state of s.clamp?.openIn ?? []) ask(`sections/${s.id}/clamp/openIn`, state, 'states')
  }
  for (const list of ['features', 'screws', 'parts'] as const)
    for (const o of p[list]) for (const state of o.states ?? []) ask(`${list}/${o.id}/states`, state, 'states')
  for (const o of p.parts) ask(`parts/${o.id}/through`, o.through, 'openings')
  for (const o of p.sleeves) ask(`sleeves/${o.id}/on`, o.on, 'outsides')
  for (const w of p.wires) {
    ask(`wires/${w.id}/sled`, w.sled, 'sleds')
    ask(`wires/${w.id}/from`, w.from, 'parts')
    ask(`wires/${w.id}/to`, w.to, 'parts')
  }
  for (const i of p.insertions) ask(`insertions/${i.id}/during`, i.during, 'states')
  for (const s of p.sleds) {
    ask(`sleds/${s.id}/hilt`, s.hilt, 'hilts')
    for (const n of s.nests ?? []) ask(`sleds/${s.id}/nests/${n.part}`, n.part, 'parts')
    for (const w of s.windows ?? []) ask(`sleds/${s.id}/windows/${w.id}/for`, w.for, 'fittings')
  }
}

function knownIds(p: Project) {
  const refs = (...lists: ('sections' | 'sleeves' | 'parts' | 'features' | 'screws')[]) =>
    lists.flatMap((list) => p[list].map((o) => `${list}/${o.id}`))
  return {
    // A project that names no hilt has one all the same.
    hilts: p.hilts.length > 0 ? p.hilts.map((h) => h.id) : ['hilt'],
    states: stateIds(p),
    sleds: p.sleds.map((s) => s.id),
    parts: refs('parts'),
    openings: refs('features'),
    outsides: refs('sections', 'sleeves'),
    fittings: refs('parts', 'features', 'screws'),
  }
}

const hints: Readonly<Record<keyof ReturnType<typeof knownIds>, string>> = {
  hilts: 'Name one of the hilts.',
  states: 'Name one of the states of the hilt.',
  sleds: 'Name one of the sleds.',
  parts: 'Name a part, as "parts/cell".',
  openings: 'Name the hole or window, as "features/switch-hole".',
  outsides: 'Name the section it covers, as "sections/body".',
  fittings: 'Name what the window makes room for, as "parts/switch" or "features/pin".',
}
