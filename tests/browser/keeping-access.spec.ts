import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { expect, test } from './page.ts'

/** What axe has against the page, one line a fault. */
async function faults(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze()
  return violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.target.join(' ')}: ${n.failureSummary}`))
}

const overflow = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)

for (const theme of ['light', 'dark'] as const)
  test.describe(`in the ${theme} look`, () => {
    test.use({ colorScheme: theme })

    test('axe finds nothing on the list of jobs and where an address leads nowhere', async ({ page }) => {
      await page.goto('./#new')
      await expect(page).toHaveURL(/#job\//)
      await page.goto('./#jobs')
      await page.getByRole('button', { name: 'Delete New job' }).click()
      await expect(page.getByText('New job is deleted.')).toBeVisible()
      await page.getByRole('button', { name: 'Undo' }).click()
      await page.getByRole('button', { name: 'Rename New job' }).click()
      expect(await faults(page)).toEqual([])
      await page.goto('./#link/1nonsense')
      await expect(page.getByRole('table')).toBeVisible()
      expect(await faults(page)).toEqual([])
    })

    test('axe finds nothing in the head, its menu, its notice and the link', async ({ page, context }) => {
      await page.goto('./#new')
      await expect(page).toHaveURL(/#job\//)
      const other = await context.newPage()
      await other.goto(page.url())
      await other.getByRole('textbox', { name: 'Name of the job' }).fill('There')
      await expect(page.getByText('Another tab has changed this job.')).toBeVisible()
      await page.getByText('Job', { exact: true }).click()
      expect(await faults(page)).toEqual([])
      await page.getByRole('button', { name: 'Copy a link to this job …' }).click()
      await expect(page.getByRole('textbox', { name: 'The link' })).toBeVisible()
      expect(await faults(page)).toEqual([])
    })
  })

for (const [width, height] of [
  [320, 640],
  [390, 844],
  [820, 1180],
] as const)
  test(`jobs and head fit a width of ${width}, also with text at 200 %`, async ({ page }) => {
    await page.setViewportSize({ width, height })
    for (const address of ['./#jobs', './#new', './#elsewhere']) {
      await page.goto(address)
      await expect(page.locator('.sheet-mark')).toBeVisible()
      for (const size of ['100%', '200%']) {
        await page.evaluate((s) => {
          document.documentElement.style.fontSize = s
        }, size)
        expect(await overflow(page), `${address} at ${size}`).toBeLessThanOrEqual(0)
      }
    }
  })
