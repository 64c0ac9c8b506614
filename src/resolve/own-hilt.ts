import type { Project } from '../project/schema/project.ts'

/**
 * The project as one hilt sees it: its sections and what belongs to them. A record that names no hilt belongs to the
 * first, or to the one its sled or section belongs to.
 */
export function ownHilt(p: Project, hilt: string): Project {
  if (p.hilts.length < 2) return p
  const first = p.hilts[0]?.id
  const mine = (o: { hilt?: string | undefined }) => (o.hilt ?? first) === hilt
  const sections = p.sections.filter(mine)
  const sleds = p.sleds.filter(mine)
  const has = (ref: string) =>
    sections.some((s) => ref === `sections/${s.id}` || ref.startsWith(`sections/${s.id}/`)) ||
    sleds.some((s) => ref === `sleds/${s.id}`)
  const onMine = (on: string | undefined) => (on === undefined ? hilt === first : has(on))
  const parts = p.parts.filter((o) => onMine(o.on))
  const features = p.features.filter((f) => onMine(f.on))
  const screws = p.screws.filter((s) => onMine(s.on))
  const moved = (ref: string) => has(ref) || parts.some((o) => ref === `parts/${o.id}`)
  return {
    ...p,
    sections,
    sleds,
    parts,
    features,
    screws,
    joints: p.joints.filter((j) => sections.some((s) => s.id === j.rear) || sections.some((s) => s.id === j.blade)),
    insertions: p.insertions.filter((i) => moved(i.moves)),
    wires: p.wires.filter((w) => (w.sled === undefined ? hilt === first : sleds.some((s) => s.id === w.sled))),
  }
}
