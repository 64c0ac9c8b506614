import type { Page } from '@playwright/test'
import { expect, test } from './page.ts'
import { unlike } from './same-picture.ts'

/** A demo on the work page, judged. */
async function table(page: Page, name: string): Promise<void> {
  await page.goto(`./#demo/${name}`)
  await expect(page.getByRole('heading', { name: 'Solid' })).toBeVisible()
}

const canvas = (page: Page) => page.locator('.hilt-canvas canvas')

async function show(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Show the solid' }).click()
  await expect(canvas(page)).toBeVisible()
  await page.waitForTimeout(800)
}

async function pushing(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Push it in' }).click()
  await expect(page.getByRole('img', { name: /^Least gap on the way in/ })).toBeVisible()
}

const withoutWebGl = (page: Page) =>
  page.addInitScript(() => {
    const real = Object.getOwnPropertyDescriptor(HTMLCanvasElement.prototype, 'getContext')?.value
    Object.defineProperty(HTMLCanvasElement.prototype, 'getContext', {
      value(this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
        return /webgl|webgpu/.test(kind) ? null : Reflect.apply(real, this, [kind, ...rest])
      },
    })
  })

test('pushed in by keys, the sled stops where it first comes against the thread, and goes past by leave', async ({
  page,
}) => {
  await table(page, 'weir-lantern')
  await pushing(page)
  const slider = page.getByRole('slider', { name: 'Sled into the body' })
  await page.getByRole('button', { name: 'Draw it out' }).click()
  await expect(slider).toHaveAttribute('aria-valuetext', 'blade-side face at z 33.9 mm')
  await expect(page.getByText('Not there yet: pommel, push switch.')).toBeVisible()
  await slider.focus()
  await page.keyboard.press('ArrowRight')
  await expect(slider).toHaveAttribute('aria-valuetext', 'blade-side face at z 34.4 mm')
  await page.keyboard.press('End')
  await expect(slider).toHaveAttribute('aria-valuetext', 'blade-side face at z 37.9 mm, against mouth thread')
  await page.keyboard.press('ArrowRight')
  await expect(slider).toHaveAttribute('aria-valuetext', 'blade-side face at z 37.9 mm, against mouth thread')
  await expect(page.getByText(/^Stops here\. Sled comes against mouth thread at z 35\.9/)).toContainText('0.64 mm')
  await page.getByRole('button', { name: 'Go past it' }).click()
  await expect(page.getByText(/^Overlap 0\.\d\d mm: sled and mouth thread/)).toBeVisible()
  await slider.focus()
  await page.keyboard.press('End')
  await expect(slider).toHaveAttribute('aria-valuetext', 'blade-side face at z 188.0 mm')
  const depth = page.getByRole('textbox', { name: 'face at z' })
  await depth.fill('4 cm')
  await depth.press('Enter')
  await expect(slider).toHaveAttribute('aria-valuetext', 'blade-side face at z 40.0 mm')
  await depth.fill('far')
  await depth.press('Enter')
  await expect(depth).toHaveAttribute('aria-invalid', 'true')
  await expect(slider).toHaveAttribute('aria-valuetext', 'blade-side face at z 40.0 mm')
})

test('the solid follows what is pushed and drawn apart, in one canvas, and says it in words', async ({ page }) => {
  await table(page, 'weir-lantern')
  await show(page)
  await canvas(page).evaluate((c) => c.setAttribute('data-first', 'yes'))
  await page.locator('summary', { hasText: 'The picture in words' }).click()
  const words = page.locator('.solid-words li')
  await expect(words.filter({ hasText: 'pommel' })).toContainText('35.0 mm outside, z 1.0 to 44.9')
  await expect(words.filter({ hasText: '18650 cell' })).toContainText(/round, z \d/)
  await expect(words.filter({ hasText: 'printed' })).toContainText(/30\.2 × 30\.2 × 141\.0 mm, [\d.]+ cm³/)
  const before = await canvas(page).screenshot()
  await pushing(page)
  await page.getByRole('button', { name: 'Draw it out' }).click()
  await expect(words.filter({ hasText: 'printed' })).toContainText('drawn 154.1 towards the rear')
  await expect(words.filter({ hasText: 'pommel' })).toHaveCount(0)
  await expect(async () => expect((await canvas(page).screenshot()).equals(before)).toBe(false)).toPass()
  await page.getByRole('button', { name: 'All in place' }).click()
  await expect(words.filter({ hasText: 'pommel' })).toHaveCount(1)
  await page.getByLabel('Draw apart').focus()
  await page.keyboard.press('End')
  await expect(words.filter({ hasText: 'printed' })).toContainText(/drawn [\d.]+ outwards/)
  await page.getByLabel('Hilt', { exact: true }).selectOption('Without the hilt')
  await expect(words.filter({ hasText: 'pommel' })).toHaveCount(0)
  await expect(canvas(page)).toHaveAttribute('data-first', 'yes')
  await expect(page.locator('canvas')).toHaveCount(1)
})

