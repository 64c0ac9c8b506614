import { readFile } from 'node:fs/promises'
import { expect, test } from '@playwright/test'

/* What the page does when the program itself fails. The browser complains then, and is meant to. */

test('a page that has failed offers the job first', async ({ page }) => {
  await page.addInitScript(() => {
    const told = Reflect.get(Date.prototype, 'toLocaleTimeString')
    Date.prototype.toLocaleTimeString = function (...args: Parameters<Date['toLocaleTimeString']>) {
      const name = document.querySelector<HTMLInputElement>('input.head-name')?.value
      if (Object.hasOwn(globalThis, 'faulty') && name === 'Mole lantern') throw new Error('the clock fell off the wall')
      return Reflect.apply(told, this, args)
    }
  })
  await page.goto('./#new')
  await expect(page.locator('.saved-note')).toHaveText(/^saved/)
  await page.evaluate(() => Object.assign(globalThis, { faulty: true }))
  await page.getByRole('textbox', { name: 'Name of the job' }).fill('Mole lantern')
  await expect(page.getByRole('heading', { name: 'This page has failed' })).toBeVisible()
  await expect(page.getByText('the clock fell off the wall')).toBeVisible()
  const first = page.getByRole('button').first()
  await expect(first).toHaveText('Save my job')
  const coming = page.waitForEvent('download')
  await first.click()
  const text = await readFile(await (await coming).path(), 'utf8')
  expect(JSON.parse(text)).toMatchObject({ format: 'sledwright', job: [{ name: 'Mole lantern' }] })
  await page.getByRole('button', { name: 'Load the page anew' }).click()
  await expect(page.getByRole('textbox', { name: 'Name of the job' })).toHaveValue('Mole lantern')
})

test('one panel that has failed leaves the others at work, and is tried again for another answer only', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const counts = { slips: 0, unanswered: 0 }
    Object.assign(globalThis, { counts })
    globalThis.ResizeObserver = class extends ResizeObserver {
      override observe(...args: Parameters<ResizeObserver['observe']>) {
        if (Object.hasOwn(globalThis, 'mended')) return super.observe(...args)
        counts.slips++
        throw new Error('the rule slipped')
      }
    }
    globalThis.Worker = class extends Worker {
      constructor(...args: ConstructorParameters<typeof Worker>) {
        super(...args)
        this.addEventListener('message', () => counts.unanswered--)
      }
      override postMessage(message: unknown) {
        counts.unanswered++
        super.postMessage(message)
      }
    }
  })
  const counts = () => page.evaluate(() => Reflect.get(globalThis, 'counts'))
  await page.goto('./#demo/weir-lantern')
  await expect(page.getByText('The drawing along the hilt has failed.')).toBeVisible()
  await expect(page.locator('.finding').first()).toBeVisible()
  // Two panels that draw to a width: each was tried once, also when the fixes of the clash have come.
  await expect.poll(counts).toEqual({ slips: 2, unanswered: 0 })
  await page.getByRole('textbox', { name: 'Name of the job' }).fill('Mole lantern')
  await expect(page).toHaveURL(/#job\//)
  await expect.poll(counts).toEqual({ slips: 4, unanswered: 0 })
  await page.evaluate(() => Object.assign(globalThis, { mended: true }))
  await page.getByRole('button', { name: 'Show it again' }).first().click()
  await expect(page.getByText('The drawing along the hilt has failed.')).toBeHidden()
})
