import { say } from './run.mjs'

/**
 * Serves the built page until the process is ended. In this process, not in a child of it: a child would go on listening
 * after its parent is killed. The port is vite's usual one for built pages, or the next that is free.
 * @param {string} root the project's folder
 */
export async function servePage(root) {
  const { preview } = await import('vite')
  const server = await preview({ root, logLevel: 'warn' })
  say(`The page is at ${server.resolvedUrls?.local[0]} (Ctrl-C ends it).`)
}
