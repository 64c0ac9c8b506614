import type { Reply } from '../../worker/desk.ts'

/**
 * A worker that is ended takes requests with it that were not to blame. Such a request is asked anew, once for each
 * of the patiences (ms). Gives the last reply there was; undefined where nobody wants it any more.
 */
export async function askedAgain<T>(
  ask: (patience: number) => Promise<Reply<T>>,
  patiences: readonly number[],
  wanted: () => boolean,
): Promise<Reply<T> | undefined> {
  let reply: Reply<T> | undefined
  for (const patience of patiences) {
    if (!wanted()) return undefined
    reply = await ask(patience)
    if (reply.kind === 'done' || reply.kind === 'overtaken') break
  }
  return wanted() ? reply : undefined
}
