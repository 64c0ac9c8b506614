import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { expect, finding, open, test, typed, verdict } from './page.ts'

/** What axe has against the page, one line a fault. */
async function faults(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze()
  return violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.target.join(' ')}: ${n.failureSummary}`))
}

for (const theme of ['light', 'dark'] as const)
  test.describe(`in the ${theme} look`, () => {
    test.use({ colorScheme: theme })

    test('axe finds nothing on the empty page', async ({ page }) => {
      await open(page, 'empty')
      expect(await faults(page)).toEqual([])
    })

    test('axe finds nothing beside an answer, its details and the solid', async ({ page }) => {
      await open(page, 'example')
      await finding(page, 'sled in place').getByRole('button').first().click()
      await page.getByRole('button', { name: 'Show the solid' }).click()
      await expect(page.locator('.solid-canvas canvas')).toBeVisible()
      expect(await faults(page)).toEqual([])
    })

    test('axe finds nothing beside a clash, a question, a fault and an old drawing', async ({ page }) => {
      await open(page, 'example')
      await typed(page, 'Thread at the mouth').fill('')
      await typed(page, 'Bore ⌀').fill('27.2')
      await expect(verdict(page)).toHaveText('Verdict: clash')
      await finding(page, 'speaker in place').getByRole('button').first().click()
      expect(await faults(page)).toEqual([])
      await typed(page, 'Depth').fill('5')
      await typed(page, 'Bore ⌀').fill('33 1/2')
      await typed(page, 'Bore ⌀').blur()
      await expect(typed(page, 'Bore ⌀')).toHaveAttribute('aria-invalid', 'true')
      expect(await faults(page)).toEqual([])
    })
  })

test('the look can be chosen, and stays', async ({ page }) => {
  await open(page, 'empty')
  const paper = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor)
  const light = await paper()
  await page.getByRole('button', { name: 'Dark' }).click()
  expect(await paper()).not.toBe(light)
  const dark = await paper()
  await page.reload()
  await expect(page.getByRole('button', { name: 'Light' })).toBeVisible()
  expect(await paper()).toBe(dark)
})

test('the whole journey by keyboard alone', async ({ page }) => {
  await open(page, 'empty')
  const tabTo = async (name: string | RegExp, role: 'button' | 'textbox' | 'combobox' | 'slider') => {
    const wanted = page.getByRole(role, { name }).first()
    for (let i = 0; i < 60; i++) {
      if (await wanted.evaluate((e) => e === document.activeElement)) return
      await page.keyboard.press('Tab')
    }
    throw new Error(`no way to ${name} by keyboard`)
  }
  await tabTo('Bore ⌀', 'textbox')
  await page.keyboard.type('33.2')
  await tabTo('Depth', 'textbox')
  await page.keyboard.type('148')
  await tabTo('Cell', 'combobox')
  await page.keyboard.type('18650')
  await expect(verdict(page)).toHaveText('Verdict: clear')
  await tabTo('Cut at θ', 'slider')
  await page.keyboard.press('ArrowRight')
  await expect(page.getByRole('img', { name: /cut at 5 degrees/ })).toBeVisible()
  await tabTo('Height of the cross-section', 'slider')
  await page.keyboard.press('Home')
  await expect(page.getByRole('img', { name: /^Cross-section at z 0\.0/ })).toBeVisible()
  await tabTo(/^Sled in place/i, 'button')
  await page.keyboard.press('Enter')
  await expect(finding(page, 'sled in place').getByText('Why')).toBeVisible()
  await page.keyboard.press('Shift+Tab')
  await expect(page.getByLabel('Height of the cross-section')).toBeFocused()
  const focused = page.locator(':focus-visible')
  await expect(focused).toHaveCSS('outline-style', 'solid')
  await page.evaluate(() => document.getElementById('bore')?.focus())
  await tabTo(/^Save the sled/, 'button')
  const coming = page.waitForEvent('download')
  await page.keyboard.press('Enter')
  expect((await coming).suggestedFilename()).toBe('quick-check-sled.stl')
})

for (const [device, width, height] of [
  ['a phone', 390, 844],
  ['a small phone', 320, 640],
  ['a tablet', 820, 1180],
  ['a small laptop', 1280, 800],
] as const)
  test(`nothing is cut off on ${device}, also with text at 200 %`, async ({ page }) => {
    await page.setViewportSize({ width, height })
    await open(page, 'example')
    const overflow = () => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
    expect(await overflow()).toBeLessThanOrEqual(0)
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%'
    })
    await expect(verdict(page)).toBeVisible()
    expect(await overflow()).toBeLessThanOrEqual(0)
  })

test('targets are at least 24 pixels, or have that much room', async ({ page }) => {
  await open(page, 'example')
  await finding(page, 'sled in place').getByRole('button').first().click()
  const small = await page.locator('button, a, select, input').evaluateAll((all) =>
    all
      .filter((e) => (e as HTMLElement).offsetParent !== null)
      .map((e) => ({ name: e.textContent || e.id || e.className, box: e.getBoundingClientRect() }))
      .filter(({ box }) => box.width < 24 || box.height < 24)
      .map(({ name, box }) => `${name}: ${box.width} × ${box.height}`),
  )
  expect(small).toEqual([])
})
