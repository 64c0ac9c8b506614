import { FindingsList } from '../findings/findings-list.tsx'
import { useView, useWork } from './work-context.ts'

/** What was found, tightest first. */
export function FindingsPanel() {
  const { view, judged } = useWork()
  const selected = useView((v) => v.finding)
  const { report } = judged
  if (!report) return undefined
  return (
    <FindingsList
      findings={report.findings}
      notChecked={report.notChecked}
      assumptions={report.assumptions}
      selected={selected ?? undefined}
      onSelect={(id) => {
        const at = report.findings.find((f) => f.id === id)?.at
        view.setState({ finding: id ?? null, ...(at && { cursor: { z: at.z, theta: at.theta } }) })
      }}
      actions={{ apply: () => undefined, goTo: () => undefined, placeName: (path) => path }}
    />
  )
}