test('a click on a face names its nest and what made it, and leads to the field; so does the list', async ({
  page,
}) => {
  await table(page, 'weir-lantern')
  await show(page)
  await page.getByLabel('Hilt', { exact: true }).selectOption('Without the hilt')
  await page.getByLabel('Sled cut open').uncheck()
  await page.getByRole('button', { name: 'Side', exact: true }).click()
  await page.waitForTimeout(300)
  await page.locator('.hilt-canvas').click({ position: await middle(page) })
  const note = page.locator('.picked-note')
  await expect(note).toContainText('Body of')
  await expect(note).toContainText(/Body diameter 28\.20 mm, typed/)
  await note.getByRole('button', { name: 'To the field of body diameter' }).click()
  await expect(page.getByRole('button', { name: 'Sled', exact: true })).toHaveAttribute('aria-current', 'step')
  await page.locator('summary', { hasText: 'Nests and their dimensions' }).click()
  const ring = page.locator('.nest').filter({ hasText: /^Speaker ring/ })
  await ring.locator('summary').click()
  await expect(ring).toContainText(/Gap [\d.]+ mm, default: slide fit/)
  await ring.getByRole('button', { name: 'Show it in the solid' }).click()
  await expect(note).toContainText('Speaker ring for')
})

test('the picture is saved as a PNG of what is shown', async ({ page }) => {
  await table(page, 'pier-lantern')
  await show(page)
  const coming = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save picture' }).click()
  const download = await coming
  expect(download.suggestedFilename()).toBe('pier-lantern-solid.png')
  const chunks: Buffer[] = []
  for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer)
  const bytes = Buffer.concat(chunks)
  expect(bytes.subarray(1, 4).toString()).toBe('PNG')
  // Lines and washes, not an empty sheet.
  expect(bytes.length).toBeGreaterThan(10_000)
})

test('a lost graphics context is survived on the work page', async ({ page }) => {
  await table(page, 'pier-lantern')
  await show(page)
  const before = await canvas(page).screenshot()
  const lose = await canvas(page).evaluateHandle((c: HTMLCanvasElement) =>
    c.getContext('webgl2')?.getExtension('WEBGL_lose_context'),
  )
  await lose.evaluate((extension) => extension?.loseContext())
  await expect(page.getByText('The graphics card took the picture away')).toBeVisible()
  expect(await unlike(page, before, await canvas(page).screenshot())).toBeGreaterThan(0.1)
  await lose.evaluate((extension) => extension?.restoreContext())
  await expect(page.getByText('The graphics card took the picture away')).toHaveCount(0)
  await expect.poll(async () => unlike(page, before, await canvas(page).screenshot())).toBeLessThan(0.05)
})

test('without WebGL the words, the dimensions and the way in are there', async ({ page }) => {
  await withoutWebGl(page)
  const fetched: string[] = []
  page.on('request', (request) => fetched.push(request.url()))
  await table(page, 'weir-lantern')
  await page.getByRole('button', { name: 'Show the solid' }).click()
  await expect(page.getByText('This browser cannot draw solids.')).toBeVisible()
  await page.locator('summary', { hasText: 'The picture in words' }).click()
  await expect(page.locator('.solid-words li').filter({ hasText: '18650 cell' })).toBeVisible()
  await pushing(page)
  await page.getByRole('button', { name: 'Draw it out' }).click()
  await page.getByRole('slider', { name: 'Sled into the body' }).focus()
  await page.keyboard.press('End')
  await expect(page.getByText(/^Stops here\./)).toBeVisible()
  expect(fetched.filter((url) => /hilt-canvas/.test(url))).toEqual([])
})

async function middle(page: Page): Promise<{ x: number; y: number }> {
  const box = await page.locator('.hilt-canvas').boundingBox()
  if (!box) throw new Error('no canvas')
  return { x: box.width * 0.3, y: box.height / 2 }
}
