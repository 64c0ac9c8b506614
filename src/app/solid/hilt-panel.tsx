import { lazy, type ReactNode, Suspense, useMemo, useRef, useState } from 'react'
import type { JobSolids } from '../../worker/job-solids.ts'
import { saveFile } from '../sheet/save-file.ts'
import { type Eye, start } from './eye.ts'
import { frameOf, joined } from './framing.ts'
import { HiltTools, type Shows, usualShows } from './hilt-tools.tsx'
import { HiltWords } from './hilt-words.tsx'
import type { Mark } from './mark-piece.tsx'
import type { Picked } from './picked.ts'
import { pictureOf } from './picture.ts'
import { placed, type Standing } from './placing.ts'
import type { StageHandle } from './stage.tsx'
import { Survives } from './survives.tsx'

/** Three and fiber come with this file, and only when a solid is first shown. */
const HiltCanvas = lazy(() => import('./hilt-canvas.tsx'))

export interface HiltPanelProps {
  readonly solids: JobSolids
  /** Whether this browser can draw it; the words are there either way. */
  readonly able: boolean
  readonly unable: ReactNode
  readonly theme: string
  readonly theta: number
  readonly pushed: Standing['pushed']
  /** How far what is pushed stands from its place at the beginning of its way, mm. */
  readonly outside: number
  readonly absent: ReadonlySet<string>
  readonly marks: readonly Mark[]
  readonly picked: Picked | undefined
  readonly onPick: (picked: Picked | undefined) => void
  readonly lit: string | undefined
  /** Name of the job, for the picture. */
  readonly name: string
  /** What was clicked, in words. */
  readonly note: ReactNode
}

/** The picture of the hilt with its tools and its words. The canvas stays the same as long as the page does. */
export function HiltPanel(props: HiltPanelProps) {
  const { solids, able, unable, theme, theta, pushed, outside, absent, marks, picked, onPick, lit, name, note } = props
  const [eye, setEye] = useState<Eye>(start)
  const [shows, setShows] = useState<Shows>(usualShows)
  const [lost, setLost] = useState(false)
  const stage = useRef<StageHandle>(null)
  const where = useMemo(
    () => shownOf(solids, { theta, apart: shows.apart, pushed, hidden: absent }, shows),
    [solids, theta, shows, pushed, absent],
  )
  // What is pushed is in the picture all the way, and the picture stands still meanwhile.
  const moves = pushed?.moves
  const frame = useMemo(() => {
    const at = (by: number) => {
      const standing = {
        theta,
        apart: shows.apart,
        pushed: moves === undefined ? undefined : { moves, by },
        hidden: absent,
      }
      return frameOf(shownOf(solids, standing, shows))
    }
    return joined(at(0), at(outside))
  }, [solids, theta, shows, moves, outside, absent])
  const save = async () => {
    const canvas = stage.current?.picture()
    const blob = canvas && (await pictureOf(canvas, `${name}: the solid, cut at θ ${theta}°`))
    if (blob) saveFile(`${fileName(name)}-solid.png`, new Uint8Array(await blob.arrayBuffer()))
  }
  return (
    <>
      {able ? (
        <Survives instead={unable}>
          <Suspense fallback={<p className="small soft">Fetching the solid view …</p>}>
            <HiltCanvas
              stage={stage}
              eye={eye}
              onEye={setEye}
              frame={frame}
              onPick={onPick}
              onLost={setLost}
              solids={solids}
              where={where}
              theta={theta}
              metal={shows.metal}
              contents={shows.contents}
              sledCut={shows.sledCut}
              theme={theme}
              picked={picked}
              lit={lit}
              marks={marks}
            />
          </Suspense>
          {lost && (
            <p className="small" aria-live="polite">
              The graphics card took the picture away; it comes back by itself. The drawings are not touched by it.
            </p>
          )}
          <HiltTools onEye={setEye} shows={shows} onShows={setShows} onPicture={() => void save()} />
        </Survives>
      ) : (
        unable
      )}
      {note}
      <HiltWords solids={solids} where={where} />
    </>
  )
}

function shownOf(solids: JobSolids, standing: Standing, shows: Shows) {
  const metal = new Set(shows.metal === 'away' ? solids.hilt.metal.map((l) => l.section) : [])
  const contents = new Set(
    shows.contents ? [] : solids.hilt.things.filter((t) => t.rides.startsWith('sleds/')).map((t) => t.id),
  )
  return placed(solids, standing).filter((p) => !metal.has(p.key) && !contents.has(p.key))
}

const fileName = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '') || 'job'
