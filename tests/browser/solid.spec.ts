import { expect, open, test, typed, verdict } from './page.ts'
import { unlike } from './same-picture.ts'

const scene = /solid-scene/

test('the solid view is fetched when it is first shown, and not before', async ({ page }) => {
  const fetched: string[] = []
  page.on('request', (request) => fetched.push(request.url()))
  await open(page, 'example')
  await page.waitForLoadState('networkidle')
  const early = fetched.filter((url) => scene.test(url))
  await page.getByRole('button', { name: 'Show the solid' }).click()
  await expect(page.locator('.solid-canvas canvas')).toBeVisible()
  expect(early).toEqual([])
  await expect(page.getByText(/^32\.4 × 32\.4 × 85\.7 mm, [\d.]+ cm³$/)).toBeVisible()
})

test('it can be turned by keys and by buttons, cut open, and follows the numbers in one canvas', async ({ page }) => {
  await open(page, 'example')
  await page.getByRole('button', { name: 'Show the solid' }).click()
  const view = page.locator('.solid-canvas')
  const canvas = view.locator('canvas')
  await expect(canvas).toBeVisible()
  await page.waitForTimeout(800)
  const pictures = [await canvas.screenshot()]
  const different = async () => {
    await expect(async () => expect((await canvas.screenshot()).equals(pictures.at(-1) as Buffer)).toBe(false)).toPass()
    pictures.push(await canvas.screenshot())
  }
  await view.focus()
  await page.keyboard.press('ArrowLeft')
  await different()
  await page.getByRole('button', { name: 'Rear', exact: true }).click()
  await different()
  await page.getByRole('button', { name: 'Side', exact: true }).click()
  await different()
  await page.getByLabel('Cut open').check()
  await different()
  await canvas.evaluate((c) => c.setAttribute('data-first', 'yes'))
  await typed(page, 'Bore ⌀').fill('32.9')
  await expect(page.getByText(/^32\.1 × 32\.1 × 85\.7 mm/)).toBeVisible()
  await different()
  await expect(canvas).toHaveAttribute('data-first', 'yes')
  await expect(page.locator('canvas')).toHaveCount(1)
})

test('a lost graphics context is survived', async ({ page }) => {
  await open(page, 'example')
  await page.getByRole('button', { name: 'Show the solid' }).click()
  const canvas = page.locator('.solid-canvas canvas')
  await expect(canvas).toBeVisible()
  await page.waitForTimeout(800)
  const before = await canvas.screenshot()
  const lose = await canvas.evaluateHandle((c: HTMLCanvasElement) =>
    c.getContext('webgl2')?.getExtension('WEBGL_lose_context'),
  )
  await lose.evaluate((extension) => extension?.loseContext())
  await expect(page.getByText('The graphics card took the picture away')).toBeVisible()
  expect(await unlike(page, before, await canvas.screenshot())).toBeGreaterThan(0.2)
  await typed(page, 'Bore ⌀').fill('33.3')
  await expect(verdict(page)).toHaveText('Verdict: clear')
  await typed(page, 'Bore ⌀').fill('33.2')
  await lose.evaluate((extension) => extension?.restoreContext())
  await expect(page.getByText('The graphics card took the picture away')).toHaveCount(0)
  await expect.poll(async () => unlike(page, before, await canvas.screenshot())).toBeLessThan(0.05)
})

test('without WebGL everything but the solid is there', async ({ page }) => {
  await page.addInitScript(() => {
    const real = Object.getOwnPropertyDescriptor(HTMLCanvasElement.prototype, 'getContext')?.value
    Object.defineProperty(HTMLCanvasElement.prototype, 'getContext', {
      value(this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
        return /webgl|webgpu/.test(kind) ? null : Reflect.apply(real, this, [kind, ...rest])
      },
    })
  })
  const fetched: string[] = []
  page.on('request', (request) => fetched.push(request.url()))
  await open(page, 'example')
  await page.getByRole('button', { name: 'Show the solid' }).click()
  await expect(page.getByText('This browser cannot draw solids.')).toBeVisible()
  await expect(page.getByText(/^32\.4 × 32\.4 × 85\.7 mm/)).toBeVisible()
  await typed(page, 'Bore ⌀').fill('27.2')
  await expect(verdict(page)).toHaveText('Verdict: clash')
  await typed(page, 'Bore ⌀').fill('33.2')
  await expect(verdict(page)).toHaveText('Verdict: clear')
  const coming = page.waitForEvent('download')
  await page.getByRole('button', { name: /^Save the sled/ }).click()
  expect((await coming).suggestedFilename()).toBe('quick-check-sled.stl')
  expect(fetched.filter((url) => scene.test(url))).toEqual([])
})
