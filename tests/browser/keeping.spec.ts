import type { Page } from '@playwright/test'
import { expect, test } from './page.ts'
import { saved, undo } from './table.ts'

const name = (page: Page) => page.getByRole('textbox', { name: 'Name of the job' })

/** A new job on the table, kept under its address. */
async function newJob(page: Page): Promise<string> {
  await page.goto('./#new')
  await expect(page).toHaveURL(/#job\/[0-9a-f]{16}$/)
  await expect(saved(page)).toHaveText(/^saved \d\d:\d\d$/)
  return page.url()
}

async function rename(page: Page, text: string): Promise<void> {
  await name(page).fill(text)
  await expect(saved(page)).toHaveText(/^saved/)
}

test('a reload brings the job back, and what can be undone in it', async ({ page }) => {
  await newJob(page)
  await expect(name(page)).toHaveValue('New job')
  await rename(page, 'Mole lantern')
  await page.reload()
  await expect(name(page)).toHaveValue('Mole lantern')
  await undo(page).click()
  await expect(name(page)).toHaveValue('New job')
  await expect(saved(page)).toHaveText(/^saved/)
  await page.reload()
  await page.getByRole('button', { name: 'Redo' }).click()
  await expect(name(page)).toHaveValue('Mole lantern')
})

test('a page left in the very moment of a change keeps the change', async ({ page }) => {
  await newJob(page)
  await name(page).fill('Left at once')
  await page.reload()
  await expect(name(page)).toHaveValue('Left at once')
  await page.goto('./#jobs')
  await expect(page.locator('.job-row')).toHaveCount(1)
})

test('undo and redo by key, a word a step; a field with a text of its own keeps its own', async ({ page }) => {
  await newJob(page)
  // A pause in typing ends a word; that a busy machine makes none of its own, the clock stands.
  await page.clock.setFixedTime(new Date())
  await name(page).fill('')
  await name(page).pressSequentially('Mole lantern')
  await page.keyboard.press('Control+z')
  await expect(name(page)).toHaveValue('New job')
  await page.keyboard.press('Control+Shift+z')
  await expect(name(page)).toHaveValue('Mole lantern')
  await page.keyboard.press('Control+z')
  await page.keyboard.press('Control+y')
  await expect(name(page)).toHaveValue('Mole lantern')
})

test('a demo is a job of one’s own from the first change on, and stays a demo', async ({ page }) => {
  await page.goto('./#demo/pier-lantern')
  await expect(saved(page)).toHaveText('kept once you change it')
  const original = await name(page).inputValue()
  await rename(page, 'After the pier')
  await expect(page).toHaveURL(/#job\//)
  await page.evaluate(() => {
    location.hash = '#demo/pier-lantern'
  })
  await expect(name(page)).toHaveValue(original)
  await page.goto('./#jobs')
  await expect(page.locator('.job-row')).toHaveText([/After the pier/])
})

test('the quick check goes on as a full job with the same verdict, and is still there when one comes back', async ({
  page,
}) => {
  await page.goto('./#example')
  await page.getByRole('link', { name: 'Go on as a full job' }).click()
  await expect(page).toHaveURL(/#job\//)
  await expect(page.locator('.standing')).toContainText('clear')
  await expect(name(page)).toHaveValue('18650 cell, flat top, in a 33.2 mm bore')
  await expect(page.getByText('The bore is taken to be closed by "closed end, assumed"')).toBeVisible()
  await page.getByRole('button', { name: 'Add a section before the closed end' }).click()
  await expect(page.locator('[id="sections/tube"] ~ [id="sections/section"] ~ [id="sections/end"]')).toBeVisible()
  await page.getByRole('button', { name: 'Undo', exact: true }).click()
  await page.goBack()
  await expect(page.getByRole('textbox', { name: 'Bore ⌀' })).toHaveValue('33.2')
  await page.getByRole('link', { name: 'Go on as a full job' }).click()
  await expect(name(page)).toHaveValue('18650 cell, flat top, in a 33.2 mm bore 2')
})

test('jobs are listed, renamed, duplicated, deleted and put back', async ({ page }) => {
  await newJob(page)
  await rename(page, 'Mole lantern')
  await page.getByText('Job', { exact: true }).click()
  await page.getByRole('link', { name: 'All jobs', exact: true }).click()
  const rows = page.locator('.job-row')
  await expect(rows).toHaveText([/Mole lantern/])
  await page.getByRole('button', { name: 'Rename Mole lantern' }).click()
  const field = page.getByRole('textbox', { name: 'New name of Mole lantern' })
  await expect(field).toBeFocused()
  await field.pressSequentially('Weir lantern')
  await page.keyboard.press('Control+z')
  await expect(field).not.toHaveValue('Weir lantern')
  await field.fill('Weir lantern')
  await page.keyboard.press('Enter')
  await expect(rows).toHaveText([/Weir lantern/])
  await page.getByRole('button', { name: 'Duplicate Weir lantern' }).click()
  await expect(rows).toHaveText([/Weir lantern 2/, /Weir lantern/])
  await page.getByRole('button', { name: 'Delete Weir lantern', exact: true }).click()
  await expect(rows).toHaveText([/Weir lantern 2/])
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(rows).toHaveCount(2)
  await page.getByRole('link', { name: 'Weir lantern 2' }).click()
  await expect(name(page)).toHaveValue('Weir lantern 2')
})

test.describe('two tabs on one job', () => {
  test('the other one is told, and can take theirs or keep its own as a copy', async ({ page, context }) => {
    const address = await newJob(page)
    const other = await context.newPage()
    await other.goto(address)
    await expect(name(other)).toHaveValue('New job')
    await rename(page, 'Here')
    await expect(other.getByText('Another tab has changed this job.')).toBeVisible()
    await name(other).fill('There')
    await expect(saved(other)).toHaveText('not saved')
    await other.getByRole('button', { name: 'Keep mine as a copy' }).click()
    await expect(name(other)).toHaveValue('There (copy)')
    await expect(other).not.toHaveURL(address)
    await expect(saved(other)).toHaveText(/^saved/)

    await other.goto(address)
    await expect(name(other)).toHaveValue('Here')
    await rename(page, 'Here again')
    await other.getByRole('button', { name: 'Take theirs' }).click()
    await expect(name(other)).toHaveValue('Here again')
    await expect(other.getByText('Another tab has changed this job.')).toBeHidden()
    await page.goto('./#jobs')
    await expect(page.locator('.job-row .job-name')).toHaveText(['Here again', 'There (copy)'])
  })

  test('a tab that no word reaches still does not write over the other', async ({ page, context }) => {
    const address = await newJob(page)
    const other = await context.newPage()
    await other.addInitScript(() => {
      BroadcastChannel.prototype.postMessage = () => undefined
    })
    await other.goto(address)
    await rename(other, 'There')
    await name(page).fill('Here')
    await expect(page.getByText('Another tab has changed this job.')).toBeVisible()
    await other.reload()
    await expect(name(other)).toHaveValue('There')
  })
})

test('a full browser is told of, with the file as the way out, and writing goes on once there is room', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const put = Reflect.get(IDBObjectStore.prototype, 'put')
    IDBObjectStore.prototype.put = function (...args) {
      if (Object.hasOwn(globalThis, 'full')) throw new DOMException('no room', 'QuotaExceededError')
      return Reflect.apply(put, this, args)
    }
    Reflect.deleteProperty(globalThis, 'showSaveFilePicker')
  })
  await newJob(page)
  await page.evaluate(() => Object.assign(globalThis, { full: true }))
  await name(page).fill('Mole lantern')
  await expect(page.getByText('The browser has no room left for this page.')).toBeVisible()
  await expect(saved(page)).toHaveText('not saved')
  const coming = page.waitForEvent('download')
  await page.locator('.notice').getByRole('button', { name: 'Save as a file' }).click()
  expect((await coming).suggestedFilename()).toBe('mole-lantern.json')
  await page.evaluate(() => Reflect.deleteProperty(globalThis, 'full'))
  await page.getByRole('button', { name: 'Try again' }).click()
  await expect(saved(page)).toHaveText(/^saved/)
  await page.reload()
  await expect(name(page)).toHaveValue('Mole lantern')
})

