import type { StepName } from './view-store.ts'

/** What the steps are called. */
export const stepWords: Readonly<Record<StepName, string>> = {
  measure: 'Measure',
  fill: 'Fill',
  sled: 'Sled',
  print: 'Print',
}
