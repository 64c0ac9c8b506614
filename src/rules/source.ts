/** Where a rule's numbers come from, and how that is known. */
export type How = 'read' | 'from memory' | 'computed' | 'common practice, no source'

export interface Source {
  readonly text: string
  readonly how: How
}
