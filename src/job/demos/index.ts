import pierLantern from './pier-lantern.json' with { type: 'json' }

/** A project to try the program on: invented data, and said to be so in the file. */
export interface Demo {
  /** What it is asked for by: kebab-case. */
  readonly name: string
  readonly title: string
  /** As a project file holds it; read it like any other. */
  readonly project: unknown
}

/** In the order in which they are listed; the first is the one that `npm start` runs. */
export const demos: readonly Demo[] = [{ name: 'pier-lantern', title: 'Everything goes in', project: pierLantern }]
