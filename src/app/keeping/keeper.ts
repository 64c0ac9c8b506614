import { createStore } from 'zustand/vanilla'
import type { JobStore } from '../work/job-store.ts'
import { freshStamp, type JobCard, type JobContents, type KeptJob, nameOf, nextCard, withName } from './kept-job.ts'
import { forgetWords, leaveWords } from './last-words.ts'
import type { MayWrite, Seen } from './revision.ts'
import type { Tiding } from './tidings.ts'

/** How the job on the table stands to what is kept. */
export type Standing =
  /** A demo, or the job of a link: kept once something of it is changed. */
  | { readonly kind: 'untouched' }
  | { readonly kind: 'kept'; readonly at: number }
  | { readonly kind: 'waiting' }
  | { readonly kind: 'failed'; readonly full: boolean; readonly message: string }
  /** Another tab has done something to it: nothing is written until the person has chosen. */
  | { readonly kind: 'elsewhere'; readonly what: 'changed' | 'deleted' }

/** Where jobs are kept and who hears of it. */
export interface Keep {
  readonly put: (card: JobCard, contents: JobContents, seen: readonly string[]) => Promise<MayWrite>
  readonly take: (id: string) => Promise<KeptJob | undefined>
  readonly tell: (tiding: Tiding) => void
}

/** A change is written this soon, ms: more of them may come, and 300 are promised. */
const soon = 150
/** Where it could not be written it is tried again, ms. */
const later = 5000

/** Writes the job on the table whenever it has changed, and never over another tab's work. */
export class Keeper {
  readonly standing
  readonly #job: JobStore
  readonly #keep: Keep
  #id: string | undefined
  /** Under which it will be kept first. */
  #wanted = freshStamp()
  #seen: Seen | undefined
  /** What the last finished writing held. */
  #written: JobContents['project']
  #underWay: string | undefined
  /** Last words that a finished writing makes needless, and whose they are. */
  #left: { readonly stamp: string; readonly project: JobContents['project'] } | undefined
  #timer: ReturnType<typeof setTimeout> | undefined
  readonly #placed: (id: string) => void
  #ended = false
  readonly #stop: () => void

  /** `placed` is told under which id the job is kept from now on. */
  constructor(job: JobStore, kept: JobCard | undefined, keep: Keep, placed: (id: string) => void) {
    this.#job = job
    this.#keep = keep
    this.#id = kept?.id
    this.#seen = kept
    this.#written = job.get()
    this.#placed = placed
    this.standing = createStore<Standing>()(() => (kept ? { kind: 'kept', at: kept.written } : { kind: 'untouched' }))
    this.#stop = job.subscribe(() => this.#changed())
  }

  get id(): string | undefined {
    return this.#id
  }

  /**
   * Writes what is not written yet, and leaves it where a page that goes away can still leave it. While nothing may be
   * written it is left only for good: whoever comes next finds it as a job of its own.
   */
  flush(goes: 'out of sight' | 'for good'): void {
    const project = this.#job.get()
    const held = this.standing.getState().kind === 'elsewhere'
    if (!this.#dirty() || this.#left?.project === project || (held && goes === 'out of sight')) return
    const stamp = freshStamp()
    // One at a time: of two, the older would be taken for another tab's work.
    this.#forget()
    leaveWords({ id: this.#id ?? this.#wanted, stamp, on: this.#builtOn(), ...this.#contents() })
    this.#left = { stamp, project }
    if (!held) void this.#write(stamp)
  }

  /** Writes the job even if nothing of it was changed. */
  keepNow(): Promise<void> {
    if (this.standing.getState().kind === 'untouched') this.standing.setState({ kind: 'waiting' }, true)
    return this.#write(freshStamp())
  }

  /** What another tab tells. */
  hear({ id, stamp }: Tiding): void {
    if (id !== this.#id || stamp === this.#seen?.stamp || (stamp !== undefined && stamp === this.#underWay)) return
    this.#elsewhere(stamp === undefined ? 'deleted' : 'changed')
  }

  /** Puts the other tab's work on the table; what stood there is gone. */
  async takeTheirs(): Promise<void> {
    const kept = this.#id === undefined ? undefined : await this.#keep.take(this.#id)
    if (!kept) return this.#elsewhere('deleted')
    this.#forget()
    this.#seen = kept.card
    this.#written = kept.contents.project
    this.#job.replace(kept.contents.project, kept.contents.history)
    this.standing.setState({ kind: 'kept', at: kept.card.written }, true)
  }

  /** Goes on with what stands here as a job of its own. */
  async keepAsCopy(): Promise<void> {
    this.#forget()
    this.#id = undefined
    this.#wanted = freshStamp()
    this.#seen = undefined
    this.standing.setState({ kind: 'waiting' }, true)
    this.#job.edit((p) => withName(p, `${nameOf(p).slice(0, 110)} (copy)`))
    await this.keepNow()
  }

  end(): void {
    this.#stop()
    this.#ended = true
    this.flush('for good')
    clearTimeout(this.#timer)
  }

  #changed(): void {
    if (this.standing.getState().kind === 'elsewhere' || !this.#dirty()) return
    if (this.standing.getState().kind !== 'failed') this.standing.setState({ kind: 'waiting' }, true)
    this.#after(soon)
  }

  #after(wait: number): void {
    this.#timer ??= setTimeout(() => {
      this.#timer = undefined
      void this.#write(freshStamp())
    }, wait)
  }

  async #write(stamp: string): Promise<void> {
    // The next one begins when this has ended: each builds on the one before.
    if (this.#underWay !== undefined) return
    clearTimeout(this.#timer)
    this.#timer = undefined
    const on = this.#builtOn()
    this.#underWay = stamp
    const contents = this.#contents()
    const id = this.#id ?? this.#wanted
    const card = nextCard(id, contents.project, this.#seen, stamp, Date.now())
    try {
      const may = await this.#keep.put(card, contents, on)
      this.#underWay = undefined
      if (may === 'changed' || may === 'deleted') return this.#elsewhere(may)
    } catch (error) {
      this.#underWay = undefined
      return this.#failed(error)
    }
    const first = this.#id !== id
    this.#id = id
    this.#seen = card
    this.#written = contents.project
    this.#keep.tell({ id, stamp })
    // Whoever has gone elsewhere is not to find this job's address there.
    if (first && !this.#ended) this.#placed(id)
    if (this.#dirty()) return this.#after(soon)
    this.#forget()
    this.standing.setState({ kind: 'kept', at: card.written }, true)
  }

  #failed(error: unknown): void {
    const full = error instanceof DOMException && error.name === 'QuotaExceededError'
    const message = error instanceof Error ? error.message : String(error)
    this.standing.setState({ kind: 'failed', full, message }, true)
    this.#after(later)
  }

  #elsewhere(what: 'changed' | 'deleted'): void {
    clearTimeout(this.#timer)
    this.#timer = undefined
    this.standing.setState({ kind: 'elsewhere', what }, true)
  }

  #forget(): void {
    if (this.#left) forgetWords(this.#left.stamp)
    this.#left = undefined
  }

  #dirty(): boolean {
    return this.#job.get() !== this.#written
  }

  #contents(): JobContents {
    const { pastStates, futureStates } = this.#job.history.getState()
    // Copies: the lists of the store itself change in place before the database has taken them in.
    return { project: this.#job.get(), history: { past: [...pastStates], future: [...futureStates] } }
  }

  #builtOn(): string[] {
    return [this.#seen?.stamp, this.#underWay].filter((stamp) => stamp !== undefined)
  }
}
