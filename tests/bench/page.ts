import { type ChildProcess, spawn } from 'node:child_process'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { type Browser, chromium, type Page, type Response } from '@playwright/test'
import { launchOptions } from '../run/browser.mjs'
import { freePort } from '../run/free-port.mjs'
import { row, summed } from './timed.ts'

/*
 * The built page in a headless browser that draws in software: how long a person waits. Times are taken inside the
 * page, from the event that a person causes to the frame in which the answer stands.
 */

/** The runner of this file gives functions their names by a helper that a page does not have. */
const named = { content: 'globalThis.__name = (f) => f' }

const root = join(import.meta.dirname, '..', '..')
const port = await freePort()
const address = `http://localhost:${port}/`
const server = spawn(
  process.execPath,
  [join(root, 'node_modules', 'vite', 'bin', 'vite.js'), 'preview', '--port', String(port), '--strictPort'],
  { cwd: root, stdio: 'ignore' },
)
try {
  await answering(address, server)
  const browser = await chromium.launch(launchOptions())
  await firstVerdict(browser)
  await typing(browser)
  await dragging(browser)
  await browser.close()
} finally {
  server.kill()
}

/** A visitor without anything kept: from the navigation to the frame with the verdict. */
async function firstVerdict(browser: Browser): Promise<void> {
  const times: number[] = []
  let bytes = 0
  for (let i = 0; i < 9; i++) {
    const context = await browser.newContext({ viewport: { width: 1280, height: 800 } })
    const page = await context.newPage()
    await page.addInitScript(named)
    const scripts = new Map<string, number>()
    const read: Promise<void>[] = []
    const weigh = async (r: Response) => void scripts.set(r.url(), gzipSync(await r.body()).length)
    context.on('response', (r) => {
      // What the copy for offline use fetches is not waited for.
      if (new URL(r.url()).pathname.endsWith('.js') && !r.request().serviceWorker()) read.push(weigh(r))
    })
    await page.addInitScript(() => {
      const look = () => {
        if (document.querySelector('#verdict-word')) Object.assign(globalThis, { verdictAt: performance.now() })
        else requestAnimationFrame(look)
      }
      requestAnimationFrame(look)
    })
    await page.goto(`${address}#example`)
    await page.locator('#verdict-word').waitFor()
    // Not by a function that waits: the page's policy forbids what Playwright makes of it.
    let at: number | undefined
    while (at === undefined) {
      await page.waitForTimeout(20)
      at = await page.evaluate(() => Reflect.get(globalThis, 'verdictAt') as unknown as number | undefined)
    }
    times.push(at)
    await page.waitForLoadState('networkidle')
    await Promise.all(read)
    bytes = [...scripts.values()].reduce((sum, n) => sum + n, 0)
    await context.close()
  }
  row('page: first verdict after the navigation', summed(times), 'target ≤ 1000 ms')
  console.log(`page: JavaScript before the solid view, packed: ${(bytes / 1000).toFixed(1)} kB  target ≤ 180 kB`)
}

/** Every keystroke in the bore's field gives another number; the answer to it is drawn. */
async function typing(browser: Browser): Promise<void> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } })
  await page.addInitScript(named)
  await page.goto(`${address}#example`)
  await page.locator('#verdict-word').waitFor()
  const bore = page.getByRole('textbox', { name: 'Bore ⌀', exact: true })
  await bore.click()
  await page.evaluate(() => {
    const answer = document.querySelector('#answer') as Element
    const waits: number[] = []
    Object.assign(globalThis, { waits })
    let typedAt: number | undefined
    document.addEventListener('input', () => (typedAt = performance.now()), true)
    new MutationObserver(() => {
      if (answer.getAttribute('aria-busy') !== 'false' || typedAt === undefined) return
      waits.push(performance.now() - typedAt)
      typedAt = undefined
    }).observe(answer, { attributes: true, attributeFilter: ['aria-busy'] })
  })
  for (let i = 0; i < 130; i++) {
    await page.keyboard.press('End')
    await page.keyboard.press(i % 2 === 0 ? String(1 + (i % 9)) : 'Backspace')
    await page.waitForTimeout(120)
  }
  const waits = await page.evaluate(() => Reflect.get(globalThis, 'waits') as unknown as number[])
  row('page: a keystroke to its verdict', summed(waits.slice(20)), 'target p95 ≤ 50 ms')
  await page.close()
}

/** A part of the largest demo is drawn to and fro along the hilt; the time from frame to frame. */
async function dragging(browser: Browser): Promise<void> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } })
  await page.addInitScript(named)
  await page.goto(`${address}#demo/ferry-lantern`)
  const board = page.getByRole('slider', { name: 'sound board: move along the hilt' })
  await board.waitFor()
  await page.locator('.strip-unrolled').waitFor()
  const box = await board.boundingBox()
  if (!box) throw new Error('no board in the section')
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  await moveFor(page, x, y, 1000)
  await page.evaluate(() => {
    const frames: number[] = []
    Object.assign(globalThis, { frames })
    const each = (t: number) => {
      frames.push(t)
      requestAnimationFrame(each)
    }
    requestAnimationFrame(each)
  })
  await moveFor(page, x, y, 4000)
  const frames = await page.evaluate(() => Reflect.get(globalThis, 'frames') as unknown as number[])
  await page.mouse.up()
  const steps = frames.slice(1).map((t, i) => t - (frames[i] as number))
  const rate = (1000 * steps.length) / ((frames.at(-1) as number) - (frames[0] as number))
  row('page: frame to frame while a part is dragged', summed(steps), `${rate.toFixed(1)} frames/s, target ≥ 50`)
  await page.close()
}

async function moveFor(page: Page, x: number, y: number, ms: number): Promise<void> {
  const end = performance.now() + ms
  for (let i = 0; performance.now() < end; i++) {
    await page.mouse.move(x + 40 * Math.sin(i / 12), y)
    await page.waitForTimeout(8)
  }
}

async function answering(url: string, by: ChildProcess): Promise<void> {
  for (let tries = 0; tries < 100; tries++) {
    if (by.exitCode !== null) throw new Error('the page could not be served: is it built?')
    const there = await fetch(url).then(
      (r) => r.ok,
      () => false,
    )
    if (there) return
    await new Promise((done) => setTimeout(done, 100))
  }
  throw new Error('the page is not served')
}
