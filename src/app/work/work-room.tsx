import '../keeping/keeping.css'
import { useMemo } from 'react'
import type { Desk } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { JobsPage } from '../keeping/jobs-page.tsx'
import { KeepingContext } from '../keeping/keeping-context.ts'
import { NothingHere } from '../keeping/nothing-here.tsx'
import { type Route, routeOf } from '../keeping/route.ts'
import { useFound } from '../keeping/use-found.ts'
import WorkPage from './work-page.tsx'

export interface WorkRoomProps {
  readonly desk: Desk<WorkCalls>
  /** What stands behind the "#". */
  readonly address: string
}

/** Where whole jobs are: the list of them, and the one that the address names on the table. */
export default function WorkRoom({ desk, address }: WorkRoomProps) {
  const route = useMemo(() => routeOf(address), [address])
  return route.kind === 'jobs' ? <JobsPage desk={desk} /> : <Table desk={desk} route={route} />
}

function Table({ desk, route }: { readonly desk: Desk<WorkCalls>; readonly route: Route }) {
  const opened = useFound(desk, route)
  if (!opened) return <p className="fetching soft">Fetching the job …</p>
  if ('kind' in opened) return <NothingHere found={opened} />
  return (
    <KeepingContext value={opened}>
      <WorkPage desk={desk} job={opened.job} />
    </KeepingContext>
  )
}
