/**
 * Keeps the page for use without a network, and calls back with the way to load a newer one once it is there. In every
 * tab that offers it: when one of them takes it, the files of the others are gone.
 */
export function keepPage(onNewer: (load: () => void) => void): void {
  // There is none while developing, and none where the page does not come over a safe line.
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return
  const { serviceWorker } = navigator
  const offer = (waiting: ServiceWorker | null) => {
    // The first one of all has nothing to take the place of.
    if (!waiting || !serviceWorker.controller) return
    serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true })
    onNewer(() => waiting.postMessage({ type: 'SKIP_WAITING' }))
  }
  serviceWorker
    .register('./sw.js')
    .then((registration) => {
      offer(registration.waiting)
      registration.addEventListener('updatefound', () => {
        const coming = registration.installing
        coming?.addEventListener('statechange', () => coming.state === 'installed' && offer(coming))
      })
    })
    // Refused by the browser: the page then works as long as there is a network.
    .catch(() => undefined)
}
