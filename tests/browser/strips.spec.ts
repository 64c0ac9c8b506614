import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { expect, test } from './page.ts'

async function table(page: Page, demo: string): Promise<void> {
  await page.goto(`./#demo/${demo}`)
  await expect(page.locator('.strip-unrolled')).toBeVisible({ timeout: 30_000 })
  await expect(page.locator('.cross svg')).toBeVisible()
}

const cursor = (page: Page) => page.getByRole('slider', { name: /^Cursor along the hilt/ })
const ruler = (page: Page) => page.getByRole('slider', { name: /^Ruler/ })
const board = (page: Page) => page.getByRole('slider', { name: 'sound board: move along the hilt' })

test('one cursor in all strips: by keys, by typing, by a press on the map', async ({ page }) => {
  await table(page, 'pier-lantern')
  await cursor(page).focus()
  const z = Number(await cursor(page).getAttribute('aria-valuenow'))
  await page.keyboard.press('ArrowRight')
  await expect(cursor(page)).toHaveAttribute('aria-valuenow', String(z + 0.5))
  await page.keyboard.press('ArrowDown')
  await page.getByRole('textbox', { name: 'at z', exact: true }).fill('100')
  await expect(cursor(page)).toHaveAttribute('aria-valuetext', /^z 100\.0 mm/)
  await expect(page.locator('.readout')).toContainText('free to main bore')
  await expect(page.locator('.readout')).toContainText('at worst 0.17, needed 0.15')
  await expect(page.locator('.cross svg')).toHaveAttribute('aria-label', /z 100\.0 mm/)
})

test('on a phone all of the hilt is seen at once, and "Whole hilt" waits until it is not', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await table(page, 'pier-lantern')
  const sheet = page.locator('.strips-sheet')
  const beyond = () => sheet.evaluate((e) => e.scrollWidth - e.clientWidth)
  const whole = page.getByRole('button', { name: 'Whole hilt' })
  expect(await beyond()).toBe(0)
  await expect(whole).toBeDisabled()
  await page.getByRole('button', { name: 'Nearer' }).click()
  expect(await beyond()).toBe(0)
  await expect(whole).toBeEnabled()
  await whole.click()
  await expect(whole).toBeDisabled()
})

for (const [name, width, height] of [
  ['a small screen', 1280, 800],
  ['a wide screen', 1920, 1080],
] as const)
  test(`at the foot of a long step findings and cross-section are still seen on ${name}`, async ({ page }) => {
    await page.setViewportSize({ width, height })
    await table(page, 'ferry-lantern')
    await page.getByRole('button', { name: 'Sled', exact: true }).click()
    await page.getByRole('button', { name: 'Go on to Print' }).scrollIntoViewIfNeeded()
    await expect(page.getByRole('heading', { name: 'Findings' })).toBeInViewport({ ratio: 1 })
    await expect(page.locator('.cross svg')).toBeInViewport({ ratio: 1 })
    // A large screen has room for the strips, too.
    if (width > 1600) await expect(page.locator('.strips-over')).toBeInViewport({ ratio: 0.99 })
  })

test('the ruler zooms and pans by keys and buttons; the wheel alone does not', async ({ page }) => {
  await table(page, 'pier-lantern')
  const whole = await ruler(page).getAttribute('aria-valuetext')
  await ruler(page).focus()
  await page.keyboard.press('+')
  const near = await ruler(page).getAttribute('aria-valuetext')
  expect(near).not.toBe(whole)
  await page.keyboard.press('ArrowRight')
  await expect(ruler(page)).not.toHaveAttribute('aria-valuetext', near ?? '')
  await page.keyboard.press('0')
  await expect(ruler(page)).toHaveAttribute('aria-valuetext', whole ?? '')
  await page.locator('.strips-over').hover()
  await page.mouse.wheel(0, -300)
  await expect(ruler(page)).toHaveAttribute('aria-valuetext', whole ?? '')
  await page.getByRole('button', { name: 'Nearer' }).click()
  await expect(ruler(page)).not.toHaveAttribute('aria-valuetext', whole ?? '')
  await page.getByRole('button', { name: 'Whole hilt' }).click()
  await expect(ruler(page)).toHaveAttribute('aria-valuetext', whole ?? '')
})

