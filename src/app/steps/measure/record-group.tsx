import type { ReactNode } from 'react'
import { withRecord } from '../../../project/path.ts'
import type { Project } from '../../../project/schema/project.ts'
import { useWork } from '../../work/work-context.ts'
import { isClosed } from './new-section.ts'
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

interface InHand {
  readonly section: string
  /** Nobody has said which: one of several was taken, and is asked about. */
  readonly guessed: boolean
}

/** The section whose card lies open, or the only one with a bore; else the first that has one. */
function sectionInHand({ sections }: Project): InHand | undefined {
  const open = document.querySelector('details[name="sections"][open]')?.id
  const found = sections.find((s) => `sections/${s.id}` === open)
  const bored = sections.filter((s) => !isClosed(s))
  const section = found ?? bored[0] ?? sections[0]
  return section && { section: section.id, guessed: !found && bored.length > 1 }
}

/** A list of records under its title, with what can be added to it. */
export function RecordGroup({ list, title, adding, caution, children }: RecordGroupProps) {
  const { job } = useWork()
  const go = useEditAndGo()
  const add = ({ make, first }: Adding) => {
    const project = job.get()
    const inHand = sectionInHand(project)
    if (!inHand) return
    const record = make(project, inHand.section)
    go((p) => withRecord(p, list, record), `${list}/${record.id}/${inHand.guessed ? 'on' : first}`)
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
