import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { expect, test, typed } from './page.ts'
import { standing, step } from './table.ts'

/** What axe has against the page, one line a fault. */
async function faults(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze()
  return violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.target.join(' ')}: ${n.failureSummary}`))
}

/** A demo on the table at one of its steps. */
async function atStep(page: Page, name: 'Sled' | 'Print'): Promise<void> {
  await page.goto('./#demo/ferry-lantern')
  await expect(standing(page)).toContainText('clear', { ignoreCase: true })
  await step(page, name).click()
}

for (const theme of ['light', 'dark'] as const)
  test.describe(`in the ${theme} look`, () => {
    test.use({ colorScheme: theme })

    test('axe finds nothing on the sled step, with a nest open and with a number that clashes', async ({ page }) => {
      await atStep(page, 'Sled')
      await typed(page, 'Chamfer').waitFor()
      const box = page.locator('details[id="sleds/main/nests/parts/cell"]')
      await box.locator('summary').click()
      expect(await faults(page)).toEqual([])
      await box.getByRole('textbox', { name: 'Wrap' }).fill('75')
      await expect(page.locator('.finding-clash')).not.toHaveCount(0)
      expect(await faults(page)).toEqual([])
    })

    test('axe finds nothing on the print step, and in the comparison of two jobs', async ({ page }) => {
      await atStep(page, 'Print')
      await expect(page.getByRole('button', { name: 'Save STL' })).toBeEnabled()
      await expect(page.getByText('Building …')).toHaveCount(0)
      expect(await faults(page)).toEqual([])
      await page.getByRole('button', { name: 'Compare …' }).click()
      const dialog = page.getByRole('dialog', { name: 'Compare' })
      await dialog.getByRole('combobox').selectOption('demo-weir-lantern')
      await expect(dialog.locator('.compare-verdicts')).toContainText('clash')
      expect(await faults(page)).toEqual([])
    })
  })