test('a part is drawn along the hilt, caught by a face, and put back by one undo', async ({ page }) => {
  await table(page, 'pier-lantern')
  const before = await board(page).getAttribute('aria-valuetext')
  const box = await board(page).boundingBox()
  if (!box) throw new Error('no board in the section')
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  for (let i = 1; i <= 12; i++) {
    await page.mouse.move(x + 2 * i, y)
    await page.waitForTimeout(40)
  }
  await expect(page.locator('.part-ghost text')).toContainText('z 1')
  await page.mouse.up()
  await expect(page.locator('.part-ghost')).toHaveCount(0)
  await expect(board(page)).not.toHaveAttribute('aria-valuetext', before ?? '')
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(board(page)).toHaveAttribute('aria-valuetext', before ?? '')
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled()
})

test('Escape lets go of a part, and it lies where it lay', async ({ page }) => {
  await table(page, 'pier-lantern')
  const before = await board(page).getAttribute('aria-valuetext')
  const box = await board(page).boundingBox()
  if (!box) throw new Error('no board in the section')
  await page.mouse.move(box.x + 30, box.y + 10)
  await page.mouse.down()
  await page.mouse.move(box.x + 60, box.y + 10)
  await page.waitForTimeout(300)
  await page.mouse.move(box.x + 70, box.y + 10)
  await page.keyboard.press('Escape')
  await page.mouse.up()
  await expect(page.locator('.part-ghost')).toHaveCount(0)
  await expect(board(page)).toHaveAttribute('aria-valuetext', before ?? '')
})

test('the keys move a part by tenths along the hilt and across it', async ({ page }) => {
  await table(page, 'pier-lantern')
  await board(page).focus()
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('Shift+ArrowRight')
  await expect(board(page)).toHaveAttribute('aria-valuetext', 'rear end at z 135.10 mm')
  await page.getByRole('textbox', { name: 'at z', exact: true }).fill('150')
  const across = page.getByRole('slider', { name: 'sound board: move in the cross-section' })
  await across.focus()
  await page.keyboard.press('ArrowUp')
  await expect(across).toHaveAttribute('aria-valuetext', /^0\.10 mm towards θ 0°/)
})

