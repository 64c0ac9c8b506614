import type { StepName } from '../work/view-store.ts'

/** Which step has the fields of each list. */
const owners: Readonly<Record<string, StepName>> = {
  hilts: 'measure',
  sections: 'measure',
  joints: 'measure',
  features: 'measure',
  sleeves: 'measure',
  screws: 'measure',
  parts: 'fill',
  wires: 'fill',
  sleds: 'sled',
  insertions: 'fill',
  states: 'fill',
  thresholds: 'sled',
  printer: 'print',
}

/** The step in which a path of the project is typed; undefined for what no step asks. */
export const stepOf = (path: string): StepName | undefined => owners[path.split('/')[0] ?? '']
