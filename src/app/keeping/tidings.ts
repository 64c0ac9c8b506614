/** What one tab tells the others of a job. */
export interface Tiding {
  readonly id: string
  /** Of the writing; undefined where the job was deleted. */
  readonly stamp: string | undefined
}

const name = 'sledwright-jobs'

/** Tells the other tabs. */
export function tell(tiding: Tiding): void {
  const channel = new BroadcastChannel(name)
  channel.postMessage(tiding)
  channel.close()
}

/** Hears what other tabs tell, until the returned function is called. */
export function listen(hear: (tiding: Tiding) => void): () => void {
  const channel = new BroadcastChannel(name)
  channel.onmessage = (event: MessageEvent<Tiding>) => hear(event.data)
  return () => channel.close()
}
