import { SheetMark } from '../sheet/sheet-mark.tsx'
import { ProblemTable } from './problem-table.tsx'
import type { Opened } from './use-found.ts'
import { WaysOn } from './ways-on.tsx'

/** The address led to no job: why, and where to go instead. */
export function NothingHere({ found }: { readonly found: Extract<Opened, { readonly kind: string }> }) {
  return (
    <main className="page-plain">
      <p className="plain-mark">
        <SheetMark /> Sledwright
      </p>
      {found.kind === 'nothing' ? (
        <>
          <h1>No job at this address</h1>
          <p>{found.why}</p>
        </>
      ) : (
        <>
          <h1>{found.what} cannot be opened</h1>
          <p>Nothing of it was changed or kept.</p>
          <ProblemTable problems={found.problems} />
        </>
      )}
      <WaysOn />
    </main>
  )
}
