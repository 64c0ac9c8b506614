import { createServer } from 'node:net'
import { defineConfig } from '@playwright/test'
import { systemBrowser } from './tests/run/browser.mjs'

// Playwright reads this file once a worker: the port chosen first is handed down through the environment.
process.env.SLEDWRIGHT_PORT ??= String(await freePort())
const port = process.env.SLEDWRIGHT_PORT
const address = `http://localhost:${port}/`
const executablePath = systemBrowser()

export default defineConfig({
  testDir: 'tests/browser',
  testMatch: '**/*.spec.ts',
  forbidOnly: process.env.CI !== undefined,
  retries: 0,
  workers: 2,
  fullyParallel: true,
  snapshotPathTemplate: '{testDir}/pictures/{testFileName}/{arg}{ext}',
  // Two browsers that draw in software, the kernel and the kept files share two cores: what takes two seconds alone
  // may take fifteen. The limits tell a page that hangs from one that is slow, nothing else.
  timeout: 120_000,
  expect: { timeout: 20_000, toHaveScreenshot: { maxDiffPixelRatio: 0.01 } },
  use: {
    baseURL: address,
    // A trace of every test costs as much as some tests; `npx playwright test --trace on` makes them where one is wanted.
    screenshot: 'only-on-failure',
    // Each test is a first visit, at which the whole page is fetched once more to be kept: only where that is looked at.
    serviceWorkers: 'block',
    launchOptions: {
      ...(executablePath === undefined ? {} : { executablePath }),
      // Software drawing gives the same picture on every run; the rest keeps the browser from calling home.
      args: [
        '--no-sandbox',
        '--use-angle=swiftshader',
        // Solids are drawn by the software's WebGL; the page itself is put together without that detour, at half the cost.
        '--disable-gpu-compositing',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  webServer: {
    // Not through npx: ending a wrapper leaves the server behind it listening.
    command: `node node_modules/vite/bin/vite.js preview --port ${port} --strictPort`,
    url: address,
    reuseExistingServer: false,
  },
})

/** A port that nobody listens on at this moment. */
function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer()
    server.once('error', reject)
    server.listen(0, 'localhost', () => {
      const found = server.address()
      server.close(() =>
        found !== null && typeof found === 'object' ? resolve(found.port) : reject(new Error('no port')),
      )
    })
  })
}
