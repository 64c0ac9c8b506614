/**
 * Whether something is there in a state. A list names the states in which it is; entries with "!" name those in
 * which it is not; no list means always.
 */
export function isThere(states: readonly string[] | undefined, state: string): boolean {
  if (!states || states.length === 0) return true
  const except = states.filter((s) => s.startsWith('!'))
  if (except.length === states.length) return !except.includes(`!${state}`)
  return states.includes(state)
}
