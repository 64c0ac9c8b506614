import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { expect, test } from './page.ts'
import { field, standing } from './table.ts'

const partsOf = (page: Page) => page.locator('.fill-part .fill-name')
const row = (page: Page, id: string) => page.locator(`[id="parts/${id}"]`)

async function fill(page: Page, job: string): Promise<void> {
  await page.goto(`./#${job}`)
  await page.getByRole('button', { name: 'Fill', exact: true }).click()
  await expect(page.getByRole('heading', { name: 'What goes in' })).toBeVisible()
}

test('a move is added for what has none, and a part without a free stretch says so', async ({ page }) => {
  await fill(page, 'demo/pier-lantern')
  const [what, add] = [page.getByLabel('What moves').last(), page.getByRole('button', { name: 'Add a move' })]
  await expect(what).toHaveValue('parts/switch')
  await add.click()
  await expect(page.locator('[id="insertions/move/moves"]')).toHaveValue('parts/switch')
  await expect(what).toHaveValue('')
  await expect(add).toBeDisabled()
  await page.getByRole('button', { name: 'Add a part: Board' }).click()
  await expect(page.locator('output', { hasText: 'is in' })).toContainText('no free stretch of')
})

test('an empty hilt is filled part by part, one click each, and stays clear', async ({ page }) => {
  await page.goto('./#new')
  await field(page, 'sections/body/length').fill('240')
  await field(page, 'sections/body/bore/bore/diameter').fill('32')
  await page.getByRole('button', { name: 'Fill', exact: true }).click()
  for (const kind of ['Cell', 'Contact', 'Contact', 'Board', 'Speaker', 'Switch']) {
    const count = await partsOf(page).count()
    await page.getByRole('button', { name: `Add a part: ${kind}` }).click()
    await expect(partsOf(page)).toHaveCount(count + 1)
    await expect(standing(page)).toContainText('clear')
  }
  await expect(partsOf(page)).toHaveText([
    /^cell/,
    /^rear contact/,
    /^front contact/,
    /^sound board/,
    /^speaker/,
    /^switch/,
  ])
  await expect(page.locator('.fill-problem')).toHaveCount(0)
})

test('a part is added, sized and placed by keyboard alone', async ({ page }) => {
  await fill(page, 'demo/pier-lantern')
  await page.getByRole('button', { name: 'Add a part: Speaker' }).focus()
  await page.keyboard.press('Enter')
  await expect(field(page, 'parts/speaker-2/preset')).toBeFocused()
  await page.keyboard.press('2')
  await expect(field(page, 'parts/speaker-2/preset')).not.toHaveValue('speaker-24')
  await field(page, 'parts/speaker-2/at/z/of').focus()
  await page.keyboard.press('d')
  await field(page, 'parts/speaker-2/at/z').focus()
  await page.keyboard.press('ControlOrMeta+a')
  await page.keyboard.type('7 1/8in')
  await expect(field(page, 'parts/speaker-2/at/z')).toHaveValue('7 1/8in')
  await row(page, 'speaker-2').focus()
  await page.keyboard.press('Enter')
  await expect(row(page, 'speaker-2')).toHaveAttribute('aria-expanded', 'false')
  await expect(field(page, 'parts/speaker-2/at/z')).toHaveValue('7 1/8in')
})

test('a cell takes another preset, then its own sizes, and says what is wrong with them at their field', async ({
  page,
}) => {
  await fill(page, 'demo/pier-lantern')
  await row(page, 'cell').click()
  await field(page, 'parts/cell/preset').selectOption('cell-18350-flat')
  const line = page.locator('.fill-part', { has: row(page, 'cell') }).locator('.fill-row')
  await expect(line).toContainText('⌀18.4 × 35')
  await expect(line).toContainText('preset')
  await field(page, 'parts/cell/preset').selectOption({ label: 'Own sizes' })
  await expect(field(page, 'parts/cell/body/diameter')).toHaveValue('18.2..18.6')
  await field(page, 'parts/cell/body/diameter').fill('18.4')
  await field(page, 'parts/cell/body/length').fill('65,1 ±0.1')
  await expect(line).toContainText('⌀18.4 × 65.1')
  await expect(line).toContainText('measured')
  await field(page, 'parts/cell/body/length').fill('long')
  await field(page, 'parts/cell/body/length').blur()
  await expect(field(page, 'parts/cell/body/length')).toHaveAttribute('aria-invalid', 'true')
  await row(page, 'cell').click()
  await page.locator('.fill-problem').getByRole('button').click()
  await expect(field(page, 'parts/cell/body/length')).toBeFocused()
})

