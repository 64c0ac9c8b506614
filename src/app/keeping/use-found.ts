import { useEffect, useState } from 'react'
import type { Desk } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { createJobStore, type JobStore } from '../work/job-store.ts'
import { type Found, find } from './found.ts'
import { Keeper } from './keeper.ts'
import { askToLast } from './lasting.ts'
import { noticesOf } from './open-file.ts'
import { recover } from './recover.ts'
import type { Route } from './route.ts'
import { put, take } from './shelf.ts'
import { listen, tell } from './tidings.ts'

/** A job on the table, and what keeps it. */
export interface OnTable {
  readonly job: JobStore
  readonly keeper: Keeper
  /** Paths of fields that this version does not know: kept, and not understood. */
  readonly notices: readonly string[]
}

export type Opened = OnTable | Exclude<Found, { readonly kind: 'job' }>

/** The job of an address on the table for as long as one stays there; undefined while it is being fetched. */
export function useFound(desk: Desk<WorkCalls>, route: Route): Opened | undefined {
  const [opened, setOpened] = useState<Opened>()
  useEffect(() => {
    let keeper: Keeper | undefined
    let wanted = true
    const hidden = () => document.visibilityState === 'hidden' && keeper?.flush('out of sight')
    const left = () => keeper?.flush('for good')
    const stop = listen((tiding) => keeper?.hear(tiding))
    document.addEventListener('visibilitychange', hidden)
    addEventListener('pagehide', left)
    void recover()
      .catch(() => undefined)
      .then(() => (wanted ? find(desk, route) : undefined))
      .then((found) => {
        if (!found || !wanted) return
        if (found.kind !== 'job') return setOpened(found)
        const job = createJobStore(found.project, found.history)
        keeper = new Keeper(job, found.card, { put, take, tell }, placed)
        if (found.keep) void keeper.keepNow()
        setOpened({ job, keeper, notices: found.notices ?? noticesOf(found.card?.id) })
      })
    return () => {
      wanted = false
      stop()
      document.removeEventListener('visibilitychange', hidden)
      removeEventListener('pagehide', left)
      keeper?.end()
    }
  }, [desk, route])
  return opened
}

/** The address names the job from now on, without a step in the browser's history that leads back to making it. */
function placed(id: string): void {
  void askToLast()
  history.replaceState(history.state, '', `#job/${id}`)
}
