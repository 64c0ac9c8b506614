import { say } from './run.mjs'

/** How often we look whether npm is still there, ms. */
const LOOK = 500

/**
 * Serves the built page until the process is ended. In this process, not in a child of it: a child would go on listening
 * after its parent is killed. The port is vite's usual one for built pages, or the next that is free.
 * @param {string} root the project's folder
 */
export async function servePage(root) {
  const { preview } = await import('vite')
  const server = await preview({ root, logLevel: 'warn' })
  say(`The page is at ${server.resolvedUrls?.local[0]} (Ctrl-C ends it).`)
  if (process.env.npm_lifecycle_event !== undefined) endWithParent()
}

/** npm passes a signal on to the shell between it and us, and the shell does not pass it on. */
function endWithParent() {
  const parent = process.ppid
  setInterval(() => process.ppid !== parent && process.exit(), LOOK)
}
