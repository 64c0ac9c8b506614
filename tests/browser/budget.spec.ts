import { gzipSync } from 'node:zlib'
import { expect, open, test } from './page.ts'

test.use({ serviceWorkers: 'allow' })

/** JavaScript that a visitor waits for before the first solid, packed: page and worker together, bytes. */
const budget = 180_000

test('the page and its worker stay within their budget', async ({ page, context }) => {
  const scripts = new Map<string, number>()
  context.on('response', async (response) => {
    if (!new URL(response.url()).pathname.endsWith('.js') || response.request().serviceWorker()) return
    scripts.set(response.url(), gzipSync(await response.body()).length)
  })
  await open(page, 'example')
  await page.waitForLoadState('networkidle')
  const names = [...scripts.keys()].map((url) => new URL(url).pathname)
  expect(names.some((n) => n.includes('bench.worker'))).toBe(true)
  expect(names.some((n) => /manifold|solid-scene|three-mf/.test(n))).toBe(false)
  const total = [...scripts.values()].reduce((sum, n) => sum + n, 0)
  expect(total).toBeLessThanOrEqual(budget)
})
