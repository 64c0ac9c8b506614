import { memo, useId } from 'react'
import type { GapCell, GapRun, GapStripView, ThreadStretch } from '../../papers/gap-strip.ts'
import type { OpenSeam } from '../../papers/open-seams.ts'
import { threadProfile } from '../../papers/thread-profile.ts'
import { round } from '../drawing/frame.ts'
import { fixed } from '../sheet/numbers.ts'
import { gapScale } from './gap-scale.ts'
import { boxOf } from './label-room.ts'
import { seamNames } from './seam-names.ts'
import type { StripLayout } from './strip-frame.ts'

export interface GapStripProps {
  readonly view: GapStripView
  readonly layout: StripLayout
}

type Line = (pick: (c: GapCell) => number) => string

/**
 * The least gap along the hilt: the bore's wall straightened out and much enlarged, and the sled above it. The band is
 * what the intervals leave; the broken line is what is left on the way in.
 */
export const GapStrip = memo(function GapStrip({ view, layout }: GapStripProps) {
  const clip = useId()
  const under = useId()
  const { frame, gap, left, width } = layout
  const scale = gapScale(view)
  const y = (v: number): number => round(gap.y + (gap.height * (scale.high - v)) / (scale.high - scale.low))
  const [x0, x1] = [left, width - 16]
  const sheet = { x0, x1, y0: gap.y, y1: gap.y + gap.height }
  const needed = `needed ${fixed(view.limit)}`
  return (
    <g className="strip-gap">
      <clipPath id={clip}>
        <rect x={x0} y={gap.y} width={x1 - x0} height={gap.height} />
      </clipPath>
      <clipPath id={under}>
        <rect x={x0} y={y(0)} width={x1 - x0} height={gap.y + gap.height - y(0)} />
      </clipPath>
      {scale.marks.map((m) => (
        <g key={m} className="gap-mark">
          <line x1={x0} x2={x1} y1={y(m)} y2={y(m)} />
          <text x={x0 - 8} y={y(m)} dy="0.35em" textAnchor="end">
            {fixed(m, 1)}
          </text>
        </g>
      ))}
      <g clipPath={`url(#${clip})`}>
        <Wall view={view} layout={layout} y={y} />
        {view.seams.map((s) => (
          <rect
            key={`${s.z0}`}
            className="gap-seam"
            x={round(frame.x(s.z0))}
            y={round(gap.y)}
            width={round(frame.x(s.z1) - frame.x(s.z0))}
            height={round(y(0) - gap.y)}
          />
        ))}
        {view.runs.map((run) => {
          const line = lineOf(run, frame.x, y)
          return (
            <g key={run.sled}>
              <path className="gap-band" d={bandOf(run, frame.x, y)} />
              <path
                className="gap-overlap"
                clipPath={`url(#${under})`}
                d={`${line((c) => c.nominal)}${base(run, frame.x, y(0))}`}
              />
              {run.cells.some((c) => c.way !== undefined) && (
                <path className="gap-way" d={line((c) => c.way ?? c.nominal)} />
              )}
              <path className="gap-nominal" d={line((c) => c.nominal)} />
            </g>
          )
        })}
      </g>
      {seamNames(view.seams, frame.x, sheet, [boxOf(needed, x1 - 2, y(view.limit) - 4, 'end')]).map(
        ({ seam, text, ...at }) => (
          <text key={`${seam.z0}`} className="gap-seam-name" x={round(at.x)} y={round(at.y)}>
            {text}
          </text>
        ),
      )}
      <g className="gap-needed">
        <line x1={x0} x2={x1} y1={y(view.limit)} y2={y(view.limit)} />
        <text x={x1 - 2} y={y(view.limit) - 4} textAnchor="end">
          {needed}
        </text>
      </g>
    </g>
  )
})

/** Turns narrower than this run together into a block, px: the thread is then drawn by its roots' line alone (ISO 6410). */
const leastTurn = 3

