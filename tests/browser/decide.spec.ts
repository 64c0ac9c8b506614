import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import { expect as sure, test, typed } from './page.ts'
import { standing, step } from './table.ts'

/** A whole job is judged, built and drawn here, perhaps by a busy machine. */
test.describe.configure({ timeout: 180_000 })
const expect = sure.configure({ timeout: 40_000 })

/** A demo on the table, with its verdict. */
async function openDemo(page: Page, name: string, verdict: string): Promise<void> {
  await page.goto(`./#demo/${name}`)
  await expect(standing(page)).toContainText(verdict, { ignoreCase: true })
}

test('a fix is one click, says what it changed, and is taken back by one more', async ({ page }) => {
  await openDemo(page, 'weir-lantern', 'clash')
  const clash = page.locator('.finding-clash')
  await expect(clash).toHaveCount(1)
  await expect(clash).toContainText('Make the ring front 28.40 mm in diameter.')
  await clash.getByRole('button', { name: 'Apply' }).click()
  await expect(standing(page)).toContainText('clear', { ignoreCase: true })
  await expect(clash).toHaveCount(0)
  const note = page.locator('.applied')
  await expect(note).toContainText('Diameter of the ring front, sled: 30.2 → 28.4.')
  await note.getByRole('button', { name: 'Undo' }).click()
  await expect(standing(page)).toContainText('clash', { ignoreCase: true })
  await expect(note).toHaveCount(0)
})

test('the way from a finding leads to its field, in whatever step and box that is', async ({ page }) => {
  await openDemo(page, 'ferry-lantern', 'clear')
  await step(page, 'Sled').click()
  const box = page.locator('details[id="sleds/main/nests/parts/cell"]')
  await expect(box).not.toHaveAttribute('open')
  await typed(page, 'Chamfer').waitFor()
  await box.locator('summary').click()
  await box.getByRole('textbox', { name: 'Wrap' }).fill('75')
  await expect(standing(page)).toContainText('clash', { ignoreCase: true })
  await box.locator('summary').click()
  await step(page, 'Print').click()
  await page
    .locator('.finding-clash')
    .getByRole('button', { name: /^Go to/ })
    .first()
    .click()
  await expect(page.locator('[id="sleds/main/nests/parts/cell/wrap"]')).toBeFocused()
})

test('a dimension is typed over its default, and emptied gives way to it', async ({ page }) => {
  await openDemo(page, 'pier-lantern', 'clear')
  await step(page, 'Sled').click()
  const field = page.locator('[id="sleds/main/diameter"]')
  const row = page.locator('.dim-row').filter({ has: field })
  await expect(row).toContainText('default · narrowest bore on the way in')
  await expect(field).toHaveAttribute('placeholder', '29.3')
  await field.fill('30.6')
  await expect(row).toContainText('typed')
  await expect(standing(page)).toContainText('clash', { ignoreCase: true })
  await field.fill('')
  await expect(standing(page)).toContainText('clear', { ignoreCase: true })
  await expect(row).toContainText('default')
})

test('a clear sled is saved as STL with a name of its own', async ({ page }) => {
  await openDemo(page, 'pier-lantern', 'clear')
  await step(page, 'Print').click()
  const coming = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save STL' }).click()
  const download = await coming
  expect(download.suggestedFilename()).toBe('pier-lantern-main.stl')
  const bytes = await readFile(await download.path())
  expect(bytes.length).toBe(84 + 50 * bytes.readUInt32LE(80))
  await expect(page.getByText('pier-lantern-main.stl is saved, in millimetres.')).toBeVisible()
})

test('a clash holds the files back with its reason; forced out they are named unproven', async ({ page }) => {
  await openDemo(page, 'weir-lantern', 'clash')
  await step(page, 'Print').click()
  await page.getByRole('button', { name: 'Save STL' }).click()
  await expect(page.getByText('No file while there is a clash.')).toBeVisible()
  await expect(page.locator('.save-files')).toContainText('Sled on the way in: mouth thread')
  const coming = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save all the same, marked UNPROVEN' }).click()
  expect((await coming).suggestedFilename()).toBe('weir-lantern-main-UNPROVEN.stl')
})

test('the job is compared with itself as it was opened', async ({ page }) => {
  await openDemo(page, 'weir-lantern', 'clash')
  await page.locator('.finding-clash').getByRole('button', { name: 'Apply' }).click()
  await expect(standing(page)).toContainText('clear', { ignoreCase: true })
  await page.locator('.job-menu summary').click()
  await page.getByRole('button', { name: 'Compare with another job …' }).click()
  const dialog = page.getByRole('dialog', { name: 'Compare' })
  await expect(dialog.getByRole('row', { name: 'Diameter of the ring front, sled' })).toContainText('30.228.4')
  await expect(dialog.locator('.compare-verdicts')).toContainText('clash')
  await expect(dialog.locator('.compare-verdicts')).toContainText('clear')
  await page.keyboard.press('Escape')
  await expect(dialog).toHaveCount(0)
})

test('what is begun and still empty is the reason at the verdict, and named once in Print with the way to each field', async ({
  page,
}) => {
  await openDemo(page, 'pier-lantern', 'clear')
  await expect(standing(page)).toContainText('tightest leaves +0.00 mm beyond the 0.30 needed')
  await page.getByRole('button', { name: 'Add what sticks in' }).click()
  await expect(standing(page)).toHaveText('unsure1 thing is still empty', { ignoreCase: true })
  const row = page.locator('.finding-not-checked')
  await expect(row).toContainText('Not there yet: pin, sizes still empty')
  await step(page, 'Print').click()
  const wanted = page.getByRole('region', { name: 'Still wanted before it is built' })
  await expect(wanted.getByRole('listitem')).toHaveText([
    /^Place along z of the pin Go to field/,
    /^Diameter of the pin Go to field/,
  ])
  await page.getByRole('button', { name: 'Save STL' }).click()
  await expect(page.locator('.save-files')).toContainText('No file yet: what is still wanted is named above')
  await expect(page.getByRole('button', { name: /UNPROVEN/ })).toHaveCount(0)
  await wanted.getByRole('button', { name: /diameter/ }).click()
  await expect(page.locator('[id="features/pin/shape/diameter"]')).toBeFocused()
})
