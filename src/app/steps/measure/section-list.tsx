import { Fragment } from 'react'
import { useProject } from '../../work/work-context.ts'
import { AddJoint, JointCard } from './joint-card.tsx'
import { bladeEnd, newSection, withSection } from './new-section.ts'
import { OwnFault, useEditAndGo } from './record-card.tsx'
import { SectionCard } from './section-card.tsx'

/** The sections from the rear, with the joints between them. */
export function SectionList() {
  const project = useProject((p) => p)
  const { sections, joints } = project
  const go = useEditAndGo()
  const between = (i: number) => {
    const [rear, blade] = [sections[i]?.id, sections[i + 1]?.id]
    return joints.filter((j) => (j.rear === rear && j.blade === blade) || (j.rear === blade && j.blade === rear))
  }
  const placed = sections.flatMap((_, i) => between(i))
  const others = joints.filter((j) => !placed.includes(j))
  const end = bladeEnd(project)
  const add = (at: number) => {
    const section = newSection(project, at)
    go((p) => withSection(p, section, at), `sections/${section.id}/length`)
  }
  return (
    <section className="measure-group" aria-labelledby="measure-sections" data-list>
      <div className="measure-head">
        <h3 id="measure-sections">Sections, from the rear</h3>
        <span className="section-heads small soft" aria-hidden="true">
          <span>length</span>
          <span>outside ⌀</span>
          <span>bore ⌀</span>
        </span>
      </div>
      <OwnFault path="sections" />
      <div className="cards">
        {sections.map((s, i) => (
          <Fragment key={s.id}>
            <SectionCard section={s} at={i} count={sections.length} onAdd={() => add(i + 1)} />
            {between(i).map((j) => (
              <JointCard key={j.id} joint={j} />
            ))}
            {i + 1 < sections.length && between(i).length === 0 && (
              <AddJoint rear={s.id} blade={(sections[i + 1] as { id: string }).id} />
            )}
          </Fragment>
        ))}
        {others.map((j) => (
          <JointCard key={j.id} joint={j} />
        ))}
      </div>
      <button type="button" className="button" data-add onClick={() => add(end)}>
        Add a section {end === sections.length ? 'at the blade end' : 'before the closed end'}
      </button>
    </section>
  )
}
