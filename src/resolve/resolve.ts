import { oneOf } from '../../geometry/one-of.ts'
import type { Presets } from '../presets/presets.ts'
import { good, type Outcome } from '../problem/problem.ts'
import type { Project } from '../project/schema/project.ts'
import type { Assembly, BoreBody, Part, Sled } from './assembly.ts'
import { boresOf } from './bores.ts'
import { bundlesOf } from './bundles.ts'
import { type Context, contextOf, wrong } from './context.ts'
import { Heights } from './heights.ts'
import { insertionsOf, sectionsDuring } from './insertions.ts'
import type { Intrusion } from './metal.ts'
import { ownHilt } from './own-hilt.ts'
import { PartSizes, placeParts } from './part-heights.ts'
import { resolveParts, seatOf } from './parts.ts'
import { printProcessOf } from './print-process.ts'
import { walls, wallsIfThere } from './rare.ts'
import { checkReferences } from './references.ts'
import { placeSections, resolveSections } from './sections.ts'
import { placeSleds, resolveSled } from './sleds.ts'
import { statesOf } from './states.ts'

/**
 * From the project as written to the assembly as known: every dimension an interval with its source, every place in
 * the frame of the hilt. `hiltId` chooses one of several hilts; the first where left out. Fails with all problems at
 * once, each with its path; what is only missing or questionable comes in the assembly.
 */
export function resolve(written: Project, presets: Presets, hiltId?: string): Outcome<Assembly> {
  const whole = contextOf(written, presets)
  const hilt = chooseHilt(whole, hiltId)
  checkReferences(whole)
  const project = ownHilt(written, hilt.id)
  const ctx: Context = { ...whole, project }
  const sectionInputs = project.sections
  if (sectionInputs.length === 0)
    wrong(
      ctx,
      'missing',
      'sections',
      'no section',
      'at least one section with its bore',
      'Describe the tube: its length and its bore.',
    )
  const heights = new Heights(ctx)
  const sizes = new PartSizes(ctx)
  placeSections(ctx, heights, sectionInputs)
  const { features, screws, sleeves } = project
  const inWall = features.length + screws.length + sleeves.length > 0 ? walls() : undefined
  inWall?.placeFeatures(ctx, heights)
  placeParts(ctx, heights, sizes)
  placeSleds(ctx, heights, (id) => project.parts.filter((p) => seatOf(ctx, p).sled === id))

  const sections = resolveSections(ctx, heights, sectionInputs)
  inWall?.questionPlaces(ctx, heights, sections)
  const openings = inWall?.openingsOf(ctx, heights, sections) ?? []
  const intrusions = inWall?.intrusionsOf(ctx, heights, sections) ?? []
  const covers = inWall?.coversOf(ctx, heights) ?? []
  const roundHoles = inWall?.roundHolesOf(ctx, heights, sections) ?? []
  const given = insertionsOf(
    ctx,
    sections,
    project.sleds.map((s) => s.id),
  )
  const sleds = project.sleds.flatMap((s): Sled[] => {
    const print = printProcessOf(ctx, s)
    const sled = print && resolveSled(ctx, heights, s, sections, given, print)
    return sled ? [sled] : []
  })
  const parts = resolveParts(ctx, heights, sizes, sections, sleds)
  const states = statesOf(ctx)
  const wires = bundlesOf(ctx)
  // Where every section is there during every move, and no part is in a wall, nothing can come over anything.
  const comesOver =
    parts.some((p) => p.section) || given.some((i) => sectionsDuring(i, sections).length < sections.length)
  const over = comesOver ? walls().tubesOver(ctx, sections, sleds, parts, given) : []
  wallsIfThere()?.tellNotYet(ctx)
  if (ctx.problems.length > 0) return { ok: false, problems: unique(ctx.problems) }
  return good({
    hilt,
    sections,
    bores: boresOf(sections, openings).map(oneBore),
    openings,
    roundHoles,
    covers,
    intrusions: intrusions.map(oneIntrusion),
    parts: parts.map(onePart),
    sleds: sleds.map(oneSled),
    insertions: [...given, ...over],
    states,
    wires,
    thresholds: ctx.thresholds,
    project,
    questions: unique(ctx.questions),
    missing: ctx.missing,
    assumptions: ctx.assumptions,
  })
}

// What a change at the bench has left as it was is the object it was.
const oneBore = oneOf<BoreBody>((b) => b.body.id)
const oneIntrusion = oneOf<Intrusion>((x) => x.body.id)
const onePart = oneOf<Part>((p) => p.id)
const oneSled = oneOf<Sled>((s) => s.id)

function chooseHilt(ctx: Context, id: string | undefined): Assembly['hilt'] {
  const { hilts } = ctx.project
  const found = id === undefined ? hilts[0] : hilts.find((h) => h.id === id)
  if (id !== undefined && !found)
    wrong(
      ctx,
      'unknown-reference',
      'hilts',
      id,
      hilts.map((h) => h.id).join(', ') || 'no hilts',
      'Name one of the hilts.',
    )
  return { id: found?.id ?? 'hilt', name: found?.name ?? found?.id ?? 'Hilt' }
}

function unique<T extends { path: string; code: string; hint: string }>(list: readonly T[]): T[] {
  const seen = new Set<string>()
  return list.filter((p) => {
    const key = `${p.code} ${p.path} ${p.hint}`
    return !seen.has(key) && seen.add(key)
  })
}