test.describe('links', () => {
  test('hold the whole job and open it elsewhere', async ({ page, browser, context }) => {
    await context.grantPermissions(['clipboard-read', 'clipboard-write'])
    await page.goto('./#demo/weir-lantern')
    await name(page).fill('Sent lantern')
    await page.getByText('Job', { exact: true }).click()
    await page.getByRole('button', { name: 'Copy a link to this job …' }).click()
    const dialog = page.getByRole('dialog', { name: 'A link to this job' })
    const link = await dialog.getByRole('textbox', { name: 'The link' }).inputValue()
    await expect(dialog.getByText(String(link.length))).toBeVisible()
    await dialog.getByRole('button', { name: 'Copy the link' }).click()
    await expect(dialog.getByText('Copied.')).toBeVisible()
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(link)
    const stranger = await (await browser.newContext()).newPage()
    await stranger.goto(link)
    await expect(name(stranger)).toHaveValue('Sent lantern')
    await expect(saved(stranger)).toHaveText('kept once you change it')
  })

  for (const [what, data] of [
    ['letters that are no link', '1%00<script>'],
    ['a link that was cut', '1AbCdEfGh'],
    ['a link of another kind', '9AbCd'],
    ['a link without an end', `1${'A'.repeat(100_000)}`],
  ] as const)
    test(`of ${what} the page says what is wrong, and what to do`, async ({ page }) => {
      await page.goto(`./#link/${data}`)
      await expect(page.getByRole('heading', { name: 'The link cannot be opened' })).toBeVisible()
      await expect(page.getByRole('table')).toContainText(/Copy the whole link once more|made by a newer release/)
      await page.getByRole('link', { name: 'Your jobs' }).click()
      await expect(page.getByRole('heading', { name: 'Kept in this browser' })).toBeVisible()
    })
})

for (const address of ['elsewhere', 'job/0123456789abcdef', 'demo/nobody', 'grow/%7B%7D', 'grow/nonsense'])
  test(`an address that leads nowhere says so: ${address}`, async ({ page }) => {
    await page.goto(`./#${address}`)
    await expect(page.getByRole('heading', { name: 'No job at this address' })).toBeVisible()
    await page.getByRole('link', { name: 'Quick check' }).click()
    await expect(page.getByRole('textbox', { name: 'Bore ⌀' })).toBeVisible()
  })
