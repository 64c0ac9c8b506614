/** Fetches when it is first asked for, and keeps what came; a fetch that failed may be tried again. */
export function fetchedOnce<T>(fetch: () => Promise<T>): () => Promise<T> {
  let kept: Promise<T> | undefined
  return () => {
    kept ??= fetch().catch((error: unknown) => {
      kept = undefined
      throw error
    })
    return kept
  }
}
