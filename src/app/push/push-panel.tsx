import './push.css'
import { useState } from 'react'
import type { InsertionWay } from '../../papers/insertion-way.ts'
import { capital, fixed } from '../sheet/numbers.ts'
import { DepthField } from './depth-field.tsx'
import { GapChart } from './gap-chart.tsx'
import { type NameOf, PushWords } from './push-words.tsx'
import { depthAt, inTube, type Pushed, placeTold, push, stopsOf, touchAt, travelTo, wayLength } from './pushing.ts'
import { useRun } from './use-run.ts'

/** Which way is looked at, and the depth that the unit is at; undefined where all is in its place. */
export interface PushAt {
  readonly insertion: string
  readonly depth: number
}

export interface PushPanelProps {
  readonly ways: readonly InsertionWay[]
  readonly at: PushAt | undefined
  readonly onPush: (at: PushAt | undefined) => void
  /** Points at a place: where it touches. */
  readonly onPlace: (touch: InsertionWay['touches'][number]) => void
  readonly nameOf: NameOf
}

/** What the keys do to a unit on its way: so many mm further in. */
const keys: Readonly<Record<string, number>> = {
  ArrowRight: 0.5,
  ArrowUp: 0.5,
  ArrowLeft: -0.5,
  ArrowDown: -0.5,
  PageUp: 5,
  PageDown: -5,
  Home: Number.NEGATIVE_INFINITY,
  End: Number.POSITIVE_INFINITY,
}

/** Pushes a unit in along its way, by hand, by keys or by a number. It stops where it first comes against something. */
export function PushPanel({ ways, at, onPush, onPlace, nameOf }: PushPanelProps) {
  const way = ways.find((w) => w.id === at?.insertion) ?? ways[0]
  // Leave to go past touches holds for one way as it is: another way, or a changed job, begins anew.
  const [leave, setLeave] = useState<{ readonly way: InsertionWay; readonly travel: number }>()
  const allowed = leave && leave.way === way ? leave.travel : -1
  const run = useRun()
  if (!way) return <p className="small soft">Nothing goes into this hilt yet.</p>
  const long = wayLength(way)
  const travel = at ? Math.min(long, Math.max(0, travelTo(way, at.depth))) : long
  const put = (to: number) => onPush({ insertion: way.id, depth: depthAt(way, to) })
  const go = (wanted: number, from = travel): Pushed => {
    const pushed = push(way, from, wanted, allowed)
    put(pushed.travel)
    return pushed
  }
  const stopped = at ? touchAt(way, travel) : undefined
  const held = stopped && travelTo(way, stopped.depth) > allowed + 0.005 ? stopped : undefined
  return (
    <>
      <div className="push-hand">
        {ways.length > 1 ? (
          <select
            className="push-way"
            aria-label="What goes in"
            value={way.id}
            onChange={(event) => {
              run.stop()
              const next = ways.find((w) => w.id === event.target.value)
              onPush(next && { insertion: next.id, depth: next.from })
            }}
          >
            {ways.map((w) => (
              <option key={w.id} value={w.id}>
                {capital(w.name)}
              </option>
            ))}
          </select>
        ) : (
          <span className="push-label">{capital(way.name)}</span>
        )}
        <DepthField
          label={inTube(way) ? 'depth' : 'face at z'}
          depth={depthAt(way, travel)}
          onDepth={(depth) => {
            run.stop()
            go(travelTo(way, depth))
          }}
        />
        <div className="push-buttons">
          <button
            type="button"
            className="button button-small"
            onClick={() =>
              run.start(at && travel < long ? travel : 0, long, (to, from) => go(to, from).stop === undefined)
            }
          >
            Push on
          </button>
          <button
            type="button"
            className="button button-small"
            onClick={() => {
              run.stop()
              put(0)
            }}
          >
            Draw it out
          </button>
          <button
            type="button"
            className="button button-small"
            disabled={!at}
            onClick={() => {
              run.stop()
              onPush(undefined)
            }}
          >
            All in place
          </button>
          {held && (
            <button
              type="button"
              className="button button-small"
              onClick={() => {
                const past = travelTo(way, held.depth)
                setLeave({ way, travel: past })
                put(Math.min(long, past + 0.5))
              }}
            >
              Go past it
            </button>
          )}
        </div>
      </div>
      <input
        className="slider push-slider"
        type="range"
        aria-label={ways.length > 1 ? 'How far in' : capital(way.name)}
        min={0}
        max={Number(long.toFixed(2))}
        step={0.01}
        value={travel}
        aria-valuetext={`${placeTold(way, depthAt(way, travel))} mm${held ? `, against ${held.obstacle}` : ''}`}
        onChange={(event) => {
          run.stop()
          go(Number(event.target.value))
        }}
        onKeyDown={(event) => {
          const by = keys[event.key]
          if (by === undefined || event.altKey || event.ctrlKey || event.metaKey) return
          event.preventDefault()
          run.stop()
          go(travel + by)
        }}
      />
      <GapChart way={way} travel={at ? travel : undefined} />
      <div className="push-told">
        <PushWords way={way} travel={at ? travel : undefined} held={held} nameOf={nameOf} />
        {way.touches.length > 0 && (
          <ol className="push-touches small">
            {way.touches.map((t) => (
              <li key={`${t.depth} ${t.mover} ${t.obstacle}`}>
                <button
                  type="button"
                  className="button button-plain"
                  onClick={() => {
                    run.stop()
                    put(travelTo(way, t.depth))
                    onPlace(t)
                  }}
                >
                  At {inTube(way) ? 'depth' : 'z'} {fixed(t.depth, 1)}
                </button>{' '}
                {capital(t.mover)} {t.overlap > 0 ? 'against' : 'too near to'} {t.obstacle}
                {t.overlap > 0 && <span className="number">, up to {fixed(t.overlap)} mm into it</span>}
              </li>
            ))}
          </ol>
        )}
        {way.touches.length > 0 && stopsOf(way).length === 0 && (
          <p className="small soft">
            Nothing stops it; it only passes nearer than the {fixed(way.limit)} mm asked for.
          </p>
        )}
      </div>
    </>
  )
}
