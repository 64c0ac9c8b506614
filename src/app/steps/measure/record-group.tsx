import type { ReactNode } from 'react'
import { withRecord } from '../../../project/path.ts'
import type { Project } from '../../../project/schema/project.ts'
import { useWork } from '../../work/work-context.ts'
import { useEditAndGo } from './record-card.tsx'

export interface Adding {
  readonly words: string
  /** The record as it starts, on a section. */
  readonly make: (project: Project, section: string) => { readonly id: string }
  /** The field to begin with, from the record. */
  readonly first: string
}

export interface RecordGroupProps {
  readonly list: 'features' | 'screws' | 'sleeves'
  readonly title: string
  readonly adding: readonly Adding[]
  readonly caution?: string | undefined
  readonly children: ReactNode
}

/** The section whose card lies open, else the last: what one measures next is in it. */
function sectionInHand({ sections }: Project): Project['sections'][number] | undefined {
  const open = document.querySelector('details[name="sections"][open]')?.id
  return sections.find((s) => `sections/${s.id}` === open) ?? sections.at(-1)
}

/** A list of records under its title, with what can be added to it. */
export function RecordGroup({ list, title, adding, caution, children }: RecordGroupProps) {
  const { job } = useWork()
  const go = useEditAndGo()
  const add = ({ make, first }: Adding) => {
    const project = job.get()
    const section = sectionInHand(project)
    if (!section) return
    const record = make(project, section.id)
    go((p) => withRecord(p, list, record), `${list}/${record.id}/${first}`)
  }
  return (
    <section className="measure-group" aria-labelledby={`measure-${list}`} data-list>
      <h3 id={`measure-${list}`}>{title}</h3>
      {caution && <p className="small caution">{caution}</p>}
      <div className="cards">{children}</div>
      <div className="save-buttons">
        {adding.map((a) => (
          <button key={a.words} type="button" className="button" data-add onClick={() => add(a)}>
            {a.words}
          </button>
        ))}
      </div>
    </section>
  )
}
