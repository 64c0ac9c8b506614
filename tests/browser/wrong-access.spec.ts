import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { expect, open, test, typed, verdict } from './page.ts'
import { standing, step } from './table.ts'

/** What axe has against the page, one line a fault. */
async function faults(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze()
  return violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.target.join(' ')}: ${n.failureSummary}`))
}

/** A job that was judged, and one of whose lengths is then emptied or refused: all results are those of before. */
async function spoil(page: Page, text: string): Promise<void> {
  await page.goto('./#demo/weir-lantern')
  await expect(standing(page)).toContainText('clash', { ignoreCase: true })
  await step(page, 'Measure').click()
  const length = page.locator('input[id^="sections/"][id$="/length"]').first()
  // Its card may be closed.
  await length.evaluate((e) => {
    for (let up: Element | null = e; up; up = up.parentElement) if (up instanceof HTMLDetailsElement) up.open = true
  })
  await length.fill(text)
  await length.blur()
  await expect(page.locator('.work-table')).toHaveAttribute('data-old', 'true')
}

for (const theme of ['light', 'dark'] as const)
  test.describe(`in the ${theme} look`, () => {
    test.use({ colorScheme: theme })

    for (const [what, text] of [
      ['emptied', ''],
      ['refused', '33 1/2'],
    ] as const)
      test(`axe finds nothing at any step beside the results of before, a length ${what}`, async ({ page }) => {
        await spoil(page, text)
        for (const name of ['Measure', 'Fill', 'Sled', 'Print']) {
          await step(page, name).click()
          await expect(page.locator('[data-step] > *').first()).toBeVisible()
          expect(await faults(page), name).toEqual([])
        }
      })

    test('axe finds nothing beside an offer that only moves the clash, nor at what is left of an emptied form', async ({
      page,
    }) => {
      await open(page, 'example')
      await typed(page, 'Thread at the mouth').fill('')
      await typed(page, 'Bore ⌀').fill('27.2')
      await typed(page, 'Speaker: Diameter').fill('27')
      await typed(page, 'Sled ⌀').fill('28.05')
      await expect(verdict(page)).toHaveText('Verdict: clash')
      await expect(page.getByRole('button', { name: 'Apply anyway' }).first()).toBeVisible()
      expect(await faults(page)).toEqual([])
      await typed(page, 'Depth').fill('')
      await expect(page.getByText('Drawn from the numbers before')).toBeVisible()
      expect(await faults(page)).toEqual([])
      // What cannot be worked with is passed over by axe, and still wants to be read.
      await page.evaluate(() => {
        for (const e of document.querySelectorAll<HTMLElement>('[inert]')) e.inert = false
      })
      expect(await faults(page)).toEqual([])
    })
  })
