/** A worker of the page's own that stands by to answer without a network, as far as it is asked here. */
type Copy = EventTarget & Pick<ServiceWorker, 'state' | 'postMessage'>

interface Registered extends EventTarget {
  readonly installing: Copy | null
  readonly waiting: Copy | null
}

/** Where copies are registered; a browser without them, or one that was told to block them, gives none. */
export interface Copies extends EventTarget {
  readonly controller: unknown
  register(url: string): Promise<Registered | undefined>
}

/**
 * Has the browser keep the page for use without a network. A newer one waits; `onNewer` gets what loads it. Where it
 * cannot be kept the page works on without.
 */
export async function keepCopy(
  copies: Copies | undefined,
  page: { reload(): void },
  onNewer: (load: () => void) => void,
): Promise<void> {
  const registered = await copies?.register('./sw.js').catch(() => undefined)
  if (!copies || !registered) return
  const load = () => {
    // Another tab may have said yes: then the newer one answers already.
    if (!registered.waiting) return page.reload()
    copies.addEventListener('controllerchange', () => page.reload(), { once: true })
    registered.waiting.postMessage({ type: 'SKIP_WAITING' })
  }
  const offer = () => {
    // At the first visit there is no older one to be replaced.
    if (registered.waiting && copies.controller) onNewer(load)
  }
  const follow = () => registered.installing?.addEventListener('statechange', offer)
  offer()
  follow()
  registered.addEventListener('updatefound', follow)
}
