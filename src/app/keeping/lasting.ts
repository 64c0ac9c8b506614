const key = 'sledwright-asked-to-last'

/** Asks the browser once not to clear the jobs when it is short of room. Some answer alone, some ask the person. */
export async function askToLast(): Promise<void> {
  try {
    if (localStorage.getItem(key) !== null || (await navigator.storage.persisted())) return
    localStorage.setItem(key, 'yes')
    await navigator.storage.persist()
  } catch {
    // The jobs are kept all the same, for as long as the browser likes.
  }
}
