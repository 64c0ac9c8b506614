import { type PointerEvent, useEffect, useRef } from 'react'
import type { Project } from '../../project/schema/project.ts'
import { held, type JobStore } from '../work/job-store.ts'

/** A part in the hand is told to the job at most so often, ms: the verdict keeps up, and the drawing never waits for it. */
const everyMs = 120

export interface DragAsk {
  readonly job: JobStore
  readonly name: string
  /** Where the pointer has gone since it was pressed, px; free of snapping while Alt is held. */
  readonly onMove: (dx: number, dy: number, free: boolean) => ((project: Project) => Project | undefined) | undefined
  readonly onEnd: () => void
}

interface Hand {
  readonly x: number
  readonly y: number
  readonly start: Project
  readonly gesture: string
}

/**
 * Takes hold of something by the pointer. What is drawn follows in every frame, the job a few times a second and at
 * the end; all of it is one step back. Escape puts it back where it was.
 */
export function useDrag(ask: DragAsk) {
  const hand = useRef<Hand | undefined>(undefined)
  const latest = useRef<{ x: number; y: number; free: boolean } | undefined>(undefined)
  const told = useRef({ at: 0, frame: 0, count: 0, moved: false })

  const tell = (final: boolean) => {
    const [h, l] = [hand.current, latest.current]
    if (!h || !l) return
    const change = ask.onMove(l.x - h.x, l.y - h.y, l.free)
    const now = performance.now()
    if (!change || (!final && now - told.current.at < everyMs)) return
    told.current.at = now
    told.current.moved = ask.job.edit(() => change(h.start), h.gesture) || told.current.moved
  }
  const stop = () => {
    cancelAnimationFrame(told.current.frame)
    told.current.frame = 0
    hand.current = undefined
    latest.current = undefined
    ask.job.settle()
    ask.onEnd()
  }
  useEffect(() => () => cancelAnimationFrame(told.current.frame), [])

  return {
    onPointerDown: (event: PointerEvent<Element>) => {
      if (event.button !== 0) return
      // A finger that is meant to move the page may lie on a part: it takes hold only of what was tapped before.
      if (event.pointerType === 'touch' && document.activeElement !== event.currentTarget) return
      event.stopPropagation()
      event.currentTarget.setPointerCapture(event.pointerId)
      const gesture = `${held}${ask.name} ${++told.current.count}`
      hand.current = { x: event.clientX, y: event.clientY, start: ask.job.get(), gesture }
      told.current.at = performance.now()
      told.current.moved = false
    },
    onPointerMove: (event: PointerEvent<Element>) => {
      if (!hand.current) return
      event.stopPropagation()
      latest.current = { x: event.clientX, y: event.clientY, free: event.altKey }
      if (told.current.frame !== 0) return
      told.current.frame = requestAnimationFrame(() => {
        told.current.frame = 0
        tell(false)
      })
    },
    onPointerUp: (event: PointerEvent<Element>) => {
      if (!hand.current) return
      event.stopPropagation()
      tell(true)
      stop()
    },
    onPointerCancel: stop,
    /** True where something was in the hand. */
    escape: (): boolean => {
      if (!hand.current) return false
      const { moved } = told.current
      stop()
      if (moved) ask.job.undo()
      return true
    },
  }
}