test('a place is said another way and the part stays where it is', async ({ page }) => {
  await fill(page, 'demo/pier-lantern')
  await row(page, 'board').click()
  await field(page, 'parts/board/at/z/of').selectOption('parts/cell')
  await expect(field(page, 'parts/board/at/z/by')).toHaveValue('5')
  await field(page, 'parts/board/at/z/end').selectOption('rear')
  await expect(field(page, 'parts/board/at/z/by')).toHaveValue('70')
  await field(page, 'parts/board/at/z/of').selectOption('datum')
  await expect(field(page, 'parts/board/at/z')).toHaveValue('134')
  await field(page, 'parts/board/at/across').selectOption('xy')
  await field(page, 'parts/board/at/across/x').fill('2')
  await expect(field(page, 'parts/board/at/across/x')).toHaveValue('2')
  await expect(field(page, 'parts/board/at/across/y')).toHaveValue('0')
})

test('a height typed in the row of a closed part stays in that row', async ({ page }) => {
  await fill(page, 'demo/pier-lantern')
  const height = field(page, 'parts/speaker/at/z')
  const before = await height.inputValue()
  await height.click()
  await page.keyboard.press('ControlOrMeta+a')
  await page.keyboard.type('48.5')
  await page.keyboard.press('Tab')
  await expect(height).toHaveValue('48.5')
  await expect(row(page, 'speaker')).toHaveAttribute('aria-expanded', 'false')
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(height).toHaveValue(before)
})

test('a part that others name is removed with its word on them, and comes back with one undo', async ({ page }) => {
  await fill(page, 'demo/pier-lantern')
  const before = await partsOf(page).allTextContents()
  await row(page, 'cell').click()
  await page.getByRole('button', { name: 'Remove 18650 cell' }).click()
  const dialog = page.getByRole('dialog', { name: 'Remove 18650 cell?' })
  await expect(dialog.getByRole('listitem')).toHaveText([/rear spring presses on it/, /front leaf presses on it/])
  await page.keyboard.press('Escape')
  await expect(partsOf(page)).toHaveCount(before.length)
  await page.getByRole('button', { name: 'Remove 18650 cell' }).click()
  await dialog.getByRole('button', { name: 'Remove 18650 cell' }).click()
  await expect(partsOf(page)).toHaveCount(before.length - 1)
  await expect(row(page, 'leaf')).toBeFocused()
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(partsOf(page)).toHaveText(before)
})

test('a switch that comes through the wall takes its place in the wall', async ({ page }) => {
  await fill(page, 'demo/pier-lantern')
  await row(page, 'switch').click()
  await expect(page.locator('.fill-part', { has: row(page, 'switch') }).locator('.fill-row .fill-z')).toContainText(
    '177.0',
  )
  await page.getByRole('button', { name: 'Add a part: Switch' }).click()
  await field(page, 'parts/switch-2/preset').selectOption('switch-panel-12-momentary')
  await expect(field(page, 'parts/switch-2/at/theta')).toHaveValue('0')
  await expect(field(page, 'parts/switch-2/on')).toHaveValue('sections/body')
  await expect(field(page, 'parts/switch-2/goesIn')).toHaveValue('after')
})

for (const theme of ['light', 'dark'] as const)
  test(`axe finds nothing at the open parts, the wires and the moves, ${theme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: theme })
    await fill(page, 'demo/ferry-lantern')
    await page.locator('[id="wires/harness"]').click()
    await page.locator('[id="insertions/sled-in"]').click()
    for (const id of ['board', 'switch']) {
      await row(page, id).click()
      await expect(row(page, id)).toHaveAttribute('aria-expanded', 'true')
      const { violations } = await new AxeBuilder({ page }).include('.fill').analyze()
      expect(violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.target.join(' ')).join(', ')}`)).toEqual([])
    }
  })
