import { defineConfig } from '@playwright/test'
import { launchOptions } from './tests/run/browser.mjs'
import { freePort } from './tests/run/free-port.mjs'

// Playwright reads this file once a worker: the port chosen first is handed down through the environment.
process.env.SLEDWRIGHT_PORT ??= String(await freePort())
const port = process.env.SLEDWRIGHT_PORT
const address = `http://localhost:${port}/`

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
    launchOptions: launchOptions(),
  },
  webServer: {
    // Not through npx: ending a wrapper leaves the server behind it listening.
    command: `node node_modules/vite/bin/vite.js preview --port ${port} --strictPort`,
    url: address,
    reuseExistingServer: false,
  },
})
