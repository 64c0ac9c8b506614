import type { Cursor } from '../work/view-store.ts'
import { useView, useWork } from '../work/work-context.ts'

/** The cursor; at the tightest place until somebody moves it. */
export function useCursor(): Cursor {
  const { judged } = useWork()
  const cursor = useView((v) => v.cursor)
  if (cursor) return cursor
  const tightest = judged.report?.findings.find((f) => f.status !== 'advice' && f.at)?.at
  const middle = judged.views ? (judged.views.lengthwise.z0 + judged.views.lengthwise.z1) / 2 : 0
  return { z: tightest?.z ?? middle, theta: tightest?.theta ?? 0 }
}
