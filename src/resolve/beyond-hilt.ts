import type { Ends } from './heights.ts'
import type { Section } from './metal.ts'

interface Beyond {
  readonly end: 'rear' | 'blade'
  readonly got: string
  readonly hilt: string
}

/** Where something reaches past the sections of its hilt by more than so much, mm. */
export function beyondHilt(sections: readonly Section[], { rear, blade }: Ends, slack: number): Beyond | undefined {
  const z0 = Math.min(...sections.map((s) => s.ends.rear.nominal))
  const z1 = Math.max(...sections.map((s) => s.ends.blade.nominal))
  const behind = rear.nominal < z0 - slack
  if (sections.length === 0 || !(behind || blade.nominal > z1 + slack)) return undefined
  const span = (a: number, b: number) => `z ${a.toFixed(1)} to ${b.toFixed(1)}`
  return { end: behind ? 'rear' : 'blade', got: span(rear.nominal, blade.nominal), hilt: span(z0, z1) }
}
