import type { Mark } from '../drawing/lengthwise-section.tsx'
import { LengthwiseSection } from '../drawing/lengthwise-section.tsx'
import { useView, useWork } from './work-context.ts'

/** The strips on one ruler. */
export function Strips() {
  const { view, judged } = useWork()
  const { views, report } = judged
  const cursor = useView((v) => v.cursor)
  if (!views) return undefined
  const tightest = report?.findings.find((f) => f.status !== 'advice' && f.at)
  const marks: Mark[] = tightest?.at ? [{ at: tightest.at, tone: tightest.status }] : []
  const z = cursor?.z ?? views.cross.z
  return (
    <section className="drawing-sheet" aria-label="Strips along the hilt">
      <LengthwiseSection
        view={views.lengthwise}
        z={z}
        onZ={(to) => view.setState({ cursor: { z: to, theta: cursor?.theta ?? 0 } })}
        marks={marks}
      />
    </section>
  )
}
