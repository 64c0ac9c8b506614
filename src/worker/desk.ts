/** What became of a request. */
export type Reply<T> =
  | { readonly kind: 'done'; readonly value: T }
  /** A newer one of the same lane took its place. */
  | { readonly kind: 'overtaken' }
  /** It took longer than it may; the worker was ended and replaced. */
  | { readonly kind: 'stuck'; readonly afterMs: number }
  /** The worker failed: a bug, or it could not be loaded. */
  | { readonly kind: 'broken'; readonly message: string }

/** The calls of another thread: each answers later, with what the call itself returns. */
export type Far<Calls> = {
  readonly [K in keyof Calls]: Calls[K] extends (...args: infer A) => infer R
    ? (...args: A) => Promise<Awaited<R>>
    : never
}

/** A worker with the calls it answers. `end` stops it at once, whatever it does. */
export interface Hand<Calls> {
  readonly calls: Far<Calls>
  readonly end: () => void
  /** Called when the worker as a whole fails. */
  readonly onFailure: (tell: (message: string) => void) => void
}

interface Waiting {
  readonly run: () => void
  readonly overtake: () => void
}

/**
 * The page's side of the worker. Requests go in lanes ("check", "draw" …): in a lane one is worked on and at most one
 * waits, the latest; whatever it overtakes is told so. A request that takes too long ends the worker, and the next
 * one gets a new worker.
 */
export class Desk<Calls> {
  readonly #hire: () => Hand<Calls>
  #hand: Hand<Calls> | undefined
  readonly #busy = new Set<string>()
  readonly #waiting = new Map<string, Waiting>()
  readonly #open = new Set<(reply: Reply<never>) => void>()

  constructor(hire: () => Hand<Calls>) {
    this.#hire = hire
  }

  /** Starts the worker before it is needed. */
  warm(): void {
    this.#ready()
  }

  ask<T>(lane: string, patienceMs: number, call: (calls: Far<Calls>) => Promise<T>): Promise<Reply<T>> {
    return new Promise((resolve) => {
      const run = () => this.#work(lane, patienceMs, call, resolve)
      if (!this.#busy.has(lane)) return run()
      this.#waiting.get(lane)?.overtake()
      this.#waiting.set(lane, { run, overtake: () => resolve({ kind: 'overtaken' }) })
    })
  }

  /** Ends the worker; open requests are told that they were overtaken. */
  close(): void {
    for (const w of this.#waiting.values()) w.overtake()
    this.#waiting.clear()
    this.#replace({ kind: 'overtaken' })
  }

  #work<T>(
    lane: string,
    patienceMs: number,
    call: (calls: Far<Calls>) => Promise<T>,
    resolve: (reply: Reply<T>) => void,
  ): void {
    this.#busy.add(lane)
    let settled = false
    const settle = (reply: Reply<T>) => {
      if (settled) return
      settled = true
      clearTimeout(timer)
      this.#open.delete(settle)
      this.#busy.delete(lane)
      // What a newer request has already overtaken is not shown for a moment first.
      resolve(this.#waiting.has(lane) && reply.kind === 'done' ? { kind: 'overtaken' } : reply)
      this.#next(lane)
    }
    const timer = setTimeout(() => this.#replace({ kind: 'stuck', afterMs: patienceMs }), patienceMs)
    this.#open.add(settle)
    let hand: Hand<Calls>
    try {
      hand = this.#ready()
    } catch (error) {
      return settle({ kind: 'broken', message: said(error) })
    }
    call(hand.calls).then(
      (value) => settle({ kind: 'done', value }),
      (error: unknown) => settle({ kind: 'broken', message: said(error) }),
    )
  }

  #next(lane: string): void {
    const waiting = this.#waiting.get(lane)
    this.#waiting.delete(lane)
    waiting?.run()
  }

  #ready(): Hand<Calls> {
    if (this.#hand) return this.#hand
    const hand = this.#hire()
    hand.onFailure((message) => {
      if (this.#hand === hand) this.#replace({ kind: 'broken', message })
    })
    this.#hand = hand
    return hand
  }

  #replace(reply: Reply<never>): void {
    this.#hand?.end()
    this.#hand = undefined
    // Whoever waited begins anew while the others are told: only those that were open hear of this end.
    const open = Array.from(this.#open)
    for (const settle of open) settle(reply)
  }
}

const said = (error: unknown): string => (error instanceof Error ? error.message : String(error))
