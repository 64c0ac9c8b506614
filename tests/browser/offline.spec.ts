import { expect, type Page, test } from '@playwright/test'

test.use({ serviceWorkers: 'allow' })

/** The page has drawn something into its root: an empty shell is not a page. */
async function expectDrawn(page: Page) {
  await expect(page).toHaveTitle(/Sledwright/)
  await expect(page.locator('#root > *').first()).toBeVisible()
}

test('the page loads without a complaint and asks nobody but its own server', async ({ page, baseURL }) => {
  const complaints: string[] = []
  const strangers: string[] = []
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text())
  })
  page.on('pageerror', (error) => complaints.push(error.message))
  page.on('request', (request) => {
    if (/^https?:/.test(request.url()) && !request.url().startsWith(baseURL ?? '')) strangers.push(request.url())
  })
  await page.goto('./')
  await expectDrawn(page)
  await page.waitForLoadState('networkidle')
  expect(complaints).toEqual([])
  expect(strangers).toEqual([])
})

test('the page works without a network after the first visit', async ({ page, context }) => {
  await page.goto('./')
  await page.evaluate(() => navigator.serviceWorker.ready)
  await context.setOffline(true)
  await page.reload()
  await expectDrawn(page)
})

test.describe('with the stored copy blocked', () => {
  test.use({ serviceWorkers: 'block' })
  test('the page does not come without a network, so the test above proves something', async ({ page, context }) => {
    await page.goto('./')
    await expectDrawn(page)
    await context.setOffline(true)
    await expect(page.reload()).rejects.toThrow(/ERR_INTERNET_DISCONNECTED/)
  })
})
