import type { Outcome } from '../problem/problem.ts'
import type { Read } from '../project/read.ts'
import type { Project } from '../project/schema/project.ts'

/** The parts of the worker that are fetched when the first link is made or read. */
export interface LinkTools {
  readonly codec: () => Promise<{
    readonly packed: (text: string) => string
    readonly unpacked: (data: string) => Outcome<string>
  }>
  readonly reader: () => Promise<(text: string) => Outcome<Read>>
}

/** Jobs as links. Here and not in the page, so that a hostile link can only hold up a worker, which is replaced. */
export class LinkBench {
  readonly #tools: LinkTools

  constructor(tools: LinkTools) {
    this.#tools = tools
  }

  /** The end of a link that holds the whole job. */
  async link(project: Project): Promise<string> {
    return (await this.#tools.codec()).packed(JSON.stringify(project))
  }

  /** The job that a link holds, read like any file. */
  async unlink(data: string): Promise<Outcome<Read>> {
    const text = (await this.#tools.codec()).unpacked(data)
    return text.ok ? (await this.#tools.reader())(text.value) : text
  }
}
