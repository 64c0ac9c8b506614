import './compare.css'
import { useEffect, useRef, useState } from 'react'
import type { Comparison } from '../../papers/compare.ts'
import { problemWords } from '../../papers/problem-words.ts'
import type { Project } from '../../project/schema/project.ts'
import { useKeeping } from '../keeping/keeping-context.ts'
import { useCards } from '../keeping/use-cards.ts'
import { useProject, useWork } from '../work/work-context.ts'
import { ComparisonTables } from './comparison-tables.tsx'
import { type DemoName, type Rival, readJob, rivalsOf } from './rivals.ts'

/** Both jobs are judged, ms. */
const patience = 30_000

/** The job as it stands beside another one: numbers, verdicts, margins. */
export default function CompareDialog({ onClose }: { readonly onClose: () => void }) {
  const { desk, job } = useWork()
  const { keeper } = useKeeping()
  const now = useProject((p) => p)
  const turn = useRef(0)
  const begun = useRef(false)
  const box = useRef<HTMLDialogElement>(null)
  const [demos, setDemos] = useState<readonly DemoName[]>([])
  const [chosen, setChosen] = useState('opened')
  const [file, setFile] = useState<Rival>()
  const [outcome, setOutcome] = useState<Comparison | string>()
  useEffect(() => box.current?.showModal(), [])
  useEffect(() => void import('../../job/demos/index.ts').then((m) => setDemos(m.demos)), [])
  const cards = useCards()
  const others = cards.kind === 'fetched' ? cards.cards.filter((c) => c.id !== keeper.id) : []
  const rivals = [...rivalsOf(desk, job, others, demos), ...(file ? [file] : [])]
  const rival = rivals.find((r) => r.id === chosen)

  const show = async (with_: Rival) => {
    turn.current += 1
    const mine = turn.current
    setOutcome(undefined)
    const other = await with_.fetch()
    const next = typeof other === 'string' ? other : await compared(other, now)
    // What was chosen later is what one waits for.
    if (mine === turn.current) setOutcome(next)
  }
  const compared = async (other: Project, mine: Project): Promise<Comparison | string> => {
    const reply = await desk.ask('compare', patience, (calls) => calls.compare(other, mine))
    if (reply.kind === 'overtaken') return ''
    if (reply.kind !== 'done')
      return reply.kind === 'stuck' ? 'Comparing took too long and was stopped.' : reply.message
    return reply.value.ok
      ? reply.value.value
      : `No comparison. ${reply.value.problems.map((p) => problemWords(mine, p)).join(' ')}`
  }
  const choose = (next: Rival) => {
    setChosen(next.id)
    void show(next)
  }
  useEffect(() => {
    if (begun.current || !rival) return
    begun.current = true
    void show(rival)
  })

  return (
    <dialog ref={box} className="compare" aria-labelledby="compare-title" onClose={onClose}>
      <div className="compare-head">
        <h2 id="compare-title">Compare</h2>
        <button type="button" className="button" onClick={() => box.current?.close()}>
          Close
        </button>
      </div>
      <div className="compare-choose">
        <label className="field">
          <span className="field-label">This job now, with</span>
          <select
            className="field-input"
            value={chosen}
            onChange={(event) => {
              const next = rivals.find((r) => r.id === event.target.value)
              if (next) choose(next)
            }}
          >
            {[...new Set(rivals.map((r) => r.group))].map((group) => (
              <optgroup key={group} label={group}>
                {rivals
                  .filter((r) => r.group === group)
                  .map((r) => (
                    <option key={r.id} value={r.id}>
                      {r.label}
                    </option>
                  ))}
              </optgroup>
            ))}
          </select>
        </label>
        <label className="field">
          <span className="field-label">or with a job from a file</span>
          <input
            type="file"
            accept=".json,application/json"
            className="field-input"
            onChange={(event) => {
              const [picked] = event.target.files ?? []
              if (!picked) return
              const next: Rival = {
                id: `file-${picked.name}`,
                label: picked.name,
                group: 'Files',
                fetch: async () => readJob(desk, await picked.text()),
              }
              setFile(next)
              choose(next)
            }}
          />
        </label>
      </div>
      <div aria-live="polite">
        {outcome === undefined && <p className="small soft">Comparing …</p>}
        {typeof outcome === 'string' && <p>{outcome}</p>}
        {typeof outcome === 'object' && <ComparisonTables comparison={outcome} before={rival?.label ?? 'then'} />}
      </div>
    </dialog>
  )
}
