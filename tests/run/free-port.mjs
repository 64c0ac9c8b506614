import { createServer } from 'node:net'

/**
 * A port that nobody listens on at this moment.
 * @returns {Promise<number>}
 */
export function freePort() {
  return new Promise((resolve, reject) => {
    const probe = createServer()
    probe.once('error', reject)
    probe.listen(0, 'localhost', () => {
      const found = probe.address()
      probe.close(() =>
        found !== null && typeof found === 'object' ? resolve(found.port) : reject(new Error('no port')),
      )
    })
  })
}
