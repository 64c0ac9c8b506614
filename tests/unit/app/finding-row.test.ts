import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { FindingRow } from '../../../src/app/findings/finding-row.tsx'
import type { Finding } from '../../../src/checks/finding.ts'
import { answerTo, demo } from '../job/demo-answer.ts'

const { findings } = answerTo(demo('weir-lantern'))
const [clash, clear] = ['clash', 'clear'].map((s) => findings.find((f) => f.status === s)) as [Finding, Finding]

function row(finding: Finding, trying: boolean): string {
  const actions = { apply: () => undefined, goTo: () => undefined, placeName: (path: string) => path }
  const scale = { from: -1, to: 1 }
  return renderToStaticMarkup(
    createElement(FindingRow, { finding, scale, open: true, onToggle: () => undefined, actions, trying }),
  )
}

describe('what helps, while it is being tried', () => {
  const words = 'Numbers that might help are being tried'

  it('says so beside what fails, also where nothing helps yet', () => {
    expect(row({ ...clash, fix: [] }, true)).toMatch(new RegExp(`What helps.*${words}`))
    expect(row(clash, true)).toContain(words)
  })

  it('says nothing where all has been tried, or nothing fails', () => {
    expect(row(clash, false)).not.toContain(words)
    expect(row({ ...clear, fix: [] }, true)).not.toContain('What helps')
  })
})