for (const theme of ['light', 'dark'] as const)
  test(`nothing to complain of in the strips, ${theme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: theme })
    await table(page, 'ferry-lantern')
    const complaints = async () => {
      const { violations } = await new AxeBuilder({ page }).include('.strips').include('.cross-panel').analyze()
      return violations.map((v) => [v.id, v.nodes.map((n) => n.html.slice(0, 120))])
    }
    expect(await complaints()).toEqual([])
    await page.getByRole('button', { name: 'Push it in' }).click()
    await pushTo(page, '90')
    await expect(page.locator('.cross-head')).toContainText('pushed in to 90.0')
    expect(await complaints()).toEqual([])
  })

test('strips and cross-section follow what is pushed in, say where it first comes against something, and go back', async ({
  page,
}) => {
  await table(page, 'weir-lantern')
  const inPlace = await ruler(page).getAttribute('aria-valuetext')
  const push = page.getByRole('button', { name: 'Push it in' })
  await push.click()
  await expect(page.getByRole('textbox', { name: 'face at z' })).toBeVisible()
  await expect(page.locator('.strip-push')).toHaveCount(0)
  await pushTo(page, '30')
  await expect(page.locator('.strip-push')).toContainText('face at z 33.9')
  await expect(page.locator('.readout')).toContainText('first against mouth thread at 37.9')
  // There is room for the sled before the mouth.
  await expect(ruler(page)).not.toHaveAttribute('aria-valuetext', inPlace ?? '')
  await expect(page.locator('.strips .part-grip')).toHaveCount(0)
  // Behind the mouth lies the bare sled: what it carries there, and no metal around it.
  await page.getByRole('textbox', { name: 'at z', exact: true }).fill('-60')
  await expect(page.locator('.cross-head')).toContainText('sled into the body: pushed in to 33.9 mm')
  await expect(page.locator('.cross svg')).toHaveAttribute('aria-label', /z −60\.0 mm.* no metal; sled, 18650 cell/)
  await expect(page.locator('.cross .part-grip')).toHaveCount(0)
  await push.click()
  await expect(page.locator('.strip-push')).toHaveCount(0)
  await expect(page.locator('.cross-head')).not.toContainText('pushed in')
  await expect(ruler(page)).toHaveAttribute('aria-valuetext', inPlace ?? '')
  await expect(page.locator('.strips .part-grip').first()).toBeVisible()
})

test('what the plane of the section misses is dashed; what it cuts is not', async ({ page }) => {
  await table(page, 'ferry-lantern')
  const dashes = (cut: boolean) =>
    page
      .locator(`.strip-section .wash-intrusion:has(> .part-cut${cut ? ':not([d=""])' : '[d=""]'}) .part-seen`)
      .evaluateAll((all) => all.map((e) => getComputedStyle(e).strokeDasharray))
  // The rivet stands at 90 degrees, the retention screw in the plane.
  expect(await dashes(false)).toEqual(['5px, 3px'])
  expect(await dashes(true)).toEqual(['none'])
})

for (const [width, height] of [
  [1280, 800],
  [390, 844],
] as const)
  test(`the slider of the way in is in view with the section it moves, ${width} wide`, async ({ page }) => {
    await page.setViewportSize({ width, height })
    await table(page, 'weir-lantern')
    await page.getByRole('button', { name: 'Push it in' }).click()
    const slider = page.getByRole('slider', { name: 'Sled into the body' })
    await expect(slider).toBeInViewport({ ratio: 1 })
    await expect(page.locator('.strip-section')).toBeInViewport({ ratio: 0.9 })
    const before = await slider.boundingBox()
    expect(before?.width).toBeGreaterThan(200)
    // Its chart is as long as the way of its thumb, and the first touch moves neither.
    const chart = await page.locator('.gap-chart svg').boundingBox()
    expect(chart?.x).toBeCloseTo((before?.x ?? 0) + 6, 0)
    expect(chart?.width).toBeCloseTo((before?.width ?? 0) - 12, 0)
    await slider.press('ArrowLeft')
    await expect(page.locator('.strip-push')).toBeVisible()
    expect(await slider.boundingBox()).toEqual(before)
  })

async function pushTo(page: Page, depth: string): Promise<void> {
  const field = page.getByRole('textbox', { name: 'face at z' })
  await field.fill(depth)
  await field.press('Enter')
}

for (const [width, height] of [
  [1280, 800],
  [820, 1180],
  [390, 844],
] as const)
  test(`no words of the strips lie over others or over the edge, ${width} wide`, async ({ page }) => {
    await page.setViewportSize({ width, height })
    await table(page, 'ferry-lantern')
    await page.getByRole('checkbox', { name: 'Dimensions' }).check()
    expect(await page.evaluate(wordsInTheWay)).toEqual([])
    for (let i = 0; i < 3; i++) await page.getByRole('button', { name: 'Nearer' }).click()
    expect(await page.evaluate(wordsInTheWay)).toEqual([])
    await page.getByRole('button', { name: 'Whole hilt' }).click()
    await page.getByRole('button', { name: 'Push it in' }).click()
    for (const depth of ['90', '999']) {
      await pushTo(page, depth)
      await expect(page.locator('.strip-push')).toContainText(depth === '90' ? 'face at z 90.0' : 'face at z 210.0')
      expect(await page.evaluate(wordsInTheWay)).toEqual([])
    }
  })

/** Words in the strips that lie over each other, beyond the sheet, or beyond what their group shows. */
function wordsInTheWay(): string[] {
  const sheet = document.querySelector('.strips-sheet svg')?.getBoundingClientRect()
  if (!sheet) return ['no strips']
  const words = [...document.querySelectorAll<SVGTextElement>('.strips-sheet svg text')]
    .filter((t) => t.textContent !== '' && t.checkVisibility({ visibilityProperty: true }))
    .map((t) => {
      const clip = /#([^")]+)/.exec(t.closest('[clip-path]')?.getAttribute('clip-path') ?? '')?.[1]
      const room =
        clip === undefined ? sheet : document.getElementById(clip)?.querySelector('rect')?.getBoundingClientRect()
      return { text: t.textContent, box: t.getBoundingClientRect(), room: room ?? sheet }
    })
    .filter(({ box, room }) => box.right > room.left && box.left < room.right)
  return words.flatMap(({ text, box, room }, i) => [
    ...(box.left < room.left - 1 || box.right > room.right + 1 ? [`${text} is cut off`] : []),
    ...words
      .slice(i + 1)
      .filter(
        ({ box: b }) =>
          Math.min(box.right, b.right) - Math.max(box.left, b.left) > 1 &&
          Math.min(box.bottom, b.bottom) - Math.max(box.top, b.top) > 3,
      )
      .map((b) => `${text} lies over ${b.text}`),
  ])
}