/** Cut metal below the straightened wall; where there is a thread its crests are the wall. */
function Wall(props: { readonly view: GapStripView; readonly layout: StripLayout; readonly y: (v: number) => number }) {
  const { view, layout, y } = props
  const bottom = layout.gap.y + layout.gap.height + 2
  const { x } = layout.frame
  const drawnOut = (t: ThreadStretch) => x(t.pitch) - x(0) >= leastTurn
  const roots = view.threads.flatMap((t) =>
    drawnOut(t) ? [] : [`M${round(x(t.z0))} ${y(-t.depth)}H${round(x(t.z1))}`],
  )
  const edges = view.bores.map((b) => {
    const thread = view.threads.find((t) => t.id === b.id)
    const points =
      thread && drawnOut(thread)
        ? threadProfile(b.z0, b.z1, 0, thread.depth, thread.pitch)
        : ([
            [b.z0, 0],
            [b.z1, 0],
          ] as const)
    return points.map(([z, depth], i) => `${i === 0 ? 'M' : 'L'}${round(x(z))} ${y(-depth)}`).join('')
  })
  const closed = view.bores.map((b, i) => `${edges[i]}L${round(x(b.z1))} ${bottom}H${round(x(b.z0))}Z`).join('')
  return (
    <g>
      <path className="metal-wash" d={closed} />
      <path fill="url(#hatch-metal-0)" d={closed} />
      <path className="line-mid" d={edges.join('')} />
      {roots.length > 0 && <path className="line-thin" d={roots.join('')} />}
    </g>
  )
}

function lineOf({ cells }: GapRun, x: (z: number) => number, y: (v: number) => number): Line {
  return (pick) => stairs(cells, pick, x, y)
}

/** From slice to slice; slices at one height are one step. */
function stairs(
  cells: readonly GapCell[],
  pick: (c: GapCell) => number,
  x: (z: number) => number,
  y: (v: number) => number,
): string {
  return cells
    .map((c, i) => {
      const [at, before, after] = [y(pick(c)), cells[i - 1], cells[i + 1]]
      const start = before && y(pick(before)) === at ? '' : `${i === 0 ? 'M' : 'L'}${round(x(c.z0))} ${at}`
      return after && y(pick(after)) === at ? start : `${start}H${round(x(c.z1))}`
    })
    .join('')
}

function bandOf({ cells }: GapRun, x: (z: number) => number, y: (v: number) => number): string {
  const back = cells.toReversed().map((c) => ({ ...c, z0: c.z1, z1: c.z0 }))
  const over = stairs(cells, (c) => c.best, x, y)
  return `${over}${stairs(back, (c) => c.worst, x, y).replace('M', 'L')}Z`
}

/** Back along the wall, so that what lies below it can be filled. */
function base({ cells }: GapRun, x: (z: number) => number, y: number): string {
  const [first, last] = [cells[0], cells.at(-1)]
  return first && last ? `L${round(x(last.z1))} ${y}H${round(x(first.z0))}Z` : ''
}

/** Why the gap rises at a joint. */
export function seamTold({ name, sections, engaged, z0, z1 }: OpenSeam): string {
  const both = `${sections[0]} and ${sections[1]}`
  return engaged === undefined
    ? `how far ${both} engage is not said, taken as 0: ${name} is open`
    : `${both} engage ${fixed(engaged, 1)} mm: ${fixed(z1 - z0, 1)} mm of ${name} stay open`
}

/** The strip in words. */
export function gapTold({ runs, limit, seams }: GapStripView): string {
  const least = runs.map(({ name, cells }) => {
    const tight = cells.reduce<GapCell | undefined>((a, c) => (a && a.nominal <= c.nominal ? a : c), undefined)
    return tight
      ? `${name}: least ${fixed(tight.nominal)} at z ${fixed((tight.z0 + tight.z1) / 2, 1)}, at worst ${fixed(Math.min(...cells.map((c) => c.worst)))}`
      : `${name}: nothing near`
  })
  return `Least gap along the hilt in millimetres, ${fixed(limit)} needed. ${[...least, ...seams.map(seamTold)].join('; ') || 'No sled'}.`
}
