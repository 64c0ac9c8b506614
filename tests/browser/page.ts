import { test as base, expect, type Locator, type Page } from '@playwright/test'

/** Every test of the page also says that the browser had nothing to complain of. */
export const test = base.extend<{ quiet: undefined }>({
  quiet: [
    async ({ page }, use) => {
      const complaints: string[] = []
      page.on('console', (message) => {
        if (message.type() === 'error') complaints.push(message.text())
      })
      page.on('pageerror', (error) => complaints.push(error.message))
      await use(undefined)
      expect(complaints).toEqual([])
    },
    { auto: true },
  ],
})

export { expect }

/** The page with nothing typed, or with the invented numbers and their verdict. */
export async function open(page: Page, what: 'empty' | 'example'): Promise<void> {
  await page.goto(what === 'example' ? './#example' : './')
  if (what === 'example') await expect(verdict(page)).toHaveText('Verdict: clear')
}

export const verdict = (page: Page): Locator => page.locator('#verdict-word')

/** A finding of the list by the beginning of its title. */
export const finding = (page: Page, title: string): Locator =>
  page.locator('.finding').filter({ has: page.getByRole('button', { name: new RegExp(`^${title}`, 'i') }) })

/** A text field by its whole name. */
export const typed = (page: Page, name: string): Locator => page.getByRole('textbox', { name, exact: true })

/** A list by its whole name. */
export const chosen = (page: Page, name: string): Locator => page.getByRole('combobox', { name, exact: true })
