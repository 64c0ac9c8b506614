import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { capture, say } from '../../src/start/run.mjs'
import { onPath } from './path.mjs'

/** The browser of the operating system that the browser tests drive, or undefined to let Playwright use its own. */
export function systemBrowser() {
  return onPath('chromium')
}

/** How a test or a bench starts its browser. */
export function launchOptions() {
  const executablePath = systemBrowser()
  return {
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
  }
}

/** Whether the browser tests have a browser: the system's or Playwright's own. */
export async function hasBrowser() {
  if (systemBrowser() !== undefined) return true
  const { chromium } = await import('@playwright/test')
  return existsSync(chromium.executablePath())
}

/**
 * Fetches Playwright's own Chromium.
 * @param {string} root the project's folder
 * @returns {number} exit code
 */
export function installPlaywrightBrowser(root) {
  say('Installing a browser for the browser tests (playwright install chromium; about a minute) …')
  const cli = join(root, 'node_modules', '@playwright', 'test', 'cli.js')
  const { code, output } = capture(process.execPath, [cli, 'install', 'chromium'])
  if (code !== 0) {
    say(output.trimEnd())
    say(`No browser could be installed: playwright install chromium ended with code ${code}.`)
  }
  return code
}
