import '../solid/solid.css'
import '../solid/hilt.css'
import { useCallback, useMemo, useState } from 'react'
import type { MetalLeaf } from '../../papers/metal-leaves.ts'
import { shiftAt } from '../../papers/way-shift.ts'
import { placeWords } from '../../project/place-words.ts'
import type { Project } from '../../project/schema/project.ts'
import type { Far } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { touchAt, travelTo } from '../push/pushing.ts'
import { HiltPanel } from '../solid/hilt-panel.tsx'
import type { Mark } from '../solid/mark-piece.tsx'
import { NestList } from '../solid/nest-list.tsx'
import type { Picked } from '../solid/picked.ts'
import { PickedNote } from '../solid/picked-note.tsx'
import { Unable } from '../solid/solid-panel.tsx'
import { hasWebGl } from '../solid/webgl.ts'
import { goToPath } from './go-to.ts'
import { useAsked } from './use-asked.ts'
import { useWays } from './use-ways.ts'
import { useProject, useView, useWork } from './work-context.ts'

const nothing: ReadonlySet<string> = new Set()

/** The hilt cut open with its sleds and all that lies in it, and the way in. */
export function SolidCorner() {
  const { view, theme, judged } = useWork()
  const project = useProject((p) => p)
  const theta = useView((v) => v.theta)
  const state = useView((v) => v.state)
  const push = useView((v) => v.push)
  const lit = useView((v) => v.lit)
  const finding = useView((v) => v.finding)
  const [shown, setShown] = useState(false)
  const [able, setAble] = useState(true)
  const [picked, setPicked] = useState<Picked>()
  const call = useCallback((calls: Far<WorkCalls>, p: Project) => calls.solids(p, state), [state])
  const { value: solids, trouble, working } = useAsked('solids', shown, call)
  const ways = useWays(push !== undefined)
  const way = push && ways.value?.find((w) => w.id === push.insertion)
  const absent = useMemo(() => (way ? new Set(way.absent) : nothing), [way])
  const pushed = useMemo(() => way && push && { moves: way.moves, by: shiftAt(way, push.depth) }, [way, push])
  const nameOf = (reference: string) => placeWords(project, reference)

  const marks = useMemo((): Mark[] => {
    const found = judged.report?.findings.find((f) => f.id === finding)
    const touch = way && push && touchAt(way, travelTo(way, push.depth))
    const places = touch
      ? [{ key: 'touch', at: touch.at, tone: 'clash' as const, parts: touch.parts }]
      : found?.at
        ? [{ key: found.id, at: found.at, tone: toneOf(found.status), parts: found.parts }]
        : []
    return places.map((p) => ({ ...p, on: metalAt(solids?.hilt.metal ?? [], p.at.z, p.parts) }))
  }, [judged.report, finding, way, push, solids])

  const onField = (path: string) => goToPath(view, path)
  const problems = solids?.sleds.flatMap((s) => s.problems) ?? []
  return (
    <section className="solid" aria-labelledby="solid-title">
      <div className="panel-head">
        <h2 id="solid-title">Solid</h2>
        {shown && working && (
          <p className="small soft" aria-live="polite">
            Building …
          </p>
        )}
      </div>
      {!shown && (
        <div className="solid-closed">
          <p className="small soft">The hilt cut open, its sleds, and what lies in them.</p>
          <button
            type="button"
            className="button"
            onClick={() => {
              setAble(hasWebGl())
              setShown(true)
            }}
          >
            Show the solid
          </button>
        </div>
      )}
      {shown && trouble !== undefined && <p className="small solid-trouble">{trouble}</p>}
      {shown && problems.length > 0 && (
        <ul className="small solid-trouble">
          {problems.map((p) => (
            <li key={`${p.path} ${p.got}`}>
              {nameOf(p.path)}: {p.got}. {p.hint}
            </li>
          ))}
        </ul>
      )}
      {shown && solids && (
        <HiltPanel
          solids={solids}
          able={able}
          unable={<Unable />}
          theme={theme}
          theta={theta}
          pushed={pushed}
          outside={way ? shiftAt(way, way.from) : 0}
          absent={absent}
          marks={marks}
          picked={picked}
          onPick={setPicked}
          lit={lit}
          name={project.job[0]?.name ?? 'New job'}
          note={
            able && (
              <PickedNote picked={picked} nameOf={nameOf} onField={onField} onClose={() => setPicked(undefined)} />
            )
          }
        />
      )}
      <NestList nameOf={nameOf} onField={onField} onPick={shown && able ? setPicked : undefined} />
    </section>
  )
}

const toneOf = (status: string): Mark['tone'] =>
  status === 'clash' || status === 'unsure' || status === 'clear' ? status : 'blue'

/** The section that one of the parts belongs to, or whose metal lies around the height; the first where there is none. */
function metalAt(metal: readonly MetalLeaf[], z: number, parts: readonly string[]): string {
  const named = metal.find((l) => parts.some((p) => p === l.section || p.startsWith(`${l.section}/`)))
  const around = metal.find(({ rings }) => {
    const zs = rings.flat().map(([at]) => at)
    return Math.min(...zs) <= z && z <= Math.max(...zs)
  })
  return (named ?? around ?? metal[0])?.section ?? ''
}
